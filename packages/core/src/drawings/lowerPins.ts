import type { Answer } from '../engine/assess/index.ts';
import { add, hull, middle, scale, subtract, type Interval } from '../engine/geometry/index.ts';
import type { PinSet, Setup } from '../records/index.ts';
import { shown, worked, type Shown } from './shown.ts';

/** Lower pins as they are drawn [mm]; `sign` is +1 where they point outward, −1 inward. */
export interface LowerPins {
  readonly path: string;
  readonly sign: 1 | -1;
  readonly shoulders: Shown;
  readonly diameter: Shown;
  readonly standOut: Shown;
  readonly toHole: Shown;
  readonly washer: Shown;
  readonly bushing: { readonly outside: Shown; readonly inside: Shown; readonly length: Shown } | null;
  /** Free length of pin between two plates, where it is held at both ends. */
  readonly doubleGap: Shown | null;
  /** For place only where it is not given. */
  readonly plate: number;
}

/** The lower pins of a machine; of two rows the one that the findings were reported for. */
export function lowerPinsOf(setup: Setup, answer: Answer, path: 'implement' | 'coupler.front'): LowerPins {
  const record: PinSet = path === 'implement' ? setup.implement : (setup.coupler?.front ?? {});
  const first = pinsAt(setup, answer, path, record);
  const second = setup.implement.secondRow;
  if (path !== 'implement' || second === undefined || !('implement.secondRow.rise' in answer.figures)) return first;
  const other = pinsAt(setup, answer, 'implement.secondRow', second);
  return offBy(answer, other) < offBy(answer, first) ? other : first;
}

function pinsAt(setup: Setup, answer: Answer, path: string, record: PinSet): LowerPins {
  const read = (key: string, forPlace: number): Shown => shown(answer, `${path}.${key}`, forPlace);
  const sign = record.pinsPoint === 'in' ? -1 : 1;
  const bushed = answer.figures[`${path}.lowerBushingOutside`] !== undefined;
  const diameter = read('lowerPinDiameter', 24);
  const double = path === 'implement' && setup.implement.lowerPinPlates === 'double';
  return {
    path,
    sign,
    shoulders: shouldersOf(answer, path, record, sign),
    diameter,
    standOut: read('standOut', 60),
    toHole: read('shoulderToHole', 44),
    washer: read('washer', 2),
    bushing: bushed
      ? {
          outside: read('lowerBushingOutside', diameter.value + 6),
          inside: read('lowerBushingInside', diameter.value + 0.5),
          length: read('lowerBushingLength', 40),
        }
      : null,
    doubleGap: double ? shown(answer, 'implement.doublePlateGap', 70) : null,
    plate: Math.min(40, read('plateThickness', 18).value),
  };
}

/** Shoulder to shoulder: a reading between ball centres is one ball width away from it. */
function shouldersOf(answer: Answer, path: string, record: PinSet, sign: 1 | -1): Shown {
  const span = shown(answer, `${path}.shoulderSpan`, placeOf(answer));
  const from = record.shoulderSpan?.provenance.from;
  if (span.standing === 'unknown' || from === undefined || from === 'shoulder') return span;
  const ball = shown(answer, 'tractor.lowerBallWidth', 35);
  const converted = subtract(span, scale(ball, sign));
  const range: Interval = from === 'ballCentre' ? converted : hull(span, converted);
  return worked(span.path, range, span, ball);
}

/** Where shoulders could stand when nobody measured them: to suit the hooks, or the middle of category 1. */
function placeOf(answer: Answer): number {
  const hooks = shown(answer, 'coupler.hookSpan', 0);
  return hooks.standing === 'unknown' ? 683 : hooks.value - shown(answer, 'coupler.hookWidth', 25).value - 12;
}

/** How far a row is from what the findings report of the row taken [mm]. */
function offBy(answer: Answer, pins: LowerPins): number {
  const quantity = (id: string): number | null => {
    const found = answer.findings.find((finding) => finding.id === id)?.quantity;
    return found?.low == null || found.high === null ? null : (found.low + found.high) / 2;
  };
  const float = quantity('rear.shoulders');
  if (float !== null) {
    const gap = shown(answer, 'coupler.hookSpan', 0).value - pins.shoulders.value;
    return Math.abs(pins.sign * gap - shown(answer, 'coupler.hookWidth', 0).value - float);
  }
  const centres = quantity('front.span');
  if (centres === null) return 0;
  const ball = shown(answer, 'tractor.lowerBallWidth', 35);
  return Math.abs(middle(add(pins.shoulders, scale(ball, pins.sign))) - centres);
}
