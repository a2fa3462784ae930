import { atPath, readSetup, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { prepareSetup } from '../../src/engine/assess/index.ts';
import { middleOfAll } from '../properties/boxes.ts';
import { openShaftTruth } from '../properties/shaftTruth.ts';
import { middleAt } from './twist.ts';

const around = (value: number, plusMinus: number): unknown => ({ value, plusMinus });

/**
 * The document with an input shaft that stands across from the stub at work, and a drive shaft that is long and short enough
 * with everything in the middle: most drives that are generated anyhow do not run.
 */
export function suited(document: SetupDocument): SetupDocument {
  const at = (path: string): number => middleAt(document, path) ?? 0;
  const across = withEdits(document, [
    { path: 'implement.inputAbove', value: around(at('tractor.stubHeight') - at('implement.workPinHeight') + 20, 2) },
    { path: 'implement.inputAside', value: at('tractor.stubAside') },
    { path: 'implement.inputAngle', value: 0 },
    { path: 'implement.inputYaw', value: undefined },
    { path: 'implement.shiftLeft', value: 0 },
    { path: 'implement.shiftRight', value: 0 },
    { path: 'tractor.outlines', value: undefined },
    { path: 'implement.turnsWhileRaised', value: false },
    { path: 'shaft.closedLength', value: 500 },
    { path: 'shaft.closedOverlap', value: 300 },
  ]);
  const reading = readSetup(across);
  if (!reading.ok || atPath(document, 'tractor.stubBehindAxle') === undefined) return document;
  const question = prepareSetup(reading.setup, 'drive');
  const seen = openShaftTruth(question)(middleOfAll(question));
  const shortest = (seen.get('shaft.bottoming') ?? 0) + 500;
  const longest = 800 - (seen.get('shaft.apart') ?? 0);
  const closed = Math.round(shortest - 60);
  const overlap = Math.round(longest - closed + 220);
  if (closed < 250 || overlap > closed - 10) return across;
  return withEdits(across, [
    { path: 'shaft.closedLength', value: around(closed, 2) },
    { path: 'shaft.closedOverlap', value: around(overlap, 3) },
    { path: 'shaft.profileLength', value: around(overlap + 40, 2) },
  ]);
}
