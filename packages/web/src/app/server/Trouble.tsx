import { ErrorWords } from '../../features/check/ErrorList.tsx';
import { Refusal } from './yard.ts';

interface TroubleProps {
  readonly problem: unknown;
  /** Asks again, where that may help. */
  readonly onAgain?: () => void;
}

/** What the server refused, in its own words, every error of an input by its field. */
export function Trouble({ problem, onAgain }: TroubleProps) {
  if (problem === null || problem === undefined) return null;
  const { errors, message } = problem instanceof Refusal ? problem : { errors: [], message: String(problem) };
  return (
    <div className="trouble" role="alert">
      {errors.length === 0 ? (
        <p>
          <b>{message}</b>
        </p>
      ) : (
        errors.map((error) => (
          <p key={`${error.path} ${error.code}`}>
            <b>{error.path}</b> <ErrorWords error={error} />
          </p>
        ))
      )}
      {onAgain === undefined ? null : (
        <button type="button" onClick={onAgain}>
          Try again
        </button>
      )}
    </div>
  );
}
