import { implementFigures, bestFigure } from '../../tables/index.ts';
import { exactly, scale, type Interval } from '../geometry/index.ts';
import { centresInUse, type Joint } from '../joint/index.ts';
import type { Term } from '../proof/index.ts';

/** The working attitude may be set this far from level, either way [deg]: our own default. */
export const levelWithin = 3;

const tractorLengths = [
  'lowerLinkLength',
  'lowerLinkPivotBehindAxle',
  'lowerLinkPivotHeight',
  'topLinkPivotBehindAxle',
  'topLinkPivotHeight',
  'ballHeightLow',
  'ballHeightHigh',
  'liftStopHeight',
  'liftArmPivotBehindAxle',
  'liftArmPivotHeight',
  'liftArmLength',
  'liftArmLowest',
  'liftArmHighest',
  'liftRodAlong',
  'liftAtBalls',
  'liftAt610',
  'liftTestTopLink',
  'cylinderBore',
  'liftPressure',
  'cylinderPivotBehindAxle',
  'cylinderPivotHeight',
  'cylinderCrank',
  'cylinderCrankAngle',
  'tyreRadius',
  'tyreInnerSpan',
  'lowerLinkThickness',
  'sidePlay',
] as const;

const implementFields = [
  'mass',
  'centreBehind',
  'centreAbove',
  'carryHeight',
  'parkedPinHeight',
  'workPinHeight',
  'lowestBehind',
  'lowestBelow',
  'clearanceWanted',
] as const;

/** What a formula through the lift reads, by the name of its leaf. */
export type LeafTerms = ReadonlyMap<string, Term>;

/** The terms behind the leaves, and quick ones in the place of those that take work to bound. */
export interface Leaves {
  readonly exact: LeafTerms;
  readonly quick: LeafTerms;
}

const nothing: Term = () => exactly(0);

/** The terms behind the leaves of a setup [mm, deg, kg, bar]. */
export function leavesOf(joint: Joint): LeafTerms {
  const { tractor, implement, frontUpper, rear } = joint;
  return new Map<string, Term>([
    ...tractorLengths.map((key): [string, Term] => [key, tractor(key)]),
    ...implementFields.map((key): [string, Term] => [key, implement(key)]),
    ['halfPivotSpan', halved(tractor('lowerLinkPivotSpan'))],
    ['halfBallSpan', halved(centresInUse(joint))],
    ['upperBehind', frontUpper.mastSetback],
    ['upperAbove', frontUpper.mastHeight],
    ['pinMastBehind', rear.mastSetback],
    ['pinMastAbove', rear.mastHeight],
    ...rodLeaves(joint),
    ...couplerLeaves(joint),
    ...loadLeaves(joint),
    ['workPitch', workPitch(joint)],
    ['topLinkWhileCarrying', (at) => joint.ledger.adjuster('tractor.topLinkLength').setting(at)],
    ['liftTestMastHeight', testMast(joint)],
    ['liftEfficiency', tractor('liftEfficiency')],
    ['liftCylinders', (): Interval => exactly(joint.setup.tractor.liftCylinders ?? 1)],
    ['supplyShare', tractor('liftSupplyShare')],
    ['allowance', (): Interval => exactly(allowances[joint.setup.rules?.liftAllowance ?? 'tenPercentOff'])],
  ]);
}

/** How much of a lift rating is counted on; docs/method/lift.md names the source of the first. */
const allowances = { tenPercentOff: 0.9, asRated: 1 } as const;

function halved(term: Term): Term {
  return (at) => scale(term(at), 0.5);
}

function rodLeaves({ ledger, tractor }: Joint): [string, Term][] {
  const optional = (key: string): Term => (ledger.given(`tractor.${key}`) ? tractor(key) : nothing);
  const isSettable = ledger.value('tractor.liftRodLength')?.kind === 'adjustable';
  const rod: Term = isSettable
    ? (at) => ledger.adjuster('tractor.liftRodLength').setting(at)
    : tractor('liftRodLength');
  return [
    ['liftRodLength', rod],
    ['liftRodAbove', optional('liftRodAbove')],
    ['liftRodAside', optional('liftRodAside')],
  ];
}

/** Where the hooks sit and what the coupler weighs; without one, nothing. */
function couplerLeaves({ setup, coupler, hold, ledger }: Joint): [string, Term][] {
  const has = setup.coupler !== undefined;
  const hasHooks = has && hold !== 'clawEnds';
  const hasSeats = hold === 'uFrame' || hold === 'hookEnds';
  const isHung = ledger.given('coupler.hungMass');
  const some = (present: boolean, key: string): Term => (present ? coupler(key) : nothing);
  return [
    ['hookBehind', some(hasHooks, 'hookBehind')],
    ['hookRise', some(hasHooks, 'hookRise')],
    ['seatDepth', some(hasSeats, 'seatDepth')],
    ['topHookBehind', some(hold === 'uFrame', 'topHookBehind')],
    ['topHookHeight', some(hold === 'uFrame', 'topHookHeight')],
    ['couplerMass', some(has, 'mass')],
    ['couplerCentreBehind', some(has, 'centreBehind')],
    ['couplerCentreAbove', some(has, 'centreAbove')],
    ['hungMass', some(isHung, 'hungMass')],
    ['hungBehind', some(isHung, 'hungBehind')],
    ['hungAbove', some(isHung, 'hungAbove')],
  ];
}

/** What is carried on the implement, at its own place. */
function loadLeaves({ implement, ledger }: Joint): [string, Term][] {
  const isLoaded = ledger.given('implement.carriedMass');
  const some = (key: string): Term => (isLoaded ? implement(key) : nothing);
  return [
    ['carriedMass', some('carriedMass')],
    ['carriedBehind', some('carriedBehind')],
    ['carriedAbove', some('carriedAbove')],
  ];
}

function workPitch({ ledger }: Joint): Term {
  return ledger.set('implement.workPitch', { low: -levelWithin, high: levelWithin });
}

/** Unless given, the mast of the lift test is the category's [mm]. */
function testMast(joint: Joint): Term {
  const { ledger, setup, tractor } = joint;
  const { category } = setup.tractor;
  if (ledger.given('tractor.liftTestMastHeight') || category === undefined) return tractor('liftTestMastHeight');
  const figure = bestFigure(implementFigures(category, 'mastHeight'));
  return figure === null ? tractor('liftTestMastHeight') : () => exactly(figure.value);
}
