import { useSyncExternalStore } from 'react';

const lists = new Map<string, MediaQueryList>();

/** The browser's answer to a query, asked for once. */
function listFor(query: string): MediaQueryList {
  const list = lists.get(query) ?? matchMedia(query);
  lists.set(query, list);
  return list;
}

/** Whether a media query holds, followed as it changes. */
export function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (listener) => {
      const list = listFor(query);
      list.addEventListener('change', listener);
      return () => list.removeEventListener('change', listener);
    },
    () => listFor(query).matches,
  );
}
