import { useSyncExternalStore } from 'react';

/**
 * Where somebody is within a measuring: at what is asked next, at one figure that was opened, or at a page beside the figures. It
 * is kept in the browser’s own history, so that its way back leads one screen back and not out of the measuring.
 */
export type Place = 'next' | 'safety' | 'list' | 'send' | `figure ${string}`;

const pages: readonly string[] = ['next', 'safety', 'list', 'send'];
const figure = 'figure ';
const listeners = new Set<() => void>();

/** Where somebody is; at what is asked next where nothing else is said. */
export function usePlace(): Place {
  return useSyncExternalStore(follow, herePlace);
}

/** Goes to a place; the way back leads here. */
export function goTo(place: Place): void {
  history.pushState({ measuring: place }, '');
  for (const listener of listeners) listener();
}

/** A figure is finished: the way back leads to it, the way on to what is asked next. */
export function passFigure(path: string): void {
  history.replaceState({ measuring: figurePlace(path) }, '');
  goTo('next');
}

/** What has to be safe was said to be so: the way back leads to it. */
export function passSafety(): void {
  history.replaceState({ measuring: 'safety' }, '');
  goTo('next');
}

/** The place of one figure that is opened. */
export function figurePlace(path: string): Place {
  return `${figure}${path}`;
}

/** The figure that is opened; null at any other place. */
export function figureAt(place: Place): string | null {
  return place.startsWith(figure) ? place.slice(figure.length) : null;
}

function follow(listener: () => void): () => void {
  listeners.add(listener);
  addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    removeEventListener('popstate', listener);
  };
}

function herePlace(): Place {
  const state: unknown = history.state;
  const said = typeof state === 'object' && state !== null && 'measuring' in state ? state.measuring : null;
  return isPlace(said) ? said : 'next';
}

function isPlace(said: unknown): said is Place {
  return typeof said === 'string' && (pages.includes(said) || said.startsWith(figure));
}
