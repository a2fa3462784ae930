import { fieldRules, type Setup } from '@hitchwright/core/records';
import { linkFields, undrawnWords, type LiftBasis } from './basis.ts';

interface LiftUnknownProps {
  readonly setup: Setup;
  readonly basis: LiftBasis;
  readonly onMeasure: (field: string) => void;
}

/** In place of the side view: what to measure so that it can be drawn, and the way to the first of it. */
export function LiftUnknown({ setup, basis, onMeasure }: LiftUnknownProps) {
  const missing = linkFields.filter((field) => !isGiven(setup, field));
  const [first] = missing;
  return (
    <div className="lift-unknown">
      {first === undefined ? (
        <p>
          There is no side view of this one: it has no upper pin for the top link to hold, so nothing here says how it
          stands through the lift.
        </p>
      ) : (
        <>
          <p>To draw the lift from the side, measure on the tractor: {listOf(missing)}.</p>
          {undrawnWords[basis] === null ? null : <p className="lift-basis">{undrawnWords[basis]}</p>}
          <button type="button" className="button-solid" onClick={() => onMeasure(`tractor.${first}`)}>
            Type the {labelOf(first)}
          </button>
        </>
      )}
    </div>
  );
}

function isGiven({ tractor }: Setup, field: (typeof linkFields)[number]): boolean {
  const value = tractor[field];
  return value !== undefined && value.kind !== 'unknown';
}

function labelOf(field: string): string {
  return fieldRules.get(`tractor.${field}`)?.label ?? field;
}

function listOf(fields: readonly string[]): string {
  const labels = fields.map(labelOf);
  return labels.length < 2 ? labels.join('') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1) ?? ''}`;
}
