import type { InputError } from '@hitchwright/core/records';
import { clientOf } from '@hitchwright/server/client';
import { whoWrites } from '../preferences.ts';

/** The yard’s records over HTTP; every change names who makes it. */
export const yard = clientOf(new URL('.', location.href).href, { fetch: named }).api;

function named(input: RequestInfo | URL, init?: RequestInit): Promise<Response> {
  const headers = new Headers(init?.headers);
  const who = whoWrites();
  if (who !== '') headers.set('hitchwright-who', encodeURIComponent(who));
  return fetch(input, { ...init, headers });
}

/** What the server refuses, with every error of the input or what else is wrong; status 0 where it was not reached. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly errors: readonly InputError[],
    readonly trouble: string | null,
    message: string,
    /** How it stands now, where somebody was first. */
    readonly current: unknown,
  ) {
    super(message);
  }
}

/** An answer of the server with its body’s type, as the client gives it. */
interface Answered<T> {
  readonly ok: boolean;
  readonly status: number;
  json(): Promise<T>;
}

/** What a refusal’s body never has, and every other body of the API does. */
type Said<T> = Exclude<T, { hitchwright: 1; errors: unknown[] }>;

/** What an answer says; a refusal is thrown. */
export async function said<T>(asked: Promise<Answered<T>>): Promise<Said<T>> {
  const answer = await asked.catch(() => null);
  if (answer === null)
    throw new Refusal(0, [], 'away', 'The server of the yard can’t be reached. Is it running?', null);
  const body: unknown = await answer.json().catch(() => null);
  if (answer.ok) return body as Said<T>;
  throw refusalIn(answer.status, body);
}

function refusalIn(status: number, body: unknown): Refusal {
  const {
    errors = [],
    trouble = null,
    message,
    current,
  } = (body ?? {}) as Partial<{
    errors: readonly InputError[];
    trouble: string | null;
    message: string;
    current: unknown;
  }>;
  const words =
    message ?? errors.map(({ path, expected, got }) => `${path}: expected ${expected}, got ${got}.`).join(' ');
  return new Refusal(status, errors, trouble, words === '' ? `The server answers ${status}.` : words, current ?? null);
}

/** A key under which a change is done once, however often it is sent. */
export function onceKey(): string {
  return crypto.randomUUID();
}

const begun = new Map<string, string>();

/**
 * Sends a change so that it is done once: tried again after its answer got lost, the same change goes under the same key.
 *
 * @param change what is changed, and where [JSON]
 * @param send sends it under a key
 */
export async function onceOf<T>(change: unknown, send: (key: string) => Promise<T>): Promise<T> {
  const text = JSON.stringify(change);
  const key = begun.get(text) ?? onceKey();
  begun.set(text, key);
  const answer = await send(key);
  begun.delete(text);
  return answer;
}
