import { categories, couplerKinds } from '@hitchwright/core/tables';
import type { CouplerKind } from '@hitchwright/core/records';
import { mountingNames } from '@hitchwright/core/words';
import { balanceChoices } from './balanceChoices.ts';
import { driveChoices } from './driveChoices.ts';
import { workChoices } from './workChoices.ts';

/** A field that is chosen, not measured. */
export interface PlainChoice {
  readonly label: string;
  /** What a document says, and what a person reads. */
  readonly options: readonly (readonly [string, string])[];
  /** True where it can't be left out. */
  readonly required?: boolean;
  /** What holds while nothing is chosen; there is then no choice of "not known". */
  readonly usual?: string;
  /** How a document says it; as text unless given. */
  readonly says?: 'number' | 'numbers' | 'yesOrNo';
}

const couplerNames: Readonly<Record<CouplerKind, string>> = {
  uFrame: 'frame with two lower hooks and a top hook',
  triangle: 'triangular frame for a pocket on the implement',
  clawEnds: 'claws on the lower links that close over balls',
  bar: 'bar between the lower links for jaws on the implement',
  hookEnds: 'hooks on the ends of the lower links',
};

/** Every chosen field by its key, in plain words. */
export const plainChoices: Readonly<Record<string, PlainChoice>> = {
  category: {
    label: 'category stamped or sold as',
    options: categories.map((category) => [category, `category ${category}`]),
  },
  kind: { label: 'kind of coupler', required: true, options: couplerKinds.map((kind) => [kind, couplerNames[kind]]) },
  mounting: { label: 'how it is mounted', options: Object.entries(mountingNames) },
  floatSits: {
    label: 'where the float sits',
    options: [
      ['atPin', 'at the upper pin itself'],
      ['behindPin', 'behind a fixed upper pin'],
    ],
  },
  alteration: {
    label: 'may it be altered?',
    options: [
      ['allowed', 'yes, it may'],
      ['rented', 'no, it is rented'],
      ['warranty', 'no, it is under warranty'],
    ],
  },
  pinsPoint: {
    label: 'lower pins point',
    options: [
      ['out', 'outward, away from each other'],
      ['in', 'inward, toward each other'],
    ],
  },
  pinFixing: {
    label: 'lower pins are',
    options: [
      ['bolted', 'bolted on'],
      ['welded', 'welded on'],
      ['reversible', 'made to be turned round'],
    ],
  },
  lowerPinPlates: {
    label: 'each lower pin is held by',
    options: [
      ['single', 'one plate'],
      ['double', 'two plates, one on each side'],
    ],
  },
  receiver: {
    label: 'counterpart it carries',
    options: [
      ['triangle', 'a pocket for a triangular frame'],
      ['jaws', 'jaws that drop over a bar'],
      ['none', 'none'],
    ],
  },
  retainingPin: {
    label: 'behind the hooks',
    options: [
      ['needed', 'each pin needs its own retaining pin'],
      ['notNeeded', 'the hook itself keeps the pin in'],
    ],
  },
  liftCylinders: {
    label: 'lift cylinders that push together',
    says: 'number',
    usual: '1',
    options: [
      ['1', 'one'],
      ['2', 'two'],
      ['3', 'three'],
      ['4', 'four'],
    ],
  },
  ...driveChoices,
  ...balanceChoices,
  ...workChoices,
  liftAllowance: {
    label: 'how much of a rating is counted on',
    usual: 'tenPercentOff',
    options: [
      ['tenPercentOff', 'nine tenths: 10 percent off'],
      ['asRated', 'all of it, as rated'],
    ],
  },
};

/** What a choice shows for what a document says. */
export function chosenIn(choice: PlainChoice, raw: unknown): string {
  if (typeof raw === 'string' || typeof raw === 'number') return String(raw);
  if (typeof raw === 'boolean') return raw ? 'yes' : 'no';
  if (Array.isArray(raw)) return raw.join(', ');
  return choice.usual ?? '';
}

/** What a document says for a choice; nothing where it is what holds anyhow. */
export function saidBy(choice: PlainChoice, chosen: string): unknown {
  if (chosen === '' || chosen === choice.usual) return undefined;
  if (choice.says === 'yesOrNo') return chosen === 'yes';
  if (choice.says === 'numbers') return chosen.split(', ').map(Number);
  return choice.says === 'number' ? Number(chosen) : chosen;
}

/** What a person calls a reference point. */
const pointNames: Readonly<Record<string, string>> = {
  shoulder: 'step to step of the pins',
  ballCentre: 'ball centre to ball centre',
  unsaid: 'not said where',
  innerFaces: 'inner faces of the balls',
  outerFaces: 'outer faces of the balls',
  groove: 'the groove round the shaft',
  shaftEnd: 'the end of the shaft',
  crossCentre: 'the cross centre of the joint on it',
};

/** The same where a length runs from one point to its like. */
const spanNames: Readonly<Record<string, string>> = {
  crossCentre: 'cross to cross',
  pinToPin: 'lock pin to lock pin',
  yokeEnds: 'yoke end to yoke end',
};

/** What a person calls a reference point of a field. */
export function pointName(path: string, point: string): string {
  const name = path === 'shaft.closedLength' ? spanNames[point] : pointNames[point];
  return name ?? point;
}

/** How a field's reference points are asked for: at one end of the tape, or at both. */
export function pointsQuestion(path: string): string {
  if (path.startsWith('shaft.yokeReach')) return 'measured from';
  return path.endsWith('Behind') || path.endsWith('BehindAxle') ? 'measured to' : 'measured between';
}
