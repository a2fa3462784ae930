import { readingGrades } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { isTime } from './checks.ts';
import type { DocumentKind } from './document.ts';
import type { Fields, Reading, ReadingDraft } from './kinds.ts';
import { withUnits } from './leafUnits.ts';
import { isPlainObject } from './paths.ts';
import { ruleAt } from './sizes.ts';

/** Who writes readings down, when, and under which ids. */
export interface Entering {
  readonly who: string;
  readonly now: string;
  readonly ids: () => string;
  /** Source of the import that they come with. */
  readonly origin: string | null;
}

/** Readings with their units written out, as they are checked and kept. */
export function spelt(
  drafts: readonly ReadingDraft[],
  standsFor: DocumentKind | null,
  fields: Fields,
  units: UnitSystem = 'us',
): ReadingDraft[] {
  return drafts.map((draft) => {
    const rule = standsFor === null ? undefined : ruleAt(standsFor, fields, draft.field);
    return rule === undefined ? draft : { ...draft, leaf: withUnits(draft.leaf, rule, units) };
  });
}

/** A reading that was found in order, as it is kept. */
export function newReading(draft: ReadingDraft, recordId: string, entering: Entering): Reading {
  const { field, leaf, grade, photoId, pin } = draft;
  return {
    id: entering.ids(),
    recordId,
    field,
    leaf: leaf ?? null,
    grade,
    who: draft.who ?? textIn(leaf, 'who'),
    readAt: draft.readAt ?? timeIn(leaf),
    enteredAt: entering.now,
    enteredBy: entering.who,
    origin: entering.origin,
    photoId: photoId ?? null,
    pinnedAt: pin === true ? entering.now : null,
    withdrawnAt: null,
  };
}

/**
 * How well a leaf of a document is founded, as far as it says itself: measured where it names a tool, a method or a day, usual for the class
 * where it names a basis, a guess where it names nothing but a range, else listed.
 *
 * @param leaf as a setup document has it [JSON]
 * @returns how well it is founded [grade]
 */
export function gradeOf(leaf: unknown): ReadingDraft['grade'] {
  const [measured, , listed, guessed, usual] = readingGrades;
  if (!isPlainObject(leaf)) return listed;
  if (leaf['default'] !== undefined) return usual;
  if (['tool', 'method', 'when'].some((key) => leaf[key] !== undefined)) return measured;
  return leaf['between'] !== undefined && leaf['source'] === undefined ? guessed : listed;
}

function textIn(leaf: unknown, key: string): string | null {
  const text = isPlainObject(leaf) ? leaf[key] : undefined;
  return typeof text === 'string' && text.length <= 200 && !/[\p{Cs}\0]/u.test(text) ? text : null;
}

function timeIn(leaf: unknown): string | null {
  const text = textIn(leaf, 'when');
  return text !== null && isTime(text) ? text : null;
}
