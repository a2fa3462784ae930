import { useCallback, useSyncExternalStore } from 'react';

/** What was typed and not written down, by what it is typed for; it outlives the page that it was typed on, for this visit. */
const typed = new Map<string, unknown>();
const listeners = new Set<() => void>();

function follow(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function put(key: string, value: unknown): void {
  if (value === undefined) typed.delete(key);
  else typed.set(key, value);
  for (const listener of listeners) listener();
}

/** What is half typed under a key, undefined where nothing is; and how to keep it, or to let it go with undefined. */
export function useHalfTyped<T>(key: string): [T | undefined, (value: T | undefined) => void] {
  const value = useSyncExternalStore(follow, () => typed.get(key) as T | undefined);
  return [value, useCallback((next: T | undefined) => put(key, next), [key])];
}

/** Where a reading of a field stays until it is written down. */
export function readingKey(record: string, field: string): string {
  return `${record} ${field}`;
}
