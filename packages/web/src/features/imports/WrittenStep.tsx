import { Trouble } from '../../app/server/Trouble.tsx';
import { RefusedUndo } from '../history/RefusedUndo.tsx';
import { Sure } from '../history/Sure.tsx';
import { useUndo } from '../history/useUndo.ts';
import { counted } from '../history/whenText.ts';
import type { Import } from './importTypes.ts';
import { StepTitle } from './StepStrip.tsx';
import type { ImportDesk } from './useImport.ts';

interface WrittenStepProps {
  readonly desk: ImportDesk;
  /** Why the server could not be asked how far it is. */
  readonly problem: unknown;
  readonly onAgain: () => void;
}

/** The last step: how far the writing is, and what came of it. */
export function WrittenStep({ desk, problem, onAgain }: WrittenStepProps) {
  const { state } = desk;
  return (
    <section className="imp-part" aria-label="The writing">
      {state.state === 'running' ? <Running desk={desk} /> : null}
      {state.state === 'done' && state.result !== null ? <Done name={state.name} result={state.result} /> : null}
      {state.state === 'cancelled' ? (
        <>
          <StepTitle>Stopped</StepTitle>
          <p>Nothing of it was written, and the server has let go of the file.</p>
          <Onward />
        </>
      ) : null}
      {state.state === 'failed' ? (
        <>
          <StepTitle>It could not be written</StepTitle>
          <p>Nothing of it was written. The server’s own output says what is broken.</p>
          <p className="button-row">
            <button type="button" onClick={onAgain}>
              Try again
            </button>
          </p>
          <Onward />
        </>
      ) : null}
      <Trouble problem={problem} />
      <Trouble problem={desk.problem} />
    </section>
  );
}

function Running({ desk: { state, stop, isStopping } }: { readonly desk: ImportDesk }) {
  const { done, total } = state.progress;
  return (
    <>
      <StepTitle>The rows are being written</StepTitle>
      <p role="status">
        {done.toLocaleString()} of {counted(total, 'row')}. All of them are kept, or none.
      </p>
      <progress className="imp-progress" value={done} max={Math.max(1, total)} aria-label="How far the writing is" />
      <p className="button-row">
        <button type="button" disabled={isStopping} onClick={stop}>
          {isStopping ? 'It is being stopped…' : 'Stop'}
        </button>
      </p>
    </>
  );
}

function Done({ name, result }: { readonly name: string; readonly result: NonNullable<Import['result']> }) {
  const { created, updated, restored, unchanged, group } = result;
  const counts = [
    ['New records', created],
    ['Records that changed', updated],
    ['Records brought back', restored],
    ['Rows that said nothing new', unchanged],
  ] as const;
  return (
    <>
      <StepTitle>{group === null ? 'There was nothing new in it' : 'Written'}</StepTitle>
      <p className="imp-name">{name}</p>
      <dl className="imp-counts">
        {counts.map(([words, count]) => (
          <div key={words}>
            <dt>{words}</dt>
            <dd>{count.toLocaleString()}</dd>
          </div>
        ))}
      </dl>
      {group === null ? null : <TakeBack group={group} />}
      <Onward />
    </>
  );
}

function TakeBack({ group }: { readonly group: string }) {
  const undo = useUndo(group);
  if (undo.data !== undefined)
    return (
      <p role="status">The import was taken back: {counted(undo.data.records, 'record')}. The history has both.</p>
    );
  return (
    <>
      <RefusedUndo problem={undo.error} />
      <Sure
        ask="Take back everything that this import wrote?"
        yes="Yes, take it back"
        isBusy={undo.isPending}
        onYes={() => undo.mutate()}
      >
        Take the import back
      </Sure>
    </>
  );
}

function Onward() {
  return (
    <p className="button-row">
      <a className="button" href="#records">
        Records
      </a>
      <a className="button" href="#import">
        Another file
      </a>
      <a className="button" href="#history">
        History
      </a>
    </p>
  );
}
