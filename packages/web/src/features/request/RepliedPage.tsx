import { linkOf, readLink, readRequestLink } from '@hitchwright/core/exchange';
import { mergeOf } from '@hitchwright/core/readings';
import {
  readReply,
  withEdits,
  type InputError,
  type MeasuringReply,
  type SetupDocument,
} from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { ErrorWords } from '../check/ErrorList.tsx';
import { keptRequest } from '../measure/keep.ts';
import { calledIn } from '../question/question.ts';
import { MergeTable } from './MergeTable.tsx';
import './request.css';

/** Readings that came back: beside what stands here, to be taken over one by one. */
export function RepliedPage({ opened }: { readonly opened: MeasuringReply | null }) {
  const [reply, setReply] = useState(opened);
  const [errors, setErrors] = useState<readonly InputError[]>([]);
  const [document, setDocument] = useSetupOf(reply);
  const open = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const reading = readReply(parsed(await file.text()));
    setErrors(reading.ok ? [] : reading.errors);
    if (reading.ok) setReply(reading.value);
  };
  return (
    <>
      <Header>
        <h1 className="question">Readings that came back</h1>
      </Header>
      <main className="request">
        <section className="sheet request-sheet">
          {reply === null ? (
            <div className="request-part">
              <label className="request-name">
                <span>A file of readings</span>
                <input
                  type="file"
                  accept="application/json,.json"
                  onChange={({ target }) => void open(target.files?.[0])}
                />
              </label>
              {errors.map((error) => (
                <p key={`${error.path} ${error.code}`} className="field-error">
                  <b>{error.path}</b> <ErrorWords error={error} />
                </p>
              ))}
            </div>
          ) : (
            <p className="request-part request-by">
              Read by {reply.who ?? 'somebody who gave no name'} on {new Date(reply.when).toLocaleDateString()}.
            </p>
          )}
          {reply !== null && document === null ? <WhichSetup onSetup={setDocument} /> : null}
          {reply !== null && document !== null ? <Merging reply={reply} document={document} /> : null}
        </section>
      </main>
    </>
  );
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
    return null;
  }
}

/** The setup that was asked about, where it was asked from this device. */
function useSetupOf(reply: MeasuringReply | null): [SetupDocument | null, (document: SetupDocument) => void] {
  const [document, setDocument] = useState<SetupDocument | null>(null);
  useEffect(() => {
    if (reply === null) return;
    keptRequest(reply.request).then(
      (request) => setDocument(request?.setup ?? null),
      () => setDocument(null),
    );
  }, [reply]);
  return [document, setDocument];
}

/** The request was made elsewhere: its link, or the link of the check, says what the readings are for. */
function WhichSetup({ onSetup }: { readonly onSetup: (document: SetupDocument) => void }) {
  const [isUnread, setUnread] = useState(false);
  const take = (text: string): void => {
    const fragment = text.slice(text.indexOf('#') + 1).trim();
    if (fragment === '') return;
    const request = fragment.startsWith('ask=') ? readRequestLink(fragment) : null;
    const setup = request === null ? readLink(fragment.replace(/^request=/, '')) : null;
    if (request?.ok === true) return onSetup(request.value.setup);
    if (setup?.ok === true) return onSetup(setup.document);
    setUnread(true);
  };
  return (
    <div className="request-part">
      <p>
        These readings were not asked for from this device. Paste the link of the request, or of the check that they are
        for.
      </p>
      <label className="request-name">
        <span>Link</span>
        <input onChange={({ target }) => take(target.value)} aria-invalid={isUnread} />
      </label>
      {isUnread ? <p className="field-error">That link holds no setup. Copy it whole.</p> : null}
    </div>
  );
}

function Merging({ reply, document }: { readonly reply: MeasuringReply; readonly document: SetupDocument }) {
  const merged = mergeOf(document, reply.readings);
  const [taken, setTaken] = useState<ReadonlySet<string>>(
    () => new Set(merged.filter(({ state }) => state === 'new' || state === 'agrees').map(({ path }) => path)),
  );
  const toggle = (path: string): void => {
    const next = new Set(taken);
    if (!next.delete(path)) next.add(path);
    setTaken(next);
  };
  const edits = reply.readings.filter(({ path }) => taken.has(path));
  return (
    <>
      <h2 className="request-part">
        {calledIn(document, 'implement')} on {calledIn(document, 'tractor')}
      </h2>
      <MergeTable merged={merged} reply={reply} taken={taken} onToggle={toggle} />
      <div className="done-actions request-part">
        <a className="button button-solid" href={`#${linkOf(withEdits(document, edits))}`}>
          {edits.length === 0
            ? 'Open the check as it is'
            : `Take ${edits.length === 1 ? 'it' : `these ${edits.length}`} into the check`}
        </a>
      </div>
    </>
  );
}
