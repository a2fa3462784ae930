/** One thing wrong with an input: where, what was expected, what came, and what to do. Collected for the whole input. */
export interface InputError {
  readonly code: InputErrorCode;
  /** Field path such as `implement.mastHeight`; empty for the document as a whole. */
  readonly path: string;
  readonly expected: string;
  readonly got: string;
  readonly hint: string;
}

/** What kind of thing is wrong. */
export type InputErrorCode =
  | 'not-json'
  | 'too-large'
  | 'wrong-type'
  | 'missing'
  | 'unknown-key'
  | 'not-a-choice'
  | 'empty'
  | 'not-a-quantity'
  | 'wrong-unit'
  | 'ambiguous'
  | 'out-of-range'
  | 'not-finite'
  | 'wrong-order'
  | 'contradiction'
  | 'swapped'
  | 'version';

/**
 * A short, safe excerpt of anything that was given (≤ 60 characters).
 *
 * @param given anything [any]
 * @returns at most 60 characters [text]
 */
export function excerpt(given: unknown): string {
  if (given === undefined) return 'nothing';
  if (given === null || typeof given === 'number' || typeof given === 'boolean') return String(given);
  if (Array.isArray(given)) return `a list of ${given.length}`;
  if (typeof given === 'object') return 'an object';
  const text = String(given).slice(0, 200).replace(/\s+/g, ' ');
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/**
 * `implement.mastHeight: expected 200–1200 mm, got 19. Was it typed in inches?`
 *
 * @param error one input error [record]
 * @returns one line [text]
 */
export function errorLine(error: InputError): string {
  const place = error.path === '' ? '' : `${error.path}: `;
  return `${place}expected ${error.expected}, got ${error.got}. ${error.hint}`.trim();
}
