import fc from 'fast-check';
import type { SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';

/** A figure as it may be said. */
export type Figure = fc.Arbitrary<unknown>;

/** A figure near `base`: exact, with a tolerance, in a range, or left out, all in millimetres rounded to a hundredth. */
export function near(base: number, spread: number, leaveOut = false): Figure {
  const value = even(base - spread, base + spread).map(toHundredth);
  // Squared: half of them within a quarter of the spread, as a tape leaves figures, and some as wide as a guess.
  const slack = even(0, 1).map((share) => toHundredth(spread * share * share));
  const forms: Figure[] = [
    value,
    value,
    fc.tuple(value, slack).map(([v, plusMinus]) => ({ value: v, plusMinus: plusMinus / 2 })),
    fc.tuple(value, slack).map(([v, s]) => ({ between: [v, toHundredth(v + s)] })),
  ];
  return fc.oneof(...forms, ...(leaveOut ? [fc.constant(null)] : []));
}

function toHundredth(value: number): number {
  return Math.round(value * 100) / 100;
}

function settable(low: number, high: number): Figure {
  return fc
    .tuple(near(low, 20), near(high, 20))
    .filter(([a, b]) => upper(a) < lower(b))
    .map(([a, b]) => ({ adjustable: { between: [a, b] } }));
}

function lower(figure: unknown): number {
  if (typeof figure === 'number') return figure;
  const { value, plusMinus, between } = figure as { value?: number; plusMinus?: number; between?: [number, number] };
  return between === undefined ? (value ?? 0) - (plusMinus ?? 0) : between[0];
}

function upper(figure: unknown): number {
  if (typeof figure === 'number') return figure;
  const { value, plusMinus, between } = figure as { value?: number; plusMinus?: number; between?: [number, number] };
  return between === undefined ? (value ?? 0) + (plusMinus ?? 0) : between[1];
}

const pins = {
  lowerPinDiameter: near(22.2, 0.6),
  shoulderSpan: near(676, 22, true),
  standOut: near(62, 6),
  shoulderToHole: near(44, 5),
  washer: near(2, 0.5),
  upperPinDiameter: near(19, 0.4),
  clevisGap: near(46, 3, true),
  clevisOuterWidth: near(70, 3),
  mastSetback: near(10, 40, true),
};

const tractor = fc.record({
  category: fc.constant('1'),
  lowerBallBore: near(22.5, 0.3),
  lowerBallWidth: near(35, 1),
  ballSpan: settable(650, 760),
  upperBallBore: near(19.3, 0.2),
  upperBallWidth: near(42, 2),
  lowerLinkLength: near(760, 20),
  lowerLinkPivotSpan: near(440, 20),
  lowerLinkPivotBehindAxle: near(120, 5),
  lowerLinkPivotHeight: near(420, 5),
  topLinkPivotBehindAxle: near(270, 5),
  topLinkPivotHeight: fc.oneof(near(800, 5), fc.constant({ adjustable: { at: [760, 800] } })),
  topLinkLength: settable(500, 680),
});

const mast = fc.oneof(near(457, 12, true), fc.constant({ adjustable: { at: [{ value: 445, plusMinus: 1 }, 470] } }));

const implement = fc.record({
  ...pins,
  category: fc.constant('1'),
  mounting: fc.constant('threePoint'),
  pinsPoint: fc.constantFrom('out', 'out', 'in'),
  mastHeight: mast,
  freeRoomLower: near(100, 20, true),
  freeRoomUpper: near(100, 20),
  pinBallDiameter: near(44, 1.2),
  pinBallWidth: near(35, 1),
  pinBallBore: near(22.8, 0.5),
  receiver: fc.constantFrom('triangle', 'jaws'),
  receiverWidth: near(504, 6),
  receiverAngle: near(60, 1.2),
  jawOpening: near(41, 2),
  jawSpan: near(600, 20),
});

const coupler = fc.record({
  kind: fc.constantFrom('uFrame', 'uFrame', 'uFrame', 'hookEnds', 'clawEnds', 'triangle', 'bar'),
  category: fc.constant('1'),
  hookSpan: near(720, 12),
  hookWidth: near(25, 1),
  hookSeat: near(23, 0.6),
  hookBehind: near(110, 5),
  hookRise: near(0, 5),
  topHookHeight: fc.oneof(near(457, 8), settable(430, 490), fc.constant({ adjustable: { at: [440, 460, 480] } })),
  topHookBehind: near(5, 10),
  topHookThroat: near(25, 2),
  topHookThickness: near(30, 8),
  roomNeededLower: near(80, 5),
  roomNeededUpper: near(80, 5),
  clawSize: near(44, 1.2),
  frameWidth: near(500, 4),
  frameAngle: near(60, 0.8),
  barDiameter: near(40, 1),
  barLength: near(620, 20),
  front: fc.record({ ...pins, mastHeight: near(460, 5), mastSetback: near(0, 5) }),
});

/** Setups near the edge of fitting, with everything that makes a figure honest: seeds are printed by fast-check. */
export const setups: fc.Arbitrary<SetupDocument> = fc.record(
  { hitchwright: fc.constant(1), units: fc.constant('metric'), tractor, coupler, implement },
  { requiredKeys: ['hitchwright', 'units', 'tractor', 'implement'] },
);
