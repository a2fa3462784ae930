import { useCallback, useSyncExternalStore } from 'react';

/** A query, what the browser last told of it, and who wants to hear of a change. */
interface Watched {
  readonly list: MediaQueryList;
  readonly listeners: Set<() => void>;
  isMatching: boolean;
}

const watched = new Map<string, Watched>();

/**
 * The query, asked for once. Afterwards only what the browser tells is read: a `matches` that is read between a change and
 * its event may swallow the event, and whoever waits for it would never hear of the change.
 */
function watchedFor(query: string): Watched {
  const known = watched.get(query);
  if (known !== undefined) return known;
  const list = matchMedia(query);
  const opened: Watched = { list, listeners: new Set(), isMatching: list.matches };
  list.addEventListener('change', ({ matches }) => {
    opened.isMatching = matches;
    for (const listener of opened.listeners) listener();
  });
  watched.set(query, opened);
  return opened;
}

/** Whether a media query holds, followed as it changes. */
export function useMedia(query: string): boolean {
  const follow = useCallback(
    (listener: () => void) => {
      const { listeners } = watchedFor(query);
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    [query],
  );
  return useSyncExternalStore(follow, () => watchedFor(query).isMatching);
}
