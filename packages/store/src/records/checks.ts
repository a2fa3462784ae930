import { excerpt, readingGrades, readSetup, type InputError } from '@hitchwright/core/records';
import { documentOf, placeOf, type DocumentKind } from './document.ts';
import { recordKinds, type Fields, type ReadingDraft, type RecordKind } from './kinds.ts';
import { fitsIn, flattened, isPlainObject } from './paths.ts';
import { recordKindOfPart, ruleAt } from './sizes.ts';
import { longestName, longestNote, refusal, textErrors } from './text.ts';

/** A record as far as its own content goes: what it stands for in a setup is null for a customer. */
export interface Content {
  readonly kind: RecordKind;
  readonly standsFor: DocumentKind | null;
  readonly name: string;
  readonly fields: Fields;
}

/** Errors that only a whole setup can have; a record keeps what people read, however it agrees. */
const ofTheWhole: readonly InputError['code'][] = ['contradiction', 'swapped'];
/** How large the plain fields of a record may be [characters]. */
export const largestFields = 200_000;
const largestLeaf = 20_000;
/** A day ahead is the same day somewhere. */
const dayMs = 86_400_000;

/** Everything that is wrong with the name and the plain fields of a record. */
export function contentErrors({ kind, standsFor, name, fields }: Content): InputError[] {
  const named = [...kindErrors(kind), ...textErrors('name', name, longestName, 1)];
  if (!fitsIn(fields, largestFields)) return [...named, tooLarge('fields', largestFields)];
  const paths = [...flattened(fields).keys()];
  const wrong = [...named, ...paths.flatMap(keyErrors), ...besideErrors(fields), ...shelfErrors(kind, fields)];
  if (wrong.length > 0 || standsFor === null) return [...wrong, ...(standsFor === null ? strangeTo(fields) : [])];
  const readings = paths.filter((path) => startsOf(path).some((start) => ruleAt(standsFor, fields, start)));
  const found = setupErrors(documentOf(standsFor, name, fields, new Map()), standsFor);
  return [...found.filter((error) => !isInherited(error, kind)), ...readings.map(belongsToReadings)];
}

/** `a`, `a.b` and `a.b.c` of `a.b.c`. */
function startsOf(path: string): string[] {
  const keys = path.split('.');
  return keys.map((_, i) => keys.slice(0, i + 1).join('.'));
}

/** Everything that is wrong with readings that are to be written down. */
export function readingErrors(drafts: readonly ReadingDraft[], content: Content, now: string): InputError[] {
  const plain = drafts.map((draft, i) => draftErrors(draft, `readings.${i}`, now));
  const sound = drafts.filter((_, i) => plain[i]?.length === 0);
  const strange = sound.filter(({ field }) => !isRead(content, field)).map(({ field }) => notAField(field));
  const read = rounds(sound.filter(({ field }) => isRead(content, field)));
  return [...plain.flat(), ...strange, ...read.flatMap((round) => leafErrors(round, content))];
}

/** Readings as documents can hold them: of each field one at a time. */
function rounds(drafts: readonly ReadingDraft[]): ReadingDraft[][] {
  const round: ReadingDraft[] = [];
  const later: ReadingDraft[] = [];
  const taken = new Set<string>();
  for (const draft of drafts) {
    (taken.has(draft.field) ? later : round).push(draft);
    taken.add(draft.field);
  }
  return round.length === 0 ? [] : [round, ...rounds(later)];
}

function isRead({ standsFor, fields }: Content, field: string): boolean {
  return standsFor !== null && ruleAt(standsFor, fields, field) !== undefined;
}

function notAField(field: string): InputError {
  const hint = 'Is its name spelt as in the setup schema?';
  return refusal('unknown-key', excerpt(field), 'a field that can be read', excerpt(field), hint);
}

function draftErrors({ field, leaf, grade, who, readAt }: ReadingDraft, path: string, now: string): InputError[] {
  return [
    ...textErrors(`${path}.field`, field, longestName, 1),
    ...(readingGrades.includes(grade) ? [] : [notOneOf(`${path}.grade`, readingGrades, grade)]),
    ...(who === undefined ? [] : textErrors(`${path}.who`, who, longestName)),
    ...(readAt === undefined ? [] : timeErrors(`${path}.readAt`, readAt, now)),
    ...(fitsIn(leaf, largestLeaf) ? [] : [tooLarge(`${path}.leaf`, largestLeaf)]),
  ];
}

function leafErrors(round: readonly ReadingDraft[], { standsFor, name, fields }: Content): InputError[] {
  if (standsFor === null) return [];
  const kept = { ...(standsFor === 'coupler' ? { kind: 'uFrame' } : {}), ...pick(fields, 'kind') };
  const leaves = new Map(round.map(({ field, leaf }) => [field, leaf ?? null]));
  const found = setupErrors(documentOf(standsFor, name, kept, leaves), standsFor);
  return found.filter(({ path }) => round.some(({ field }) => path === field || path.startsWith(`${field}.`)));
}

/** A time that something was read. */
function timeErrors(path: string, time: string, now: string): InputError[] {
  const at = isTime(time) ? Date.parse(time) : NaN;
  if (Number.isNaN(at))
    return [refusal('wrong-type', path, 'a day such as 2026-09-14', excerpt(time), 'Write year, month, day.')];
  if (at > Date.parse(now) + dayMs)
    return [refusal('out-of-range', path, 'a day that has been', excerpt(time), 'Is the year right?')];
  return [];
}

/** Whether a text is a day, or a day with its time. */
export function isTime(text: string): boolean {
  return text.length < 40 && /^\d{4}-\d\d-\d\d(T|$)/.test(text) && !Number.isNaN(Date.parse(text));
}

/** What the reader of setups finds wrong with one of its parts, by paths below it. */
function setupErrors(document: unknown, kind: DocumentKind): InputError[] {
  const place = placeOf(kind);
  const part = place === 'parts.0' ? { parts: [document] } : { [place]: document };
  const reading = readSetup({ hitchwright: 1, tractor: {}, implement: {}, ...part });
  if (reading.ok) return [];
  const below = `${place}.`;
  return reading.errors
    .filter(({ code, path }) => !ofTheWhole.includes(code) && (path === place || path.startsWith(below)))
    .map((error) => ({ ...error, path: error.path === place ? '' : error.path.slice(below.length) }));
}

/** A machine or a state leaves to what it is laid over what it doesn’t say itself. */
function isInherited({ path, got }: InputError, kind: RecordKind): boolean {
  return (kind === 'machine' || kind === 'state') && path === 'kind' && got === 'nothing';
}

/** Fields of the yard’s own, beside what a setup knows. */
function besideErrors({ price, contact, extra, fits, note }: Fields): InputError[] {
  return [
    ...(price === undefined || isPrice(price) ? [] : [wrong('price', 'an amount and a currency', price)]),
    ...(contact === undefined || isContact(contact) ? [] : [wrong('contact', 'texts by what they are', contact)]),
    ...(extra === undefined || isExtra(extra) ? [] : [wrong('extra', 'a list of labels and texts', extra)]),
    ...(fits === undefined || isTexts(fits) ? [] : [wrong('fits', 'a list of names', fits)]),
    ...(note === undefined ? [] : textErrors('note', note, longestNote)),
  ];
}

/** Only what lies on the shelf is meant for something, and a weight is no other part. */
function shelfErrors(kind: RecordKind, { kind: partKind, fits }: Fields): InputError[] {
  const isOnShelf = kind === 'part' || kind === 'weight' || kind === 'shaft';
  if (!isOnShelf) return fits === undefined ? [] : [refusal('unknown-key', 'fits', 'nothing', 'a list', 'Remove it.')];
  const is = recordKindOfPart(partKind);
  if (kind === 'shaft' || partKind === undefined || is === kind) return [];
  return [
    refusal('not-a-choice', 'kind', `a kind of ${kind}`, excerpt(partKind), `Make a record of kind ${is} of it.`),
  ];
}

function isPrice(price: unknown): boolean {
  if (!isPlainObject(price) || Object.keys(price).some((key) => key !== 'amount' && key !== 'currency')) return false;
  const { amount, currency } = price;
  return typeof amount === 'number' && amount >= 0 && amount <= 1e6 && /^[A-Z]{3}$/.test(String(currency));
}

function isContact(contact: unknown): boolean {
  return isPlainObject(contact) && Object.values(contact).every((text) => isShort(text, longestNote));
}

function isExtra(extra: unknown): boolean {
  const isOne = (one: unknown): boolean =>
    isPlainObject(one) &&
    Object.keys(one).length === 2 &&
    isShort(one['label'], longestName) &&
    isShort(one['text'], longestNote);
  return Array.isArray(extra) && extra.length <= 200 && extra.every(isOne);
}

function isTexts(list: unknown): boolean {
  return Array.isArray(list) && list.length <= 60 && list.every((text) => isShort(text, longestName));
}

function isShort(text: unknown, longest: number): boolean {
  return typeof text === 'string' && text.length <= longest;
}

/** A customer has no more than how to reach them and what to remember. */
function strangeTo(fields: Fields): InputError[] {
  const known = ['note', 'contact', 'extra'];
  const strange = Object.keys(fields).filter((key) => !known.includes(key));
  return strange.map((key) =>
    refusal('unknown-key', excerpt(key), `one of ${known.join(', ')}`, excerpt(key), 'Remove it.'),
  );
}

function kindErrors(kind: RecordKind): InputError[] {
  return recordKinds.includes(kind) ? [] : [notOneOf('kind', recordKinds, kind)];
}

function keyErrors(path: string): InputError[] {
  if (path.length <= longestName && path.split('.').every((key) => /^[A-Za-z][A-Za-z0-9_]*$/.test(key))) return [];
  return [refusal('unknown-key', excerpt(path), 'a known key', excerpt(path), 'Remove it.')];
}

function belongsToReadings(path: string): InputError {
  return refusal('wrong-type', path, 'a reading', 'a plain field', 'Give it among the readings, with its grade.');
}

function notOneOf(path: string, choices: readonly string[], got: unknown): InputError {
  return refusal('not-a-choice', path, `one of ${choices.join(', ')}`, excerpt(got), 'Choose one of those.');
}

function wrong(path: string, expected: string, got: unknown): InputError {
  return refusal('wrong-type', path, expected, excerpt(got), 'Look at how the others are written.');
}

function tooLarge(path: string, most: number): InputError {
  return refusal('too-large', path, `at most ${most} characters`, 'more', 'Shorten it.');
}

function pick(fields: Fields, key: string): Fields {
  return fields[key] === undefined ? {} : { [key]: fields[key] };
}
