import { excerpt, type InputError } from './inputError.ts';
import { chosenErrors, withChosenDone } from './chosen.ts';
import { contradictions } from './contradictions.ts';
import { errorsOf } from './issueErrors.ts';
import type { Setup, SetupDocument } from './setup.ts';
import { setupSchema } from './setupSchema.ts';

/** A setup that was read, or everything that is wrong with it. */
export type SetupReading =
  { readonly ok: true; readonly setup: Setup } | { readonly ok: false; readonly errors: readonly InputError[] };

/** The largest setup text that is read [characters]. */
export const largestSetup = 1_000_000;

/**
 * Reads a setup from its text.
 *
 * @param text JSON text [≤ 1,000,000 characters]
 * @returns the setup, or every error in it [codes of InputError]
 * @example readSetupText('{"hitchwright":1,"tractor":{},"implement":{}}').ok // true
 */
export function readSetupText(text: string): SetupReading {
  if (text.length > largestSetup) {
    return refused(
      'too-large',
      '',
      `at most ${largestSetup} characters`,
      `${text.length} characters`,
      'Is this the right file?',
    );
  }
  try {
    return readSetup(parseSetup(text));
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
    return refused(
      'not-json',
      '',
      'a setup in JSON',
      excerpt(text),
      'Check commas, quotes and brackets near the place named: ' + excerpt(problem.message),
    );
  }
}

/**
 * Parses the text of a setup document; a byte order mark in front is no part of it.
 *
 * @param text JSON text [characters]
 * @returns the document; throws a SyntaxError where it is no JSON [any]
 */
export function parseSetup(text: string): unknown {
  return JSON.parse(text.replace(/^\ufeff/, ''));
}

/**
 * Reads a setup from a parsed document. Every error is reported, each with its path; nothing is guessed.
 *
 * @param document parsed JSON [any]
 * @returns the setup, or every error in it [codes of InputError]
 */
export function readSetup(document: unknown): SetupReading {
  const units = (document as { units?: unknown } | null)?.units === 'metric' ? 'metric' : 'us';
  const reading = setupSchema(units).safeParse(document);
  if (!reading.success) return { ok: false, errors: errorsOf(reading.error.issues, document) };
  const setup = reading.data as unknown as Setup;
  const errors = [...contradictions(setup), ...errorsOfChosen(setup, document as SetupDocument)];
  return errors.length === 0 ? { ok: true, setup } : { ok: false, errors };
}

/** What is wrong once the cures that were chosen are done. */
function errorsOfChosen({ chosen }: Setup, document: SetupDocument): InputError[] {
  if (chosen === undefined) return [];
  const done = readSetup(withChosenDone(document));
  return done.ok ? [] : chosenErrors(done.errors);
}

function refused(code: InputError['code'], path: string, expected: string, got: string, hint: string): SetupReading {
  return { ok: false, errors: [{ code, path, expected, got, hint }] };
}
