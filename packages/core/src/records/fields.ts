import { implementWorkFields, tractorBalanceFields } from './balanceFields.ts';
import { couplerDriveFields, implementDriveFields, shaftFields, tractorDriveFields } from './driveFields.ts';
import { couplerLoadFields, loadFields, lowerPinRatedLoad, tractorLiftFields } from './liftFields.ts';
import { length, type Rules } from './rule.ts';
import type { FieldRule } from './value.ts';

/** Reference points of a span between lower pins; `unsaid` keeps both conventions open. */
const spanPoints = ['shoulder', 'ballCentre', 'unsaid'] as const;

/** Reference points of the spread of the lower links' balls. */
const ballSpanPoints = ['ballCentre', 'innerFaces', 'outerFaces'] as const;

/** The pins of a machine: an implement, its second row, or the front of a coupler [mm, kg]. */
export const pinFields = {
  lowerPinDiameter: length(
    10,
    80,
    'lower pin diameter',
    'Caliper on the part of the pin that works, in two directions; keep the smaller.',
  ),
  shoulderSpan: length(
    300,
    1400,
    'shoulder span',
    'Tape from the step of one lower pin to the step of the other, where the ball or hook rubs.',
    spanPoints,
  ),
  standOut: length(15, 300, 'pin stand-out', 'From the step of the lower pin to its tip.'),
  shoulderToHole: length(
    10,
    280,
    'step to retaining hole',
    'From the step of the lower pin to the near edge of its retaining-pin hole.',
  ),
  washer: length(0, 20, 'washer', 'Thickness of the washer under the retaining pin.'),
  plateThickness: length(2, 80, 'pin plate thickness', 'Thickness of the plate that carries the lower pin.'),
  lowerBushingInside: length(10, 80, 'lower bushing bore', 'Caliper across the bore of the bushing on the lower pin.'),
  lowerBushingOutside: length(12, 100, 'lower bushing outside diameter', 'Caliper over the bushing on the lower pin.'),
  lowerBushingLength: length(5, 200, 'lower bushing length', 'Length of the bushing on the lower pin.'),
  mastHeight: length(
    200,
    1200,
    'mast height',
    'Lay a bar across both lower pins and measure square up from pin centre to the centre of the upper pin hole.',
  ),
  mastSetback: length(
    -300,
    500,
    'mast setback',
    'Plumb line from the upper pin centre; distance behind the lower pin centres, forward is negative.',
  ),
  upperPinDiameter: length(
    10,
    80,
    'upper pin diameter',
    'Caliper on the upper pin, or on the hole of the mast plates.',
  ),
  upperBushingInside: length(10, 80, 'upper bushing bore', 'Caliper across the bore of the bushing on the upper pin.'),
  upperBushingOutside: length(12, 100, 'upper bushing outside diameter', 'Caliper over the bushing on the upper pin.'),
  clevisGap: length(10, 200, 'mast clevis gap', 'Inside width between the two mast plates at the upper pin.'),
  clevisOuterWidth: length(
    15,
    300,
    'mast clevis outside width',
    'Outside width over the two mast plates at the upper pin.',
  ),
  lowerPinRatedLoad,
} as const satisfies Rules;

/** What only an implement has [mm, deg, kg, kW, bar, L/min, km/h]. */
export const implementFields = {
  doublePlateGap: length(
    10,
    250,
    'gap between the double pin plates',
    'Free length of pin between the two plates of one lower point.',
  ),
  freeRoomLower: length(
    0,
    600,
    'free room at the lower pins',
    'The largest square block that passes freely around and behind each lower pin.',
  ),
  freeRoomUpper: length(
    0,
    600,
    'free room at the upper pin',
    'The largest square block that passes freely under and behind the upper pin.',
  ),
  pinBallDiameter: length(
    20,
    150,
    'ball on the lower pin, diameter',
    'Caliper over the loose ball that sits on the lower pin.',
  ),
  pinBallWidth: length(10, 150, 'ball on the lower pin, width', 'Width of the loose ball along the pin.'),
  pinBallBore: length(10, 80, 'ball on the lower pin, bore', 'Caliper across the bore of the loose ball.'),
  receiverWidth: length(100, 1500, 'receiver inside width', 'Inside width of the triangular receiver at its foot.'),
  receiverAngle: {
    dimension: 'angle',
    min: 10,
    max: 120,
    label: 'receiver angle',
    measure: 'Angle between the two legs of the triangular receiver.',
  },
  jawOpening: length(10, 200, 'jaw opening', 'Opening of the jaw that drops over the bar.'),
  jawSpan: length(100, 1500, 'jaws, outside to outside', 'Over the outer faces of the two jaws.'),
  ...loadFields,
  ...implementDriveFields,
  ...implementWorkFields,
} as const satisfies Rules;

/** The tractor's end of the linkage, its lift, its PTO and what it weighs [mm, deg, kg, bar, kW, L/min]; heights are above the ground, distances behind the rear axle centre. */
export const tractorFields = {
  lowerBallBore: length(
    10,
    80,
    'lower ball bore',
    'Caliper across the bore of the lower-link ball, in two directions; keep the smaller.',
  ),
  lowerBallWidth: length(15, 120, 'lower ball width', 'Width of the lower-link ball along the pin.'),
  ballSpan: length(
    300,
    1500,
    'ball spread',
    'Ball centre to ball centre, with the stabilisers at their narrowest and at their widest.',
    ballSpanPoints,
  ),
  lowerLinkLength: length(300, 1500, 'lower link length', 'Pivot centre to ball centre along the lower link.'),
  lowerLinkPivotSpan: length(
    200,
    1000,
    'front spread of the lower links',
    'Between the centres of the two front pivots of the lower links.',
  ),
  lowerLinkPivotBehindAxle: length(
    -600,
    1000,
    'lower link pivot behind the axle',
    'Plumb line from the rear axle centre; distance back to the front pivot of the lower link.',
  ),
  lowerLinkPivotHeight: length(
    100,
    1200,
    'lower link pivot height',
    'Ground to the centre of the front pivot of the lower link.',
  ),
  upperBallBore: length(
    10,
    80,
    'top link ball bore',
    'Caliper across the bore of the ball at the implement end of the top link.',
  ),
  upperBallWidth: length(15, 120, 'top link ball width', 'Width of the ball at the implement end of the top link.'),
  topLinkLength: length(
    200,
    1500,
    'top link length',
    'Pin centre to pin centre, screwed right in and as far out as its threads allow.',
  ),
  topLinkPivotBehindAxle: length(
    -600,
    1200,
    'top link pivot behind the axle',
    'Plumb line from the rear axle centre; distance back to the top-link hole in use.',
  ),
  topLinkPivotHeight: length(200, 2000, 'top link pivot height', 'Ground to the centre of the top-link hole in use.'),
  ...tractorLiftFields,
  ...tractorDriveFields,
  ...tractorBalanceFields,
} as const satisfies Rules;

/** The hook side of a coupler [mm, deg, kg]; which of them a kind needs stands in engine. */
export const couplerFields = {
  hookSpan: length(300, 1400, 'hook centres', 'Centre of one lower hook to centre of the other.'),
  hookWidth: length(5, 150, 'hook width', 'Width of a lower hook along the pin.'),
  hookSeat: length(10, 110, 'lower hook seat', 'Width of the seat that the lower pin drops into.'),
  hookBehind: length(
    -100,
    600,
    'hooks behind the link ends',
    'Horizontal distance from the lower-link ball centres back to the hook seats.',
  ),
  hookRise: length(
    -300,
    500,
    'hooks above the link ends',
    'Height of the hook seats above the lower-link ball centres.',
  ),
  topHookHeight: length(
    150,
    1200,
    'top hook height',
    'Square up from the lower hook seats to the centre of a pin in the top hook.',
  ),
  topHookBehind: length(
    -300,
    400,
    'top hook behind the lower hooks',
    'How far the top hook seat lies behind the lower hook seats; forward is negative.',
  ),
  topHookThroat: length(10, 150, 'top hook throat', 'Width of the opening that takes the upper pin.'),
  topHookThickness: length(5, 150, 'top hook thickness', 'Thickness of the top hook where it enters the mast clevis.'),
  topHookCheekGap: length(
    15,
    300,
    'gap between the top hook cheeks',
    'Inside width between the two cheeks, where the hook goes outside the mast.',
  ),
  topHookPlay: length(0, 60, 'top hook play', 'How far a seated upper pin can move along the line to the lower pins.'),
  roomNeededLower: length(
    0,
    400,
    'room the lower hooks need',
    'The square block that the lower hook and its latch sweep around the pin.',
  ),
  roomNeededUpper: length(
    0,
    400,
    'room the top hook needs',
    'The square block that the top hook and its latch sweep around the pin.',
  ),
  clawSize: length(20, 150, 'claw size', 'Diameter of the ball that the claw is made for.'),
  frameWidth: length(100, 1500, 'frame outside width', 'Outside width of the triangular frame at its foot.'),
  frameAngle: {
    dimension: 'angle',
    min: 10,
    max: 120,
    label: 'frame angle',
    measure: 'Angle between the two legs of the triangular frame.',
  },
  barDiameter: length(10, 150, 'bar diameter', 'Caliper across the bar where the jaws sit.'),
  barLength: length(100, 1500, 'free bar length', 'Length of bar between the link ends that the jaws can use.'),
  ...couplerLoadFields,
  ...couplerDriveFields,
} as const satisfies Rules;

/** Fields by record. */
export type PinField = keyof typeof pinFields;
/** Fields of an implement, its pins among them. */
export type ImplementField = PinField | keyof typeof implementFields;
/** Fields of a tractor. */
export type TractorField = keyof typeof tractorFields;
/** Fields of a coupler’s hook side. */
export type CouplerField = keyof typeof couplerFields;
/** Fields of a drive shaft. */
export type ShaftField = keyof typeof shaftFields;

export { shaftFields };

/** Every quantity of a setup by its path, in the order in which people are asked. */
export const fieldRules: ReadonlyMap<string, FieldRule> = new Map<string, FieldRule>([
  ...under('implement', { ...pinFields, ...implementFields }),
  ...under('implement.secondRow', pinFields),
  ...under('tractor', tractorFields),
  ...under('coupler', couplerFields),
  ...under('coupler.front', pinFields),
  ...under('shaft', shaftFields),
  [
    'implement.secondRow.rise',
    length(-600, 600, 'second row above the first', 'Height of the second pin row above the first.'),
  ],
  [
    'implement.secondRow.behind',
    length(-600, 600, 'second row behind the first', 'How far the second pin row lies behind the first.'),
  ],
]);

function under(prefix: string, rules: Rules): [string, FieldRule][] {
  return Object.entries(rules).map(([key, rule]) => [`${prefix}.${key}`, rule]);
}
