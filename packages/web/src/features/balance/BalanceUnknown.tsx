import { atPath, fieldRules, type Setup, type Value } from '@hitchwright/core/records';
import { labelOf } from '@hitchwright/core/words';

interface BalanceUnknownProps {
  readonly setup: Setup;
  readonly onMeasure: (field: string) => void;
}

/** What the axle loads can't do without, in the order in which people are asked. */
const needed = ['tractor.mass', 'tractor.frontAxleMass', 'tractor.wheelbase', 'implement.mass'];

/** In place of the axle loads: what to find out so that they can be worked out, and the way to the first of it. */
export function BalanceUnknown({ setup, onMeasure }: BalanceUnknownProps) {
  const missing = needed.filter((path) => isMissing(setup, path));
  const [first] = missing;
  return (
    <>
      <p>
        Nothing is known of the axle loads yet. To work them out, find out: {listOf(missing.map(calledHere))}. No class
        of tractor stands in for that.
      </p>
      {first === undefined ? null : (
        <button type="button" className="button-solid" onClick={() => onMeasure(first)}>
          Type the {fieldRules.get(first)?.label ?? first}
        </button>
      )}
    </>
  );
}

/** The tractor is what the sentence is about. */
function calledHere(path: string): string {
  return path.startsWith('tractor.') ? (fieldRules.get(path)?.label ?? path) : labelOf(path);
}

function isMissing(setup: Setup, path: string): boolean {
  const value = atPath(setup, path) as Value | undefined;
  return value === undefined || value.kind === 'unknown';
}

function listOf(labels: readonly string[]): string {
  return labels.length < 2 ? labels.join('') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1) ?? ''}`;
}
