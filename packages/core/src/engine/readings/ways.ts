import { machineWays } from './machineWays.ts';
import { fieldOfPart } from './parts.ts';
import { pinWays } from './pinWays.ts';
import type { WayQuestion } from './way.ts';

const machinesWithPins = /^(implement\.secondRow|implement|coupler\.front)\.(\w+)$/;

/**
 * What to ask about a reading of a field: between which points, or how it came about.
 *
 * @param path field path, or one end or hole of what can be set [text]
 * @returns the question and its ways, the field’s own first; null where a reading has one meaning [record]
 */
export function wayQuestion(path: string): WayQuestion | null {
  const field = fieldOfPart(path);
  const own = machineWays[field];
  if (own !== undefined) return own;
  const pins = machinesWithPins.exec(field)?.[2];
  return (pins === undefined ? undefined : pinWays[pins]) ?? null;
}
