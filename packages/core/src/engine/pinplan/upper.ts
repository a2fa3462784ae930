import { middle } from '../geometry/index.ts';
import type { Ground } from './ground.ts';
import { searchOn, type Ranges } from './lower.ts';
import { widestRange, type Range } from './search.ts';

const [height, setback] = ['implement.mastHeight', 'implement.mastSetback'] as const;

/** How closely the upper pin can be asked to stand behind the lower pins [mm to either side], our own choice. */
const setbackSlack = 3;

/**
 * Where the upper pin has to stand: straight above or below where it is, or where no height serves there, as far back as the
 * coupler’s own top hook.
 */
export function upperRanges(ground: Ground): Ranges | null {
  const search = searchOn(ground, [height, setback]);
  if (search.checks.length === 0) return {};
  const above = widestRange(search, height, {});
  if (above !== null) return { [height]: above };
  const behind = behindLikeTheHook(ground);
  if (behind === null) return null;
  const range = widestRange(search, height, { [setback]: { low: behind.low as number, high: behind.high as number } });
  return range === null ? null : { [height]: range, [setback]: behind };
}

/** No check ends this range: it is as wide as the height that goes with it was sought for. */
function behindLikeTheHook({ question }: Ground): Range | null {
  const hook = question.ledger.entries.find(({ path }) => path === 'coupler.topHookBehind');
  if (hook === undefined) return null;
  const at = Math.round(middle(hook.range));
  return { low: at - setbackSlack, high: at + setbackSlack, endsBy: { low: null, high: null } };
}
