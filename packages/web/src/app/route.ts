import { readLink, readPrinted, readReplyLink, readRequestLink, type Printed } from '@hitchwright/core/exchange';
import type { InputError, MeasuringReply, MeasuringRequest, SetupDocument } from '@hitchwright/core/records';
import { useSyncExternalStore } from 'react';

/** Where the fragment of the address leads. */
export type Route =
  /** A check; where a sheet led to it, what the sheet said. */
  | { readonly page: 'check'; readonly document: SetupDocument | null; readonly printed: Printed | null }
  | { readonly page: 'broken'; readonly errors: readonly InputError[] }
  /** The yard around a tractor: a sample by its name, or one of the records; null for the first that there is. */
  | { readonly page: 'yard'; readonly tractor: string | null }
  | { readonly page: 'yardOf'; readonly tractor: string; readonly state: string | null }
  /** The measurings on this device, or one of them. */
  | { readonly page: 'measure'; readonly id: string | null }
  | { readonly page: 'asked'; readonly request: MeasuringRequest }
  /** A request that is being made for a setup. */
  | { readonly page: 'request'; readonly document: SetupDocument }
  /** The yard’s records; null for every kind. */
  | { readonly page: 'records'; readonly kind: string | null }
  | { readonly page: 'record'; readonly id: string }
  /** A record that is not there yet. */
  | { readonly page: 'newRecord'; readonly kind: string }
  | { readonly page: 'import'; readonly id: string | null }
  | { readonly page: 'answers' }
  | { readonly page: 'answer'; readonly id: string }
  | { readonly page: 'history' }
  | { readonly page: 'backup' }
  /** Readings that came back; null where they are still to be opened from a file. */
  | { readonly page: 'replied'; readonly reply: MeasuringReply | null };

/** Reads a fragment: nothing, a page by name, a measuring request or its reply, or a setup as `linkOf` writes it. */
export function routeOf(hash: string): Route {
  const fragment = hash.replace(/^#/, '');
  if (fragment === '') return { page: 'check', document: null, printed: null };
  if (fragment === 'yard') return { page: 'yard', tractor: null };
  if (fragment.startsWith('yard=')) return { page: 'yard', tractor: decoded(fragment.slice('yard='.length)) };
  if (fragment.startsWith('yard-of=')) return yardOfIn(fragment.slice('yard-of='.length));
  if (fragment === 'measure') return { page: 'measure', id: null };
  if (fragment.startsWith('measure=')) return { page: 'measure', id: fragment.slice('measure='.length) };
  if (fragment.startsWith('ask=')) return askedIn(fragment);
  if (fragment === 'reply') return { page: 'replied', reply: null };
  if (fragment.startsWith('reply=')) return repliedIn(fragment);
  if (fragment.startsWith('request=')) return requestFor(fragment.slice('request='.length));
  return recordsIn(fragment) ?? checkIn(fragment);
}

/** The pages of the yard’s records: a word, and behind `=` which of them. */
function recordsIn(fragment: string): Route | null {
  const [word = '', ...rest] = fragment.split('=');
  const which = rest.length === 0 ? null : decoded(rest.join('='));
  switch (word) {
    case 'records':
      return { page: 'records', kind: which };
    case 'import':
      return { page: 'import', id: which };
    case 'answers':
    case 'history':
    case 'backup':
      return { page: word };
    case 'record':
      return which === null ? null : { page: 'record', id: which };
    case 'new':
      return which === null ? null : { page: 'newRecord', kind: which };
    case 'answer':
      return which === null ? null : { page: 'answer', id: which };
    default:
      return null;
  }
}

function checkIn(fragment: string): Route {
  const { link, printed } = readPrinted(fragment);
  const reading = readLink(link);
  return reading.ok
    ? { page: 'check', document: reading.document, printed }
    : { page: 'broken', errors: reading.errors };
}

function requestFor(link: string): Route {
  const reading = readLink(link);
  return reading.ok ? { page: 'request', document: reading.document } : { page: 'broken', errors: reading.errors };
}

function askedIn(fragment: string): Route {
  const reading = readRequestLink(fragment);
  return reading.ok ? { page: 'asked', request: reading.value } : { page: 'broken', errors: reading.errors };
}

function repliedIn(fragment: string): Route {
  const reading = readReplyLink(fragment);
  return reading.ok ? { page: 'replied', reply: reading.value } : { page: 'broken', errors: reading.errors };
}

/** The fragment of the yard page for one tractor. */
export function yardHash(tractor: string | null): string {
  return tractor === null ? '#yard' : `#yard=${encodeURIComponent(tractor)}`;
}

/** The fragment of the yard page for one tractor of the records, perhaps with a state laid over it. */
export function yardOfHash(tractor: string, state: string | undefined): string {
  return `#yard-of=${encodeURIComponent(tractor)}${state === undefined ? '' : `+${encodeURIComponent(state)}`}`;
}

function yardOfIn(ids: string): Route {
  const [tractor = '', state] = ids.split('+').map(decoded);
  return { page: 'yardOf', tractor, state: state ?? null };
}

interface Visit {
  readonly hash: string;
  readonly count: number;
}

let visit: Visit = { hash: location.hash, count: 0 };

/** The fragment that was last navigated to, counted; replacing it while somebody types is no navigation. */
export function useVisit(): Visit {
  return useSyncExternalStore(
    (listener) => {
      const follow = (): void => {
        visit = { hash: location.hash, count: visit.count + 1 };
        listener();
      };
      addEventListener('hashchange', follow);
      return () => removeEventListener('hashchange', follow);
    },
    () => visit,
  );
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch (problem) {
    if (!(problem instanceof URIError)) throw problem;
    return text;
  }
}
