import { middle, type Interval } from '../geometry/index.ts';
import type { Ground } from './ground.ts';
import { isInside, type Ranges } from './lower.ts';
import type { MovablePath, PinTarget } from './plan.ts';
import { accepted, type Places } from './search.ts';

/** The target of one measure; none where no check reads it. What has no range of its own stays as it is. */
export function targetOf({ now, question }: Ground, ranges: Ranges, path: MovablePath): PinTarget[] {
  const present = now[path];
  if (present === undefined || !question.ledger.entries.some((one) => one.path === path)) return [];
  const range = ranges[path] ?? { ...present, endsBy: { low: null, high: null } };
  const stays = isInside(present, range);
  const at = middle(present);
  return [{ path, now: present, ...range, stays, aim: stays ? at : aimIn(range, at) }];
}

/** Most that is kept between an aim and the end of its range [mm], and how much of a narrow range, our own choice. */
const ample = 5;
const share = 0.5;

/** As near to where it is as leaves room for making it; a whole millimetre where the range is wide enough for one. */
function aimIn({ low, high }: Pick<PinTarget, 'low' | 'high'>, at: number): number {
  const room = low === null || high === null ? ample : Math.min(ample, (high - low) * share);
  const nearest = Math.min(Math.max(at, (low ?? -Infinity) + room), (high ?? Infinity) - room);
  const whole = Math.round(nearest);
  const isWellInside = whole >= (low ?? -Infinity) + room / 2 && whole <= (high ?? Infinity) - room / 2;
  return isWellInside ? whole : Number(nearest.toFixed(1));
}

/** Everywhere that a target lets a measure be; one with an open end as far as its field accepts [mm]. */
export function wholeOf({ path, low, high }: Pick<PinTarget, 'path' | 'low' | 'high'>): Interval {
  const field = accepted(path);
  return { low: low ?? field.low, high: high ?? field.high };
}

/** All targets together. */
export function placesIn(targets: readonly PinTarget[]): Places {
  return Object.fromEntries(targets.map((target) => [target.path, wholeOf(target)]));
}
