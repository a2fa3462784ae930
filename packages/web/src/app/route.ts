import { readLink } from '@hitchwright/core/exchange';
import type { InputError, SetupDocument } from '@hitchwright/core/records';
import { useSyncExternalStore } from 'react';

/** Where the fragment of the address leads. */
export type Route =
  | { readonly page: 'check'; readonly document: SetupDocument | null }
  | { readonly page: 'broken'; readonly errors: readonly InputError[] }
  | { readonly page: 'yard'; readonly tractor: string | null };

/** Reads a fragment: nothing, `yard`, `yard=<tractor>`, or a setup as `linkOf` writes it. */
export function routeOf(hash: string): Route {
  const fragment = hash.replace(/^#/, '');
  if (fragment === '') return { page: 'check', document: null };
  if (fragment === 'yard') return { page: 'yard', tractor: null };
  if (fragment.startsWith('yard=')) return { page: 'yard', tractor: decoded(fragment.slice('yard='.length)) };
  const reading = readLink(fragment);
  return reading.ok ? { page: 'check', document: reading.document } : { page: 'broken', errors: reading.errors };
}

/** The fragment of the yard page for one tractor. */
export function yardHash(tractor: string | null): string {
  return tractor === null ? '#yard' : `#yard=${encodeURIComponent(tractor)}`;
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
