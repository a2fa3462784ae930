// Time of the search for cures by the number of parts on the list.
import { assess } from '../packages/core/src/engine/assess/index.ts';
import { withEdits, type SetupDocument } from '../packages/core/src/records/index.ts';
import { anew, microseconds, type Timing } from './timing.ts';

/** Lists of these lengths are searched. */
const lengths = [2, 5, 10, 20, 40, 60];

/** Parts of every kind that can be tried on the setup, each a little different from the others of its kind. */
function partsOf(count: number): SetupDocument[] {
  const kinds = [
    (i: number) => ({ kind: 'frontWeights', mass: 15 + i, count: 30 }),
    (i: number) => ({ kind: 'clevisSpacers', gapAfter: 40 + i / 4 }),
    (i: number) => ({ kind: 'upperPinPlate', mastHeight: 430 + 2 * i, mastSetback: 0 }),
    (i: number) => ({ kind: 'lowerBushings', inside: 22.4, outside: 28 + i / 10, length: 35 }),
    (i: number) => ({ kind: 'upperBushing', inside: 19.3, outside: 25 + i / 10 }),
  ] as const;
  return Array.from({ length: count }, (_, i) => ({ name: `part ${i + 1}`, ...kinds[i % kinds.length]?.(i) }));
}

/**
 * Times of an answer with its cures, by how many parts are on the list: one setup that three parts cure together, and one
 * that nothing cures.
 *
 * @param misfit a setup that some of the parts cure [JSON]
 * @returns times [ms]
 */
export function cureTimings(misfit: SetupDocument): Timing[] {
  const hopeless = withEdits(misfit, [{ path: 'tractor.lowerBallBore', value: 18 }]);
  return lengths.flatMap((count): Timing[] => {
    const parts = { path: 'parts', value: partsOf(count) };
    const timed = (name: string, document: SetupDocument): Timing => {
      const answered = anew(withEdits(document, [parts]), (one) => assess(one, { full: false }));
      const value = microseconds(answered, 1) / 1000;
      return { name: `${name}, ${count} parts on the list`, value, unit: 'ms' };
    };
    return [timed('answer with cures', misfit), timed('answer that nothing cures', hopeless)];
  });
}
