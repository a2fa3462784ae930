import { fieldRules } from './fields.ts';
import { excerpt, type InputError } from './inputError.ts';
import { errorsOf } from './issueErrors.ts';
import { readSetup } from './readSetup.ts';
import { readValue } from './readValue.ts';
import { replySchema, requestSchema } from './requestSchema.ts';
import type { Edit } from './edit.ts';
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
  if (!reading.success) return { ok: false, errors: errorsOf(reading.error.issues, document) };
  const setup = readSetup(reading.data.setup);
  if (!setup.ok) return { ok: false, errors: setup.errors.map((error) => ({ ...error, path: `setup.${error.path}` })) };
  return { ok: true, value: reading.data as MeasuringRequest };
}

/**
 * Reads a reply to a measuring request. Each reading is read by the rule of its field.
 *
 * @param document parsed JSON [any]
 * @returns the reply, or every error in it [codes of InputError]
 */
export function readReply(document: unknown): ReadAs<MeasuringReply> {
  const reading = replySchema.safeParse(document);
  if (!reading.success) return { ok: false, errors: errorsOf(reading.error.issues, document) };
  const reply = reading.data as MeasuringReply;
  const errors = reply.readings.flatMap(valueErrors);
  return errors.length === 0 ? { ok: true, value: reply } : { ok: false, errors };
}

function valueErrors({ path, value }: Edit): readonly InputError[] {
  const rule = fieldRules.get(path);
  if (rule !== undefined) return readValue(value, rule, path, 'us').errors;
  if (['string', 'number', 'boolean'].includes(typeof value) && String(value).length <= 200) return [];
  const hint = 'Is it a reading of this version?';
  return [{ code: 'wrong-type', path, expected: 'a short word, a number, or yes or no', got: excerpt(value), hint }];
}
