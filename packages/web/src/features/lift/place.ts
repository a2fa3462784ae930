import { useSyncExternalStore } from 'react';

/**
 * Where the lift stands. It changes with every frame of a drag, so what draws it follows it by itself and the page around
 * it is not rendered again.
 */
export interface LiftPlace {
  get(): number;
  set(station: number): void;
  /** Calls back on every change; returns what ends it. */
  follow(listener: () => void): () => void;
}

/** A lift that stands at a station. */
export function openPlace(first: number): LiftPlace {
  const listeners = new Set<() => void>();
  let station = first;
  return {
    get: () => station,
    set: (next) => {
      if (next === station) return;
      station = next;
      for (const listener of listeners) listener();
    },
    follow: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Something read off where the lift stands; only a change of it renders. */
export function useAtPlace<Read extends string | number | null>(
  place: LiftPlace,
  read: (station: number) => Read,
): Read {
  return useSyncExternalStore(place.follow, () => read(place.get()));
}
