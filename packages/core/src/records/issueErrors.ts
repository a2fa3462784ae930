import { couplerFields, implementFields, pinFields, shaftFields, tractorFields } from './fields.ts';
import { excerpt, type InputError } from './inputError.ts';

/** What the schema library found wrong with a document, as input errors: each with its path, what was expected and a hint. */
export function errorsOf(issues: readonly unknown[], document: unknown): InputError[] {
  return issues.flatMap((issue) => toErrors(issue as Issue, document));
}

interface Issue {
  readonly code: string;
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly params?: { readonly error?: InputError };
  readonly keys?: readonly string[];
  readonly values?: readonly unknown[];
  readonly expected?: string;
  readonly maximum?: number;
  readonly minimum?: number;
  readonly origin?: string;
  readonly options?: readonly unknown[];
}

/** What one issue of the schema library comes to, in the words of an input error. */
function toErrors(issue: Issue, document: unknown): InputError[] {
  const path = issue.path.join('.');
  const given = lookUp(document, issue.path);
  if (issue.params?.error !== undefined) return [{ ...issue.params.error, path: path + issue.params.error.path }];
  if (issue.code === 'unrecognized_keys') return (issue.keys ?? []).map((key) => unknownKey(path, key));
  if (given === undefined) return [error('missing', path, expectation(issue), 'nothing', 'Add it.')];
  if (issue.code === 'invalid_value' && path === 'hitchwright') {
    return [error('version', path, 'setup version 1', excerpt(given), 'This file was made for another version.')];
  }
  if (issue.code === 'invalid_value' || issue.code === 'invalid_union') {
    return [error('not-a-choice', path, expectation(issue), excerpt(given), 'Choose one of those.')];
  }
  if (issue.code === 'too_big' || issue.code === 'too_small') {
    return [error('out-of-range', path, expectation(issue), excerpt(given), 'Check the figure or shorten the text.')];
  }
  return [error('wrong-type', path, expectation(issue), excerpt(given), 'See the setup schema for what belongs here.')];
}

function expectation(issue: Issue): string {
  if (issue.values !== undefined) return `one of ${issue.values.map(String).join(', ')}`;
  if (issue.code === 'invalid_union')
    return `one of ${(issue.options ?? ['the kinds in the schema']).map(String).join(', ')}`;
  if (issue.maximum !== undefined) return `at most ${issue.maximum}${issue.origin === 'string' ? ' characters' : ''}`;
  if (issue.minimum !== undefined) return `at least ${issue.minimum}`;
  if (issue.code === 'not_multiple_of') return 'a whole number';
  if (issue.code === 'invalid_format') return 'three capital letters for a currency, such as USD';
  return issue.expected === undefined
    ? 'another kind of entry'
    : `a ${issue.expected}`.replace('a object', 'an object').replace('a array', 'a list');
}

/** Names that a misspelt one may stand for, by record; under any other path all of them. */
const knownKeys: Readonly<Record<string, readonly string[]>> = {
  implement: [...Object.keys(pinFields), ...Object.keys(implementFields)],
  tractor: Object.keys(tractorFields),
  coupler: Object.keys(couplerFields),
  shaft: Object.keys(shaftFields),
};

function unknownKey(parent: string, key: string): InputError {
  const short = excerpt(key);
  const candidates = knownKeys[parent] ?? Object.values(knownKeys).flat();
  const near = candidates.find((known) => isNear(known.toLowerCase(), short.toLowerCase()));
  const hint = near === undefined ? 'Remove it or look the name up in the setup schema.' : `Did you mean ${near}?`;
  return error('unknown-key', parent === '' ? short : `${parent}.${short}`, 'a known key', short, hint);
}

/** Same letters but for one dropped, added or changed or two neighbours swapped, or one name inside the other. */
function isNear(known: string, key: string): boolean {
  if (key.length < 4) return false;
  if (known.includes(key) || key.includes(known)) return true;
  const start = [...known].findIndex((letter, i) => letter !== key[i]);
  const rests = [
    known.slice(start + 1) === key.slice(start + 1),
    known.slice(start + 1) === key.slice(start),
    known.slice(start) === key.slice(start + 1),
    known[start] === key[start + 1] &&
      known[start + 1] === key[start] &&
      known.slice(start + 2) === key.slice(start + 2),
  ];
  return rests.includes(true);
}

function lookUp(document: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (node, key) => (node as Record<string | number, unknown> | null | undefined)?.[key],
    document,
  );
}

function error(code: InputError['code'], path: string, expected: string, got: string, hint: string): InputError {
  return { code, path, expected, got, hint };
}
