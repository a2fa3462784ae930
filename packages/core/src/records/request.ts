import type { UnitSystem } from '../units/index.ts';
import { atPath, withEdits, type Edit } from './edit.ts';
import { fieldRules } from './fields.ts';
import { excerpt, type InputError } from './inputError.ts';
import { errorsOf } from './issueErrors.ts';
import { readSetup } from './readSetup.ts';
import { replySchema, requestSchema } from './requestSchema.ts';
import type { SetupDocument } from './setup.ts';

/** A dealer’s question to one customer: which figures to read for which setup. */
export interface MeasuringRequest {
  readonly hitchwrightRequest: 1;
  /** Names the request, so that a reply finds it again. */
  readonly id: string;
  /** Who asks, and whom. */
  readonly asks?: string;
  readonly of?: string;
  /** When it was asked [ISO 8601]. */
  readonly when: string;
  /** Fields that are needed. */
  readonly fields: readonly string[];
  readonly setup: SetupDocument;
}

/** What was read for a request, by whom and when. */
export interface MeasuringReply {
  readonly hitchwrightReply: 1;
  readonly request: string;
  readonly who?: string;
  /** When it was sent [ISO 8601]. */
  readonly when: string;
  readonly readings: readonly Edit[];
  /** Fields that could not be reached. */
  readonly left: readonly string[];
  /** Photos, only where the reply travels as a file. */
  readonly photos?: readonly { readonly path: string; readonly jpeg: string }[];
}

/** A document that was read, or everything that is wrong with it. */
type ReadAs<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Reads a measuring request.
 *
 * @param document parsed JSON [any]
 * @returns the request, or every error in it and in its setup [codes of InputError]
 */
export function readRequest(document: unknown): ReadAs<MeasuringRequest> {
  const reading = requestSchema.safeParse(document);
  if (!reading.success) return refused(versioned(errorsOf(reading.error.issues, document), 'hitchwrightRequest'));
  const setup = readSetup(reading.data.setup);
  const errors = [
    ...reading.data.fields.flatMap((path, i) => (isAskable(path) ? [] : [notAField(`fields.${i}`, path)])),
    ...(setup.ok ? [] : setup.errors.map((error) => ({ ...error, path: below('setup', error.path) }))),
  ];
  return errors.length === 0 ? { ok: true, value: reading.data as MeasuringRequest } : refused(errors);
}

/**
 * Reads a reply to a measuring request. Each reading is read as the setup would read it, and has to mean the same in every unit
 * system: a reply doesn’t say in which of them it was typed.
 *
 * @param document parsed JSON [any]
 * @returns the reply, or every error in it [codes of InputError]
 */
export function readReply(document: unknown): ReadAs<MeasuringReply> {
  const reading = replySchema.safeParse(document);
  if (!reading.success) return refused(versioned(errorsOf(reading.error.issues, document), 'hitchwrightReply'));
  const reply = reading.data as MeasuringReply;
  const errors = [
    ...reply.readings.flatMap(readingErrors),
    ...reply.readings.flatMap(({ path }, i) => (firstOf(reply.readings, path) === i ? [] : [readTwice(path)])),
    ...reply.left.flatMap((path, i) => (isAskable(path) ? [] : [notAField(`left.${i}`, path)])),
  ];
  return errors.length === 0 ? { ok: true, value: reply } : refused(errors);
}

function refused(errors: readonly InputError[]): { readonly ok: false; readonly errors: readonly InputError[] } {
  return { ok: false, errors };
}

/** A document of another version says so, whatever else is new in it. */
function versioned(errors: readonly InputError[], key: string): readonly InputError[] {
  const other = errors.find(({ path, code }) => path === key && code !== 'missing');
  return other === undefined ? errors : [{ ...other, code: 'version', hint: 'It was made for another version.' }];
}

function below(parent: string, path: string): string {
  return path === '' ? parent : `${parent}.${path}`;
}

/** Asked for in words only: no figure of a setup answers it. */
const askedInWords: readonly string[] = ['shaft.triedByHand'];

/** Whether a setup has the field. */
function isAskable(path: string): boolean {
  if (fieldRules.has(path) || askedInWords.includes(path)) return true;
  const { errors } = readAlone({ path, value: null }, 'us');
  return !isInsideField(path) && errors.some((error) => error.path === path && error.code !== 'unknown-key');
}

/** A part of how a figure is written is no field. */
function isInsideField(path: string): boolean {
  return [...fieldRules.keys()].some((field) => path.startsWith(`${field}.`));
}

/** What a setup with nothing else in it says of one reading. */
function readAlone(edit: Edit, units: UnitSystem): { errors: readonly InputError[]; read: unknown } {
  const machine = edit.path.startsWith('coupler.') ? { coupler: { kind: 'uFrame' } } : {};
  const reading = readSetup(withEdits({ hitchwright: 1, units, tractor: {}, implement: {}, ...machine }, [edit]));
  if (reading.ok) return { errors: [], read: atPath(reading.setup, edit.path) };
  return { errors: reading.errors.filter((error) => !isOfOthers(error, edit.path)), read: null };
}

/** Whether an error holds a reading against another field: that is for whoever has both. */
function isOfOthers({ code, expected }: InputError, path: string): boolean {
  return code === 'contradiction' && [...fieldRules.keys()].some((other) => other !== path && expected.includes(other));
}

function readingErrors(edit: Edit): readonly InputError[] {
  const { path, value } = edit;
  if (isInsideField(path)) return [notAField(path, path)];
  if (!fieldRules.has(path) && !isChoice(value))
    return [wrong(path, 'a short word, a number, yes or no, or a list of numbers', value)];
  const [us, metric] = (['us', 'metric'] as const).map((units) => readAlone(edit, units));
  if (us === undefined || metric === undefined) return [];
  if (us.errors.length > 0 && metric.errors.length > 0) return us.errors;
  const isClear = us.errors.length + metric.errors.length === 0 && isSame(us.read, metric.read);
  return isClear ? [] : [{ ...wrong(path, 'figures with their units', value), code: 'ambiguous', hint: withUnit }];
}

const withUnit = 'Write the unit beside each figure, such as 26 7/8 in.';

/** The same figures, whichever unit system they were read in. */
function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** What is chosen or counted, and no quantity. */
function isChoice(value: unknown): boolean {
  if (Array.isArray(value)) return value.length <= longestList && value.every((one) => typeof one === 'number');
  return ['string', 'number', 'boolean'].includes(typeof value) && String(value).length <= longestWord;
}

const longestList = 12;
const longestWord = 200;

function firstOf(readings: readonly Edit[], path: string): number {
  return readings.findIndex((reading) => reading.path === path);
}

function wrong(path: string, expected: string, value: unknown): InputError {
  return { code: 'wrong-type', path, expected, got: excerpt(value), hint: 'Is it a reading of this version?' };
}

function notAField(at: string, path: string): InputError {
  const hint = 'Was it made by another version?';
  return { code: 'unknown-key', path: at, expected: 'a field of a setup', got: excerpt(path), hint };
}

function readTwice(path: string): InputError {
  const hint = 'Keep one of the two.';
  return { code: 'contradiction', path, expected: 'one reading of each field', got: 'another of the same', hint };
}
