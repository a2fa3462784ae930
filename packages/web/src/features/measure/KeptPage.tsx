import { fieldOfPart } from '@hitchwright/core/readings';
import { useEffect, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { OfflineStatus } from '../../app/offline/OfflineNotices.tsx';
import { calledIn } from '../question/question.ts';
import { measureHash } from './begin.ts';
import { dropSession, keptSessions, type KeptSession } from './keep.ts';
import { forget } from './memory.ts';
import './measure.css';

/** Every measuring on this device. */
export function KeptPage() {
  const [kept, setKept] = useState<readonly KeptSession[] | 'none' | null>(null);
  const refresh = (): void => {
    keptSessions().then(setKept, () => setKept('none'));
  };
  useEffect(refresh, []);
  const drop = async (id: string): Promise<void> => {
    await dropSession(id);
    forget(id);
    refresh();
  };
  return (
    <>
      <Header>
        <h1 className="measure-title">Measurings on this device</h1>
      </Header>
      <main className="measure">
        <section className="measure-sheet done">
          {kept === null ? <p>Looking…</p> : null}
          {kept === 'none' ? <p>This browser keeps nothing between visits.</p> : null}
          {Array.isArray(kept) && kept.length === 0 ? (
            <p>None yet. Open a check that says “measure first”, or a link that asks you to measure.</p>
          ) : null}
          {Array.isArray(kept) ? <KeptList kept={kept} onDrop={(id) => void drop(id)} /> : null}
          <OfflineStatus />
        </section>
      </main>
    </>
  );
}

function KeptList({ kept, onDrop }: { readonly kept: readonly KeptSession[]; readonly onDrop: (id: string) => void }) {
  return (
    <ul className="plain-list kept-list">
      {kept.map((one) => (
        <li key={one.session.id}>
          <span>
            <b>{titleOf(one)}</b>
            <br />
            {new Date(one.session.begun).toLocaleDateString()}, {countOf(one)}
          </span>
          <a className="button" href={measureHash(one.session.id)}>
            Go on<span className="unseen"> with {titleOf(one)}</span>
          </a>
          <DropButton title={titleOf(one)} onDrop={() => onDrop(one.session.id)} />
        </li>
      ))}
    </ul>
  );
}

/** Takes two presses: what is dropped is gone. */
function DropButton({ title, onDrop }: { readonly title: string; readonly onDrop: () => void }) {
  const [isSure, setSure] = useState(false);
  return (
    <button type="button" className="quiet" onClick={() => (isSure ? onDrop() : setSure(true))}>
      {isSure ? 'Drop it for good' : 'Drop'}
      <span className="unseen"> {title}</span>
    </button>
  );
}

function titleOf({ session: { setup } }: KeptSession): string {
  const [implement, tractor] = (['implement', 'tractor'] as const).map(
    (machine) => calledIn(setup, machine) ?? machine,
  );
  return `${implement} on ${tractor}`;
}

function countOf({ entries }: KeptSession): string {
  const read = new Set(entries.filter(({ state }) => state === 'done').map(({ path }) => fieldOfPart(path))).size;
  return read === 1 ? 'one figure read' : `${read} figures read`;
}
