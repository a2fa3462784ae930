import type { Answer } from '../engine/assess/index.ts';
import { hypotenuse, subtract } from '../engine/geometry/index.ts';
import { hasUpperPin } from '../engine/joint/index.ts';
import type { Setup } from '../records/index.ts';
import type { LowerPins } from './lowerPins.ts';
import { shown, worked, type Shown } from './shown.ts';
import type { Meeting } from './meeting.ts';

/** A point above the lower pins: how far, and where its height and setback come from [mm]. */
export interface UpperPoint {
  /** Distance drawn above the lower pins: the true distance from pin to pin where a rigid frame holds them. */
  readonly distance: Shown;
  readonly height: Shown;
  readonly setback: Shown;
}

/** The upper pin and what takes it, as they are drawn [mm]. */
export interface Upper extends UpperPoint {
  readonly path: string;
  readonly exists: boolean;
  readonly pin: Shown;
  readonly clevisGap: Shown;
  readonly clevisOuter: Shown;
  readonly hook: TopHook | null;
  readonly ball: { readonly width: Shown; readonly bore: Shown } | null;
}

/** The upper hook of a rigid frame [mm]. */
export interface TopHook extends UpperPoint {
  readonly throat: Shown;
  readonly thickness: Shown;
  /** Inside width between two cheeks, where the hook goes outside the mast. */
  readonly cheekGap: Shown | null;
  /** Where it can be set: a range, or holes; null where it is fixed. */
  readonly settings: { readonly ends: readonly [number, number]; readonly holes: readonly number[] } | null;
}

/** The upper pin of a meeting. */
export function upperOf(setup: Setup, answer: Answer, meeting: Meeting, pins: LowerPins): Upper {
  const path = meeting === 'front' ? 'coupler.front' : 'implement';
  const hook = meeting === 'rear' && answer.hold === 'uFrame' ? topHookOf(setup, answer) : null;
  const read = (key: string, forPlace: number): Shown => shown(answer, `${path}.${key}`, forPlace);
  const height = overRow(answer, pins, read('mastHeight', hook?.height.value ?? 480), 'rise');
  const setback = overRow(answer, pins, read('mastSetback', 0), 'behind');
  const bushed = answer.figures[`${path}.upperBushingOutside`] !== undefined;
  const clevisGap = read('clevisGap', 50);
  return {
    path,
    exists: meeting === 'front' || hasUpperPin(setup.implement),
    height,
    setback,
    distance: hook === null ? height : pinToPin(height, setback),
    pin: bushed ? read('upperBushingOutside', 25) : read('upperPinDiameter', 19),
    clevisGap,
    clevisOuter: read('clevisOuterWidth', clevisGap.value + 24),
    hook,
    ball:
      hook === null
        ? { width: shown(answer, 'tractor.upperBallWidth', 44), bore: shown(answer, 'tractor.upperBallBore', 20) }
        : null,
  };
}

/** The second pin row is measured from the first. */
function overRow(answer: Answer, pins: LowerPins, figure: Shown, by: 'rise' | 'behind'): Shown {
  if (pins.path !== 'implement.secondRow') return figure;
  const shift = shown(answer, `implement.secondRow.${by}`, 0);
  return worked(figure.path, subtract(figure, shift), figure, shift);
}

function topHookOf(setup: Setup, answer: Answer): TopHook {
  const height = shown(answer, 'coupler.topHookHeight', shown(answer, 'implement.mastHeight', 460).value);
  const setback = shown(answer, 'coupler.topHookBehind', 0);
  const cheeks = answer.figures['coupler.topHookCheekGap'] !== undefined;
  return {
    height,
    setback,
    distance: pinToPin(height, setback),
    throat: shown(answer, 'coupler.topHookThroat', 26),
    thickness: shown(answer, 'coupler.topHookThickness', 25),
    cheekGap: cheeks ? shown(answer, 'coupler.topHookCheekGap', 70) : null,
    settings: settingsOf(setup),
  };
}

function settingsOf({ coupler }: Setup): TopHook['settings'] {
  const height = coupler?.topHookHeight;
  if (height?.kind === 'adjustable') return { ends: [height.lowest.low, height.highest.high], holes: [] };
  if (height?.kind !== 'stops') return null;
  const holes = height.at.map((hole) => (hole.low + hole.high) / 2);
  return { ends: [Math.min(...holes), Math.max(...holes)], holes };
}

/** √(e² + h²): the height where nothing is set back. */
function pinToPin(height: Shown, setback: Shown): Shown {
  return worked(height.path, hypotenuse(setback, height), height, setback.standing === 'unknown' ? height : setback);
}

/** Whether distance and height differ enough to be told apart on a tape. */
export function isSetBack({ distance, height }: UpperPoint): boolean {
  return Math.abs(distance.value - height.value) >= 0.5;
}
