import { excerpt, type InputError } from '@hitchwright/core/records';
import type { z } from '@hono/zod-openapi';

type Issue = z.core.$ZodIssue;

/**
 * Everything that is wrong with the parts of a request, in the words of input errors. What the validator says itself stays inside.
 *
 * @param issues what the validator found [list]
 * @param given what it looked at [any]
 * @param place where that was: body, query, path or header [name]
 * @returns the errors [list]
 */
export function requestErrors(issues: readonly Issue[], given: unknown, place: string): InputError[] {
  return issues.slice(0, 50).flatMap((issue) => {
    const path = issue.path.map(String).join('.').slice(0, 200);
    const got = issue.path.reduce<unknown>(
      (node, key) => (node as Record<PropertyKey, unknown> | null | undefined)?.[key],
      given,
    );
    const where = place === 'body' ? path : [place, path].filter((part) => part !== '').join('.');
    return errorsOf(issue, where, got);
  });
}

function errorsOf(issue: Issue, path: string, got: unknown): InputError[] {
  const said = excerpt(got);
  if (issue.code === 'unrecognized_keys')
    return issue.keys.slice(0, 20).map((key) => {
      const name = excerpt(key);
      const below = path === '' ? name : `${path}.${name}`;
      return { code: 'unknown-key', path: below, expected: 'a known key', got: name, hint: 'Remove it.' };
    });
  if (got === undefined)
    return [{ code: 'missing', path, expected: expectedBy(issue), got: 'nothing', hint: 'Add it.' }];
  if (issue.code === 'invalid_value')
    return [{ code: 'not-a-choice', path, expected: expectedBy(issue), got: said, hint: 'Choose one of those.' }];
  if (issue.code === 'too_big' || issue.code === 'too_small')
    return [{ code: 'out-of-range', path, expected: expectedBy(issue), got: said, hint: '' }];
  return [{ code: 'wrong-type', path, expected: expectedBy(issue), got: said, hint: '' }];
}

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return nameOf(issue.expected);
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'too_big':
      return `at most ${issue.maximum} ${unitOf(issue.origin)}`.trim();
    case 'too_small':
      return `at least ${issue.minimum} ${unitOf(issue.origin)}`.trim();
    case 'invalid_format':
      return issue.format === 'regex' ? 'text of the form that /api/openapi.json names' : `a ${issue.format}`;
    default:
      return 'something else';
  }
}

function nameOf(expected: string): string {
  const names: Readonly<Record<string, string>> = {
    string: 'text',
    number: 'a number',
    int: 'a whole number',
    boolean: 'true or false',
    object: 'an object',
    record: 'an object',
    array: 'a list',
  };
  return names[expected] ?? 'something else';
}

function unitOf(origin: string): string {
  if (origin === 'string') return 'characters';
  return origin === 'array' ? 'items' : '';
}
