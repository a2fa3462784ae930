import { ErrorWords } from '../check/ErrorList.tsx';
import type { Problem } from './made.ts';

/** Why something was not made, and what would help. */
export function ProblemNote({ problem }: { readonly problem: Problem | null }) {
  if (problem === null) return null;
  return (
    <div className="hand-over-problem" role="alert">
      {problem.kind === 'refused' ? (
        <>
          <p>
            <b>{problem.headline}</b>
          </p>
          {problem.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </>
      ) : null}
      {problem.kind === 'errors'
        ? problem.errors.map((error) => (
            <p key={`${error.path} ${error.code}`}>
              <b>{error.path}</b> <ErrorWords error={error} />
            </p>
          ))
        : null}
      {problem.kind === 'fault' ? (
        <p>
          <b>It could not be made.</b> {problem.message}
        </p>
      ) : null}
    </div>
  );
}
