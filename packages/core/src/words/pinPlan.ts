import type { MovablePath, PinPlan, PinRefusal, PinTarget } from '../engine/pinplan/index.ts';
import { fieldRules, type FieldRule, type Setup } from '../records/index.ts';
import { mmPerInch, printBoth, printQuantity, type UnitSystem } from '../units/index.ts';
import { becauseOf, verdictWords } from './answer.ts';
import { decidesText, fit } from './asks.ts';
import { cautionWords } from './cautions.ts';
import { sentenceOf, titleOf } from './findings.ts';
import { howToMeasure, labelOf } from './labels.ts';
import { sentenceCase } from './sentenceCase.ts';

/** A pin plan in words. */
export interface PinPlanWords {
  /** What has to move, the moves that are made first; one sentence each. */
  readonly moves: readonly string[];
  /** Where each measure may lie; one line each. */
  readonly ranges: readonly string[];
  /** What has to stay free. */
  readonly clear: readonly string[];
  /** What the setup comes to with the pins so. */
  readonly after: string;
  /** What has to be looked at again once the pins sit there. */
  readonly again: readonly string[];
  readonly assumed: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Puts a pin plan into words.
 *
 * @param plan the plan [record]
 * @param system unit system to write in [us | metric]
 * @returns sentences by what they are about [texts]
 */
export function pinPlanWords(plan: PinPlan, system: UnitSystem): PinPlanWords {
  const moved = plan.targets.filter(({ stays }) => !stays);
  const because = becauseOf(plan.after, plan.setup, system);
  return {
    moves: moved.map((target) => moveText(target, system)),
    ranges: plan.targets.map((target) => rangeLine(target, system)),
    clear: plan.clear.map(({ at, side, measured }) => {
      const where = at === 'lower' ? 'each lower pin' : 'the upper pin';
      const sure = measured ? '' : ' – by what is usual, not measured on this coupler';
      return `Keep a block of ${inBoth(side.high, system, 'up')} about ${where} free of plates, braces and hoses, for hook and latch${sure}.`;
    }),
    after: `With the pins so, the hook-up holds. All in all: ${verdictWords(plan.after).toLowerCase()}.${because === null ? '' : ` ${because}`}`,
    again: againWords(moved),
    assumed: plan.assumed.map(
      ({ path, basis }) => `${sentenceCase(labelOf(path))}${basis === null ? '' : `: ${basis}`}.`,
    ),
    cautions: [warranty, ...cautions.map((id) => cautionWords[id])],
  };
}

const warranty =
  'Altering a hitch commonly ends the maker’s warranty, and a rented machine is not altered at all: ask before anything is cut. Where the pins sit says nothing of how they are held.';
const cautions = ['boltedPlate', 'pinRoundSmall', 'cutPart', 'standClear', 'firstLift', 'manualPrevails'] as const;

function againWords(moved: readonly PinTarget[]): string[] {
  const isUpper = moved.some(({ path }) => path === 'implement.mastHeight' || path === 'implement.mastSetback');
  return [
    'The free room was measured where the pins are now: measure it again where they will be.',
    ...(isUpper
      ? ['With another upper pin the implement stands otherwise: check top link and drive shaft again.']
      : []),
    'Measure the finished pins and check the setup again before the first hook-up.',
  ];
}

const doings: Readonly<Record<MovablePath, readonly [less: string, more: string, between: string]>> = {
  'implement.shoulderSpan': [
    'Set the lower pins nearer together',
    'Set the lower pins farther apart',
    'shoulder to shoulder',
  ],
  'implement.standOut': ['Make the lower pins shorter', 'Make the lower pins longer', 'from step to tip'],
  'implement.shoulderToHole': [
    'Set the retaining holes farther in',
    'Set the retaining holes farther out',
    'from the step to the near edge of the hole',
  ],
  'implement.mastHeight': ['Set the upper pin lower', 'Set the upper pin higher', 'square up from the lower pins'],
  'implement.mastSetback': [
    'Set the upper pin farther forward',
    'Set the upper pin farther back',
    'behind the lower pins',
  ],
};

/** `Set the upper pin lower by 2 in (51 mm): now 20 1/2 in (521 mm), then 18 1/2 in (470 mm), square up from the lower pins.` */
function moveText({ path, now, aim }: PinTarget, system: UnitSystem): string {
  const at = (now.low + now.high) / 2;
  const [less, more, between] = doings[path];
  const each = path === 'implement.shoulderSpan' ? `, ${inBoth(Math.abs(aim - at) / 2, system)} on each side` : '';
  return `${aim < at ? less : more} by ${betweenPrinted(at, aim, system)}${each}: now ${inBoth(at, system)}, then ${inBoth(aim, system)}, ${between}.`;
}

/** How far apart two lengths are as they are printed, in each unit: what stands on the plan adds up. */
function betweenPrinted(from: number, to: number, system: UnitSystem): string {
  const apart = (step: number): number => Math.abs(Math.round(to / step) - Math.round(from / step)) * step;
  const [inches, millimetres] = [
    printQuantity(apart(mmPerInch / 16), 'length', { system: 'us' }),
    printQuantity(apart(1), 'length', { system: 'metric' }),
  ];
  return system === 'us' ? `${inches} (${millimetres})` : `${millimetres} (${inches})`;
}

function rangeLine({ path, now, low, high, stays }: PinTarget, system: UnitSystem): string {
  const label = sentenceCase(labelOf(path));
  if (stays && low === now.low && high === now.high)
    return `${label}: stays as it is, ${inBoth((low + high) / 2, system)}.`;
  const { min, max } = fieldRules.get(path) as FieldRule;
  const ends = { low: low ?? min, high: high ?? max };
  const where = decidesText({ path, passes: [ends], fails: [] }, system, fit);
  return `${label}: ${where}.${stays ? ' It stays as it is.' : ''}`;
}

function inBoth(value: number, system: UnitSystem, round: 'nearest' | 'up' = 'nearest'): string {
  return printBoth(value, 'length', { system, round });
}

/** Why there is no pin plan, in words. */
export interface PinRefusalWords {
  readonly headline: string;
  readonly sentences: readonly string[];
}

/**
 * Says why there is no pin plan, and what to do instead.
 *
 * @param refused why there is none [record]
 * @param setup a setup that was read [record]
 * @param system unit system to write in [us | metric]
 * @returns a headline and sentences [texts]
 */
export function pinRefusalWords(refused: PinRefusal, setup: Setup, system: UnitSystem): PinRefusalWords {
  switch (refused.why) {
    case 'noCoupler':
      return told('No coupler is named', 'A plan of the pins is made for one coupler: name it in the setup.');
    case 'fitsAlready':
      return told('Nothing has to move', 'The implement takes this coupler with its pins where they are.');
    case 'mayNotAlter':
      return told(
        'This machine is not to be altered',
        refused.alteration === 'rented'
          ? 'It is rented: its owner decides what is done to it.'
          : 'It is under warranty, which an alteration would commonly end.',
      );
    case 'counterpart':
      return told(
        'Moving pins does not help',
        refused.kind === 'bar'
          ? 'This coupler carries the implement by jaws over its bar, not by its lower pins.'
          : 'A triangular frame goes into a receiver of its own shape, not onto pins.',
      );
    case 'notByMoving':
    case 'noPlace':
      return {
        headline: refused.why === 'noPlace' ? 'No place of the pins serves' : 'Moving pins does not help',
        sentences: refused.findings.map((finding) => `${titleOf(finding)}: ${sentenceOf(finding, setup, system)}`),
      };
    case 'measureFirst':
      return toMeasure('Measure first', refused.paths);
    case 'tooCoarse':
      return toMeasure('Measure more closely first: what is left of the range is not wide enough', refused.paths);
  }
}

function told(headline: string, sentence: string): PinRefusalWords {
  return { headline, sentences: [sentence] };
}

function toMeasure(headline: string, paths: readonly string[]): PinRefusalWords {
  return {
    headline,
    sentences: paths.map((path) => `${sentenceCase(labelOf(path))}. ${howToMeasure(path)}`.trim()),
  };
}

/**
 * A figure of a plan and its range for a drawing, the range rounded inward.
 *
 * @param target the target of one measure [mm]
 * @param system unit system to write in [us | metric]
 * @returns the figures in the chosen unit [texts]
 */
export function targetFigures({ now, aim, low, high }: PinTarget, system: UnitSystem) {
  const isNarrow = low !== null && high !== null && high - low < 8;
  const step = system === 'us' ? (isNarrow ? 64 : 16) : isNarrow ? 0.1 : 1;
  const printed = (value: number, round: 'nearest' | 'up' | 'down'): string =>
    printQuantity(value, 'length', { system, round, step });
  const from = low === null ? null : printed(low, 'up');
  const to = high === null ? null : printed(high, 'down');
  return {
    now: printQuantity((now.low + now.high) / 2, 'length', { system }),
    aim: printed(aim, 'nearest'),
    range:
      from === null ? `${to} or less` : to === null ? `${from} or more` : `${from.replace(/ (in|mm)$/, '')} to ${to}`,
    move: printed(Math.abs(aim - (now.low + now.high) / 2), 'nearest'),
  };
}
