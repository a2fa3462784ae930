import { fieldOfPart } from '@hitchwright/core/readings';
import { fieldRules } from '@hitchwright/core/records';
import { labelOf, sentenceCase } from '@hitchwright/core/words';
import { Figures } from '../../marks/Figures.tsx';
import { plainChoices } from '../dimensions/plainChoices.ts';
import type { Entry } from './session.ts';
import type { SessionDesk } from './useSession.ts';

interface ReadingListProps {
  readonly desk: SessionDesk;
  readonly onReopen: (path: string) => void;
}

/** What was read and what was left, each with the way back to it. */
export function ReadingList({ desk: { entries }, onReopen }: ReadingListProps) {
  const all = [...entries.values()].sort((a, b) => a.touched.localeCompare(b.touched));
  const done = all.filter(({ state }) => state === 'done');
  const left = all.filter(({ state }) => state === 'skipped');
  return (
    <>
      <Part title="Read" entries={done} told={toldBy} press="Read it again" onReopen={onReopen} />
      <Part
        title="Left out"
        entries={left}
        told={() => 'could not be reached'}
        press="Try it after all"
        onReopen={onReopen}
      />
    </>
  );
}

interface PartProps {
  readonly title: string;
  readonly entries: readonly Entry[];
  readonly told: (entry: Entry) => string;
  readonly press: string;
  readonly onReopen: (path: string) => void;
}

function Part({ title, entries, told, press, onReopen }: PartProps) {
  if (entries.length === 0) return null;
  return (
    <section className="done-part">
      <h2>{title}</h2>
      <ul className="plain-list reading-list">
        {entries.map((entry) => (
          <li key={entry.path}>
            <span>
              <Figures text={sentenceCase(labelOf(entry.path))} />:{' '}
              <b>
                <Figures text={told(entry)} />
              </b>
            </span>
            <button type="button" className="quiet" onClick={() => onReopen(entry.path)}>
              {press}
              <span className="unseen">: {labelOf(entry.path)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function toldBy({ path, typed, chosen }: Entry): string {
  if (fieldRules.has(fieldOfPart(path))) return typed.map(({ text }) => text).join(', ');
  const choice = plainChoices[path.slice(path.lastIndexOf('.') + 1)];
  const said = Array.isArray(chosen) ? chosen.join(', ') : String(chosen);
  return choice?.options.find(([value]) => value === said)?.[1] ?? said;
}
