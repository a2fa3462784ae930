import type { Answer } from '../../engine/assess/index.ts';
import type { BalanceStation, BalanceSweep } from '../../engine/balance/index.ts';
import type { Setup } from '../../records/index.ts';
import type { SteeringRuleName } from '../../tables/index.ts';
import { printMarginSize, printQuantity, type Rounding, type UnitSystem } from '../../units/index.ts';
import { heightText, massText } from '../side/readings.ts';
import type { Block } from './blocks.ts';
import {
  armOf,
  blockAcross,
  frontStateAt,
  rearLoad,
  standingMasses,
  wheelMassesOf,
  type FrontState,
  type WheelMass,
} from './masses.ts';
import { fillOf } from './wheelBallast.ts';

/** What a block is called on the picture. */
export const blockNames: Readonly<Record<Block['what'], string>> = {
  tractor: 'tractor',
  driver: 'driver',
  frontWeights: 'front weights',
  loader: 'loader',
  loaderLoad: 'load in front',
  ballast: 'weights wanted',
};

/** What is on the rear wheels themselves. */
export const wheelNames: Readonly<Record<WheelMass['what'], string>> = {
  wheelWeights: 'wheel weights',
  tyreLiquid: 'liquid in tyres',
};

const shareOf: Readonly<Record<SteeringRuleName, string>> = {
  ofTractor: 'the tractor as weighed',
  ofTotal: 'all that stands on the wheels',
  halfOfFront: 'what it carries with nothing behind',
};

/** What the chosen rule wants on the front axle. */
export function ruleText({ rule, share }: BalanceSweep): string {
  return `${Math.round(share * 100)} % of ${shareOf[rule]}`;
}

/** A mass in the chosen unit, and in the other. */
export interface MassText {
  readonly text: string;
  readonly second: string;
}

/** A mass with its unit, rounded as it is cautious. */
export function massOf(kg: number, system: UnitSystem, round: Rounding): MassText {
  const other = system === 'us' ? 'metric' : 'us';
  return {
    text: printQuantity(kg, 'mass', { system, round }),
    second: printQuantity(kg, 'mass', { system: other, round }),
  };
}

/** What is missing or to spare on the front axle, rounded so that it never looks better than it is. */
export function spareOf({ front, wanted }: BalanceStation, system: UnitSystem): string {
  return printMarginSize(front - wanted, 'mass', system).replace(/ \(.*/, '');
}

/** The word beside what is missing or to spare. */
export const stateWords: Readonly<Record<FrontState, string>> = {
  lifted: 'missing',
  short: 'missing',
  notCertain: 'not certain',
  toSpare: 'to spare',
};

/** The state of the front axle in the line over the picture. */
export function readingText(balance: BalanceSweep, here: BalanceStation, system: UnitSystem): string {
  const size = printMarginSize(here.front - here.wanted, 'mass', system);
  const words: Readonly<Record<FrontState, string>> = {
    lifted: 'the front wheels leave the ground',
    short: `front axle ${size} short`,
    notCertain: `front axle ${size} over what is wanted, but that is not certain`,
    toSpare: `front axle ${size} to spare`,
  };
  return `${heightText(here.ballHeight, system)}: ${words[frontStateAt(balance, here)]}`;
}

/** How the picture is drawn, for the sheet. */
export function drawnNote(balance: BalanceSweep, system: UnitSystem): string {
  const across = heightText(blockAcross, system);
  const drawn = `Masses drawn as cast iron ${across} across. Dashed wheels are not to measure`;
  const tipped = balance.wheelsLift ? ', nor is how far the beam tips' : '';
  return `Wanted in front: ${ruleText(balance)}. ${drawn}${tipped}.`;
}

/** One height in full. */
export function heightSentences(balance: BalanceSweep, here: BalanceStation, system: UnitSystem): string[] {
  const state = frontStateAt(balance, here);
  const size = printMarginSize(here.front - here.wanted, 'mass', system);
  const wanted = `${massText(here.wanted, system, 'up')} is wanted`;
  const spare: Readonly<Record<FrontState, string>> = {
    lifted: '',
    short: `${wanted}, ${size} is missing.`,
    notCertain: `${wanted}, ${size} to spare, but that is not certain.`,
    toSpare: `${wanted}, ${size} to spare.`,
  };
  const held = massText(-here.front, system, 'up');
  return [
    ...(state === 'lifted'
      ? [
          `The front wheels leave the ground: they would have to be held down with ${held}.`,
          `On the front axle ${wanted}, ${size} is missing.`,
          `The rear axle carries all: ${massText(rearLoad(here), system, 'up')}.`,
        ]
      : [
          `The front axle carries ${massText(here.front, system, 'down')}; ${spare[state]}`,
          `The rear axle carries ${massText(here.rear, system, 'up')}.`,
        ]),
    ...overSentences(balance, here, system),
    centreSentence(here, system),
  ];
}

function centreSentence({ ahead }: BalanceStation, system: UnitSystem): string {
  const side = ahead < 0 ? 'behind' : 'ahead of';
  return `The centre of it all is ${heightText(Math.abs(ahead), system)} ${side} the rear axle.`;
}

function overSentences({ permitted }: BalanceSweep, here: BalanceStation, system: UnitSystem): string[] {
  return (['front', 'rear'] as const).flatMap((axle) => {
    const limit = permitted[axle];
    if (limit === null || here[axle] <= limit) return [];
    return [`That is more than the ${axle} axle is permitted: ${massText(limit, system, 'down')}.`];
  });
}

/** What hangs behind at a height, and how far back. */
export function hungSentence(balance: BalanceSweep, here: BalanceStation, system: UnitSystem): string {
  const arm = heightText(armOf(balance, here), system);
  return `Hung behind: ${massText(balance.behind, system, 'up')}, acting ${arm} behind the rear axle.`;
}

/** What is the same at every height: all that stands on the tractor, and the front weights that it would take. */
export function alwaysSaid(setup: Setup, answer: Answer, balance: BalanceSweep, system: UnitSystem): string[] {
  const standing = standingMasses(answer, balance).map(
    ({ what, mass, ahead }) =>
      `${blockNames[what]} ${massText(mass, system, 'nearest')} ${heightText(ahead, system)} ahead of the rear axle`,
  );
  const onWheels = wheelTexts(setup, answer, system);
  return [
    `Wheelbase ${heightText(balance.wheelbase, system)}.`,
    `On the tractor: ${[...standing, ...onWheels].join('; ')}.`,
    certainSentence(balance, system),
    ballastSentence(answer, balance, system),
  ].filter(Boolean);
}

/** What the front axle carries for certain through the whole lift, whatever the figures turn out to be. */
function certainSentence({ worst, wheelsLift }: BalanceSweep, system: UnitSystem): string {
  if (wheelsLift) return '';
  if (worst.front.low <= 0) return 'It is not certain that the front wheels stay on the ground.';
  return `Through the whole lift ${massText(worst.front.low, system, 'down')} on the front axle is certain.`;
}

function wheelTexts(setup: Setup, answer: Answer, system: UnitSystem): string[] {
  return wheelMassesOf(answer).map(({ what, figure }) => {
    const full = what === 'tyreLiquid' ? `, tyres ${Math.round(fillOf(setup) * 100)} % full` : '';
    const about = figure.standing === 'measured' ? '' : 'about ';
    return `${wheelNames[what]} ${about}${massText(figure.value, system, 'nearest')}${full}`;
  });
}

/** What the ring on the rear wheel and the level in its tyre stand for, in one sentence; none where there is neither. */
export function wheelBallastWords(setup: Setup, answer: Answer, system: UnitSystem): string[] {
  const texts = wheelTexts(setup, answer, system);
  return texts.length === 0 ? [] : [`On the rear wheels: ${texts.join('; ')}.`];
}

function ballastSentence(answer: Answer, { ballast }: BalanceSweep, system: UnitSystem): string {
  if (ballast === null) return '';
  const over = overBracket(answer, ballast.enough);
  const bracket = over === null ? '' : ` The bracket holds ${massText(over, system, 'down')}.`;
  return `Front weights that would do: ${massText(ballast.enough, system, 'up')} in all, ${heightText(ballast.ahead, system)} ahead of the front axle.${bracket}`;
}

/** What the front bracket holds, where that is less than the weights that are wanted [kg]; null where it is enough or not known. */
export function overBracket({ figures }: Answer, wanted: number): number | null {
  const limit = figures['tractor.frontBracketLimit'];
  return limit === undefined || limit.origin === 'unknown' || wanted <= limit.low ? null : limit.low;
}
