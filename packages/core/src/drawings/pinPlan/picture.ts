import { middle, type Interval } from '../../engine/geometry/index.ts';
import type { ClearZone, MovablePath, PinPlan, PinTarget } from '../../engine/pinplan/index.ts';

/** Where pins sit in a drawing [mm]; the upper pin is left out where no check places it and nobody measured it. */
interface Seats {
  readonly span: number;
  readonly tip: number;
  readonly hole: number | null;
  readonly height: number | null;
  readonly setback: number;
}

/** All that a drawing of a pin plan is made from [mm]. */
export interface PinPicture {
  /** +1 where the lower pins point outward, −1 inward. */
  readonly sign: 1 | -1;
  readonly now: Seats;
  readonly wanted: Seats;
  readonly targets: ReadonlyMap<MovablePath, PinTarget>;
  readonly lowerDiameter: number;
  readonly upperDiameter: number;
  /** Outside width over the mast plates. */
  readonly mastWidth: number;
  /** Hook centres and width along the pin; null where the hooks go with the links. */
  readonly hooks: { readonly span: number; readonly width: number } | null;
  readonly topHookWidth: number;
  readonly zones: ReadonlyMap<ClearZone['at'], ClearZone>;
}

/** For place only, where a drawing needs a figure that nothing was asked of [mm]. */
const forPlace = { diameter: 22, mastWidth: 70, tip: 60, topHookWidth: 25 } as const;

/** Reads a plan for a drawing. */
export function pictureOf({ targets, after, setup, clear }: PinPlan): PinPicture {
  const figure = (path: string): Interval | undefined =>
    after.figures[path]?.origin === 'unknown' ? undefined : after.figures[path];
  const value = (path: string, otherwise: number): number => {
    const found = figure(path);
    return found === undefined ? otherwise : middle(found);
  };
  const byPath = new Map(targets.map((target) => [target.path, target]));
  const seats = (pick: (target: PinTarget) => number): Seats => {
    const at = (path: MovablePath, otherwise: number): number => {
      const target = byPath.get(path);
      return target === undefined ? value(path, otherwise) : pick(target);
    };
    const isKnown = (path: MovablePath): boolean => byPath.has(path) || figure(path) !== undefined;
    return {
      span: at('implement.shoulderSpan', 0),
      tip: at('implement.standOut', forPlace.tip),
      hole: isKnown('implement.shoulderToHole') ? at('implement.shoulderToHole', 0) : null,
      height: isKnown('implement.mastHeight') ? at('implement.mastHeight', 0) : null,
      setback: at('implement.mastSetback', 0),
    };
  };
  const hooks = figure('coupler.hookSpan');
  return {
    sign: setup.implement.pinsPoint === 'in' ? -1 : 1,
    now: seats(({ now }) => middle(now)),
    wanted: seats(({ aim }) => aim),
    targets: byPath,
    lowerDiameter: value('implement.lowerPinDiameter', forPlace.diameter),
    upperDiameter: value('implement.upperPinDiameter', forPlace.diameter),
    mastWidth: value('implement.clevisOuterWidth', forPlace.mastWidth),
    hooks: hooks === undefined ? null : { span: middle(hooks), width: value('coupler.hookWidth', 0) },
    topHookWidth: value('coupler.topHookThickness', forPlace.topHookWidth),
    zones: new Map(clear.map((zone) => [zone.at, zone])),
  };
}

/** How far the pins reach to either side, and half of what has to stay free about the lower ones [mm]. */
export function halfWidthOf({ now, wanted, sign, hooks }: PinPicture): number {
  const reach = ({ span, tip }: Seats): number => span / 2 + (sign === 1 ? tip : 0);
  return Math.max(reach(now), reach(wanted), hooks === null ? 0 : (hooks.span + hooks.width) / 2) + 12;
}

/** Half the side of the block that has to stay free at a pin [mm]. */
export function freeAt({ zones }: PinPicture, at: ClearZone['at']): number {
  return (zones.get(at)?.side.high ?? 0) / 2;
}

/** How high the pins reach, with what has to stay free above them [mm]. */
export function topOf(picture: PinPicture): number {
  const heights = [picture.now.height, picture.wanted.height].map((height) => height ?? 0);
  return Math.max(...heights, 0) + Math.max(freeAt(picture, 'upper'), picture.upperDiameter);
}

/** Does a measure move? */
export function moves({ targets }: PinPicture, path: MovablePath): boolean {
  return targets.get(path)?.stays === false;
}
