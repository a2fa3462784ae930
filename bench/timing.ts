import { readSetup, withEdits, type Setup, type SetupDocument } from '../packages/core/src/records/index.ts';

/** One figure of a speed [µs or ms]. */
export interface Timing {
  readonly name: string;
  readonly value: number;
  readonly unit: 'µs' | 'ms';
}

/**
 * The least time of a few rounds, each long enough for its clock.
 *
 * @param work what is timed [function]
 * @param calls how often it is called in a round [count]
 * @returns the time of one call [µs]
 */
export function microseconds(work: () => unknown, calls: number): number {
  const rounds = Array.from({ length: 12 }, () => {
    const start = performance.now();
    for (let i = 0; i < calls; i += 1) work();
    return ((performance.now() - start) / calls) * 1000;
  });
  return Math.min(...rounds.slice(2));
}

/**
 * Reads a setup that is known to be fine.
 *
 * @param document a setup document [JSON]
 * @returns the setup; throws where it can’t be read [record]
 */
export function read(document: SetupDocument): Setup {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error('the setup can’t be read');
  return reading.setup;
}

/**
 * The setup again and again, each time with its lower links a millionth of a millimetre higher: boxes that were seen before
 * are remembered, and an answer that is looked up says nothing of its making.
 *
 * @param document the setup [JSON]
 * @param work what is timed, given the setup [function]
 * @returns does the work once more, on the setup a little changed [function]
 */
export function anew<T>(document: SetupDocument, work: (one: SetupDocument) => T): () => T {
  const pivot = read(document).tractor.lowerLinkPivotHeight;
  if (pivot === undefined || !('bound' in pivot)) throw new Error('the setup has no linkage to move');
  const { low, high } = pivot.bound;
  let by = 0;
  return () => {
    by += 1e-6;
    const value = low === high ? low + by : { between: [low + by, high + by] };
    return work(withEdits(document, [{ path: 'tractor.lowerLinkPivotHeight', value }]));
  };
}

/**
 * The middle one of some times.
 *
 * @param times at least one [any unit]
 * @returns the middle one [same unit]
 */
export function medianOf(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}
