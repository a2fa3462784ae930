import type { Answer } from '../../src/engine/assess/index.ts';
import type { BalanceSweep } from '../../src/engine/balance/index.ts';
import type { SteeringRuleName } from '../../src/tables/index.ts';
import type { Setup } from '../../src/records/index.ts';
import { documentOf, judgedFully, type Changes, type Machines } from './sideSetups.ts';

/** A setup judged in full, with its axle loads. */
export interface Weighed {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly balance: BalanceSweep;
}

type Fields = Readonly<Record<string, unknown>>;

/** What the invented tractors weigh, said here again so that the yard may change. */
const weighed: Readonly<Record<string, Fields>> = {
  'Ostrey 24': {
    wheelbase: 1450,
    mass: 750,
    frontAxleMass: 315,
    driverMass: 75,
    driverAhead: 450,
    frontWeightAhead: 500,
    frontBracketLimit: 80,
    rearTrack: 900,
    centreHeight: 560,
    frontPivotHeight: 330,
    outerWidth: 1130,
    frontAxleLimit: undefined,
    rearAxleLimit: undefined,
    totalLimit: undefined,
    frontTyreIndex: undefined,
    rearTyreIndex: undefined,
  },
  'Ostrey 35': {
    wheelbase: 1720,
    mass: 1680,
    frontAxleMass: 672,
    driverMass: 75,
    driverAhead: 500,
    frontWeightAhead: 700,
    frontBracketLimit: 280,
    loaderMass: 430,
    loaderAhead: 650,
    rearTrack: 1150,
    centreHeight: 640,
    frontPivotHeight: 400,
    outerWidth: 1480,
    frontAxleLimit: 1350,
    rearAxleLimit: 2080,
    totalLimit: 3300,
    frontTyreIndex: undefined,
    rearTyreIndex: undefined,
  },
};

const known = new Map<string, Weighed>();

/** Machines of the yard with what they weigh, judged; each only once. */
export function weighedSetup(
  machines: Machines,
  tractor: Fields = {},
  implement: Fields = {},
  rule?: SteeringRuleName,
): Weighed {
  const changes: Changes = { tractor: { ...weighed[machines[0]], ...tractor }, implement };
  const document = {
    ...documentOf(machines, changes),
    ...(rule === undefined ? {} : { rules: { steeringShare: rule } }),
  };
  const key = JSON.stringify(document);
  const before = known.get(key);
  if (before !== undefined) return before;
  const { setup, answer } = judgedFully(document);
  if (answer.balance === null) throw new Error('the axle loads are not known');
  const made = { setup, answer, balance: answer.balance };
  known.set(key, made);
  return made;
}

const spear = { mass: 82, carriedMass: 450, carriedBehind: 900 };
const heavy = { mass: { value: 385, plusMinus: 8 }, centreBehind: { value: 762, plusMinus: 15 } };
const blade = { mass: 195, centreBehind: 460 };

/** One of each kind: too light in front, enough, wheels that lift, ballast of every kind, loaders, other rules. */
export const balances: Readonly<Record<string, () => Weighed>> = {
  'front too light': () => weighedSetup(['Ostrey 35', null, 'bale spear'], {}, spear),
  'enough in front': () => weighedSetup(['Ostrey 35', null, 'box blade'], {}, blade),
  'front wheels lift': () => weighedSetup(['Ostrey 24', null, 'heavy cutter'], {}, heavy),
  'ballast of every kind': () =>
    weighedSetup(
      ['Ostrey 24', null, 'heavy cutter'],
      {
        frontWeightMass: 80,
        wheelWeightMass: 120,
        tyreLiquid: { size: '14.9-24', fluid: 'water', fill: 60 },
      },
      heavy,
    ),
  'loader over front weights': () =>
    weighedSetup(
      ['Ostrey 35', 'U-28', 'rear blade'],
      { frontWeightMass: 120, loader: 'empty' },
      { mass: 340, centreBehind: 690 },
    ),
  'loader loaded': () =>
    weighedSetup(['Ostrey 35', null, 'box blade'], { loader: 'loaded', loaderLoad: 400, loaderLoadAhead: 1200 }, blade),
  'weighed with its loader, off now': () =>
    weighedSetup(['Ostrey 35', null, 'box blade'], { weighedWithLoader: true, loader: 'absent' }, blade),
  'share of everything': () => weighedSetup(['Ostrey 35', null, 'bale spear'], {}, spear, 'ofTotal'),
  'half of its own front': () => weighedSetup(['Ostrey 35', null, 'rear blade'], {}, { mass: 340 }, 'halfOfFront'),
  'light in front by a little, wheel not measured': () =>
    weighedSetup(
      ['Ostrey 24', null, 'chipper'],
      { tyreRadius: undefined, outerWidth: undefined },
      { mass: { value: 290, plusMinus: 6 }, centreBehind: 480 },
    ),
};

/** One of them by its name. */
export function balanceCase(name: string): Weighed {
  const open = balances[name];
  if (open === undefined) throw new Error(`no case ${name}`);
  return open();
}
