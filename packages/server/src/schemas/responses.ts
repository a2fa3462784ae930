import type * as z from 'zod';
import { refusal } from './common.ts';

/** A JSON body of a request, which has to be there. */
export function bodyOf<T extends z.ZodType>(schema: T) {
  return { required: true, content: { 'application/json': { schema } } } as const;
}

/** A JSON answer. */
export function answerOf<T extends z.ZodType>(schema: T, description: string) {
  return { description, content: { 'application/json': { schema } } } as const;
}

/** A file as an answer. */
export function fileOf(types: readonly string[], description: string) {
  const schema = { type: 'string', format: 'binary' } as const;
  return { description, content: Object.fromEntries(types.map((type) => [type, { schema }])) };
}

function refused(description: string) {
  return answerOf(refusal, description);
}

const always = {
  400: refused('Something is wrong with the input.'),
  403: refused('Another name or another site asks.'),
  404: refused('It is not there.'),
  500: refused('Something in the server or its store is broken.'),
  503: refused('It is busy for longer than is waited.'),
} as const;

/** Answers that a request which reads may get beside its own. */
export const reads = { ...always, 304: { description: 'It is as it was.' } } as const;

/** Answers that a question which sends a body may get beside its own. */
export const asks = {
  ...always,
  413: refused('The body is too large.'),
  415: refused('The body is of a kind that is not taken.'),
} as const;

/** Answers that a request which changes something may get beside its own. */
export const writes = {
  ...asks,
  409: refused('Something stands in the way; nothing was changed.'),
  422: refused('Another request was done under this Idempotency-Key.'),
} as const;

/** Answers that a change of what was read before may get beside its own. */
export const matches = {
  ...writes,
  412: refused('It was changed meanwhile; nothing was changed, and this is how it stands now.'),
} as const;
