import type { UnitSystem } from '@hitchwright/core/units';
import { useSyncExternalStore } from 'react';

export type Theme = 'light' | 'dark';

interface Preferences {
  readonly system: UnitSystem;
  /** Null follows the device. */
  readonly theme: Theme | null;
  /** Who asks, as it stands on what is sent from here. */
  readonly asks: string;
  /** Who writes in the yard’s records from here. */
  readonly who: string;
}

const listeners = new Set<() => void>();
let current: Preferences = {
  system: stored('units') === 'metric' ? 'metric' : 'us',
  theme: storedTheme(),
  asks: stored('asks') ?? '',
  who: stored('who') ?? '',
};
showTheme(current.theme);

/** What the person chose on this device; every component that reads it follows a change. */
export function usePreferences(): Preferences {
  return useSyncExternalStore(subscribe, () => current);
}

export function chooseSystem(system: UnitSystem): void {
  store('units', system);
  change({ ...current, system });
}

export function chooseTheme(theme: Theme): void {
  store('theme', theme);
  showTheme(theme);
  change({ ...current, theme });
}

export function chooseAsks(asks: string): void {
  store('asks', asks);
  change({ ...current, asks });
}

export function chooseWho(who: string): void {
  store('who', who);
  change({ ...current, who });
}

/** Who writes from here, for what is no component. */
export function whoWrites(): string {
  return current.who.trim();
}

function change(next: Preferences): void {
  current = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function storedTheme(): Theme | null {
  const theme = stored('theme');
  return theme === 'light' || theme === 'dark' ? theme : null;
}

function showTheme(theme: Theme | null): void {
  if (theme !== null) document.documentElement.dataset['theme'] = theme;
}

/** Storage can be switched off or full: the choice then lasts for this visit only. */
function stored(key: string): string | null {
  try {
    return localStorage.getItem(`hitchwright.${key}`);
  } catch {
    return null;
  }
}

function store(key: string, value: string): boolean {
  try {
    localStorage.setItem(`hitchwright.${key}`, value);
    return true;
  } catch {
    return false;
  }
}
