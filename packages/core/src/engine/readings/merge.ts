import { atPath, type Edit, type SetupDocument } from '../../records/index.ts';
import { givenAt } from './known.ts';

/** What becomes of one reading that comes from somebody else. */
export interface Merged {
  readonly path: string;
  readonly before: unknown;
  readonly after: unknown;
  /** `new`: nothing was known; `agrees`: both can be true; `differs`: they can’t both be true; `same`: word for word. */
  readonly state: 'new' | 'agrees' | 'differs' | 'same';
}

/**
 * What readings from somebody else change in a setup. Nothing is taken over by itself where a figure that was given differs:
 * that is for a person to decide.
 *
 * @param document the setup as it stands here [JSON]
 * @param readings changes by field [list]
 * @returns one entry for each reading, in their order [list]
 */
export function mergeOf(document: SetupDocument, readings: readonly Edit[]): Merged[] {
  return readings.map(({ path, value }): Merged => {
    const before = atPath(document, path);
    return { path, before, after: value, state: stateOf(document, { path, value }, before) };
  });
}

function stateOf(document: SetupDocument, { path, value }: Edit, before: unknown): Merged['state'] {
  if (before === undefined || before === null || isStandIn(before)) return 'new';
  if (JSON.stringify(before) === JSON.stringify(value)) return 'same';
  const here = givenAt(document, path);
  const there = givenAt({ ...document, ...nested(path, value) }, path);
  if (here === null || there === null) return here === there && typeof value !== 'object' ? 'differs' : 'new';
  return here.low <= there.high && there.low <= here.high ? 'agrees' : 'differs';
}

/** A range out of a class or a habit is no figure of this machine. */
function isStandIn(raw: unknown): boolean {
  return typeof raw === 'object' && raw !== null && ('default' in raw || 'unknown' in raw);
}

function nested(path: string, value: unknown): SetupDocument {
  const [key = '', ...rest] = path.split('.');
  return { [key]: rest.length === 0 ? value : nested(rest.join('.'), value) };
}
