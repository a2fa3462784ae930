import { assess, type Answer } from '../../src/engine/assess/index.ts';
import { readSetup, type Setup, type SetupDocument } from '../../src/records/index.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Three invented machines of category 1; everything is given, so that every check can be decided. */
const tractor: Fields = {
  name: 'Ostrey 35',
  category: '1',
  lowerBallBore: 22.4,
  lowerBallWidth: 35,
  ballSpan: { adjustable: { between: [640, 760] } },
  upperBallBore: 19.3,
  upperBallWidth: 44,
  lowerLinkLength: 760,
  lowerLinkPivotSpan: 440,
  lowerLinkPivotBehindAxle: 120,
  lowerLinkPivotHeight: 420,
  topLinkPivotBehindAxle: 270,
  topLinkPivotHeight: 800,
  topLinkLength: { adjustable: { between: [480, 700] } },
  ballHeightLow: 200,
  ballHeightHigh: 810,
  liftAt610: 870,
  wheelbase: 1720,
  mass: 1680,
  frontAxleMass: 672,
};

const front: Fields = {
  lowerPinDiameter: 22.2,
  shoulderSpan: 683,
  standOut: 60,
  shoulderToHole: 46,
  washer: 0,
  upperPinDiameter: 19,
  clevisGap: 48,
  clevisOuterWidth: 70,
  mastHeight: 460,
  mastSetback: 0,
};

const frame: Fields = {
  name: 'Pellin U-28',
  kind: 'uFrame',
  hookSpan: 712,
  hookWidth: 25,
  hookSeat: 22.8,
  hookBehind: 115,
  hookRise: 0,
  topHookHeight: 470,
  topHookBehind: 0,
  topHookThroat: 24,
  topHookThickness: 25,
  front,
};

const blade: Fields = {
  name: 'Wickset 60-in box blade',
  category: '1',
  mass: 195,
  centreBehind: 460,
  mounting: 'threePoint',
  driven: false,
  lowerPinDiameter: 22.2,
  shoulderSpan: 661,
  standOut: 58,
  shoulderToHole: 44,
  washer: 0,
  mastHeight: 470,
  mastSetback: 0,
  upperPinDiameter: 19,
  clevisGap: 44.5,
  clevisOuterWidth: 66,
  freeRoomLower: 120,
  freeRoomUpper: 110,
};

/** The setup that fits, with fields of its machines exchanged; `coupler: null` leaves the coupler off. */
export function setupWith(changes: { implement?: Fields; coupler?: Fields | null; tractor?: Fields }): SetupDocument {
  const coupler = changes.coupler === null ? {} : { coupler: { ...frame, ...changes.coupler } };
  return {
    hitchwright: 1,
    units: 'us',
    tractor: { ...tractor, ...changes.tractor },
    ...coupler,
    implement: { ...blade, ...changes.implement },
  };
}

/** A setup with a coupler of another kind. */
export function setupOn(coupler: Fields, implement: Fields = {}): SetupDocument {
  return { hitchwright: 1, units: 'us', tractor, coupler, implement: { ...blade, ...implement } };
}

/** One setup for each way of holding an implement, most of them with something that misses. */
export const gallery: Readonly<Record<string, SetupDocument>> = {
  'u-frame-mast-too-high': setupWith({ implement: { mastHeight: 521 } }),
  'bare-balls-works': setupWith({ coupler: null, tractor: { topLinkLength: { adjustable: { between: [450, 760] } } } }),
  'triangle-frame-too-wide': setupOn(
    { kind: 'triangle', frameWidth: 420, frameAngle: 50, hookBehind: 100, front },
    { receiver: 'triangle', receiverWidth: 410, receiverAngle: 50 },
  ),
  'claw-ends-hole-covered': setupOn(
    { kind: 'clawEnds', clawSize: 56 },
    { pinBallDiameter: 56, pinBallWidth: 45, pinBallBore: 22.6 },
  ),
  'bar-jaws-too-far-apart': setupOn(
    { kind: 'bar', barDiameter: 50, barLength: 500, hookBehind: 0, hookRise: 0, front },
    { receiver: 'jaws', jawOpening: 51, jawSpan: 540 },
  ),
  'hook-ends-undecided': setupOn({ kind: 'hookEnds', hookWidth: 25, hookSeat: 22.8, hookBehind: 80, front }),
  'u-frame-nothing-measured': {
    hitchwright: 1,
    units: 'metric',
    tractor: { category: '1' },
    coupler: { kind: 'uFrame', category: '1' },
    implement: { category: '1', mounting: 'threePoint' },
  },
};

/** Setups whose drawings have much to say in little room. */
export const crowded: Readonly<Record<string, SetupDocument>> = {
  'mast set back, too low, with a tolerance': setupWith({
    implement: {
      mastHeight: { value: 440, plusMinus: 3 },
      mastSetback: 60,
      shoulderSpan: { value: 697, plusMinus: 1.2 },
    },
  }),
  'everything too small': setupWith({
    implement: { mastHeight: 437, standOut: 36, shoulderToHole: 24, clevisGap: 20, clevisOuterWidth: 40 },
  }),
  'mast far too high': setupWith({ implement: { mastHeight: 650, shoulderSpan: 760, pinsPoint: 'in' } }),
  'links far too short': setupWith({ coupler: null, implement: { shoulderSpan: 820.5 } }),
  'pins too thick': setupWith({ implement: { lowerPinDiameter: { value: 28.4, plusMinus: 0.8 } } }),
  'frame and receiver at odds': setupOn(
    { kind: 'triangle', frameWidth: 421.3, frameAngle: 50.4, hookBehind: 100, front },
    { receiver: 'triangle', receiverWidth: 424.9, receiverAngle: 56.7 },
  ),
  'top link too short': setupOn(
    { kind: 'bar', barDiameter: 50, barLength: 640, hookBehind: 100, hookRise: 0, front },
    { receiver: 'jaws', jawOpening: 51, jawSpan: 540, mastHeight: 560 },
  ),
};

/** A document read and judged; both must succeed. */
export function judged(document: SetupDocument): { setup: Setup; answer: Answer } {
  const reading = readSetup(document);
  const assessment = assess(document, { full: false });
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return { setup: reading.setup, answer: assessment.answer };
}
