import type { InputError } from '@hitchwright/core/records';
import { fieldRules } from '@hitchwright/core/records';
import { fieldOf, labelOf } from '@hitchwright/core/words';

interface ErrorListProps {
  readonly errors: readonly InputError[];
  readonly onShow?: (field: string) => void;
}

/** Everything that can't be read, with what to do; each leads to its field. */
export function ErrorList({ errors, onShow }: ErrorListProps) {
  if (errors.length === 0) return null;
  return (
    <section className="errors" aria-labelledby="errors-title">
      <h3 id="errors-title">
        {errors.length === 1 ? 'One entry can’t be read' : `${errors.length} entries can’t be read`}
      </h3>
      <ul className="plain-list">
        {errors.map((error) => (
          <li key={`${error.path} ${error.code}`}>
            <p>
              <b>{placeOf(error.path)}</b> <ErrorWords error={error} />
            </p>
            {onShow === undefined || !fieldRules.has(leafOf(error.path)) ? null : (
              <button type="button" className="quiet" onClick={() => onShow(leafOf(error.path))}>
                Go to it<span className="unseen">: {placeOf(error.path)}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** `Expected 200–1200 mm, got 19. Was it typed in inches?` */
export function ErrorWords({ error }: { readonly error: InputError }) {
  return (
    <span>
      Expected {error.expected}, got {error.got}. {error.hint}
    </span>
  );
}

/** The field an error belongs to: errors of a tolerance or a limit lie below it. */
export function leafOf(path: string): string {
  const field = fieldOf(path);
  return [...fieldRules.keys()].find((key) => field === key || field.startsWith(`${key}.`)) ?? field;
}

function placeOf(path: string): string {
  if (path === '') return 'The setup:';
  const field = leafOf(path);
  return fieldRules.has(field) ? `${labelOf(field)}:` : `${path}:`;
}
