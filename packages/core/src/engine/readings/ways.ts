import { machineWays } from './machineWays.ts';
import { pinWays } from './pinWays.ts';
import type { WayQuestion } from './way.ts';

const machinesWithPins = /^(implement\.secondRow|implement|coupler\.front)\.(\w+)$/;

/**
 * What to ask about a reading of a field: between which points, or how it came about.
 *
 * @param path field path, with dots [text]
 * @returns the question and its ways, the field’s own first; null where a reading has one meaning [record]
 */
export function wayQuestion(path: string): WayQuestion | null {
  const own = machineWays[path];
  if (own !== undefined) return own;
  const field = machinesWithPins.exec(path)?.[2];
  return (field === undefined ? undefined : pinWays[field]) ?? null;
}
