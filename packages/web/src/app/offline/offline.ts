import { useSyncExternalStore } from 'react';

interface Offline {
  /** Whether the whole site lies on this device, so that it opens and answers without a network. */
  readonly kept: 'not yet' | 'yes' | 'impossible';
  /** Whether it was kept just now, by this visit. */
  readonly isFirst: boolean;
  /** A newer version than the one on the screen: none, one that waits to be taken, or one that another tab has taken. */
  readonly newer: 'none' | 'waiting' | 'taken elsewhere';
}

/** The address is written when typing pauses, a quarter of a second: what was typed last is in it after this long. */
const addressSettles = 400;
const hour = 3_600_000;

const listeners = new Set<() => void>();
let current: Offline = { kept: 'not yet', isFirst: false, newer: 'none' };
let registered: ServiceWorkerRegistration | null = null;
let isTaking = false;

/** What there is to tell about use without a network; every component that reads it follows a change. */
export function useOffline(): Offline {
  return useSyncExternalStore(subscribe, () => current);
}

/** Keeps the site on the device, once the page has what it needs itself. Only the built site is kept: a developer sees every change. */
export function keepSite(): void {
  if (!import.meta.env.PROD) return;
  if (!('serviceWorker' in navigator)) {
    change({ kept: 'impossible' });
    return;
  }
  const { serviceWorker } = navigator;
  followController(serviceWorker);
  addEventListener('load', () => onceQuiet(() => void register(serviceWorker)), { once: true });
}

/**
 * Waits until nothing more has arrived for as long as the page took to load: what it fetches for its first answer comes
 * after that, and on a thin line the two would share it.
 */
function onceQuiet(begin: () => void): void {
  const quiet = Math.min(Math.max(performance.now(), 500), 15_000);
  const done = (): void => {
    arrivals.disconnect();
    begin();
  };
  let timer = setTimeout(done, quiet);
  const arrivals = new PerformanceObserver(() => {
    clearTimeout(timer);
    timer = setTimeout(done, quiet);
  });
  arrivals.observe({ type: 'resource' });
}

/** Takes the newer version and opens it at the same address. */
export function takeNewer(): void {
  isTaking = true;
  setTimeout(() => {
    if (registered?.waiting == null) location.reload();
    else registered.waiting.postMessage('take over');
  }, addressSettles);
}

/** The page is loaded again only where its own person asked for it; in another tab it is told. */
function followController(container: ServiceWorkerContainer): void {
  let hasController = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (isTaking) location.reload();
    else if (hasController) change({ newer: 'taken elsewhere' });
    hasController = true;
  });
}

async function register(container: ServiceWorkerContainer): Promise<void> {
  try {
    registered = await container.register(new URL('sw.js', document.baseURI), { updateViaCache: 'none' });
  } catch {
    change({ kept: 'impossible' });
    return;
  }
  change({ isFirst: registered.active === null });
  follow(registered);
  lookNowAndThen(registered);
}

function follow(registration: ServiceWorkerRegistration): void {
  const look = (): void => {
    if (registration.active !== null) change({ kept: 'yes' });
    if (registration.active !== null && registration.waiting !== null) change({ newer: 'waiting' });
  };
  const watch = (): void => registration.installing?.addEventListener('statechange', look);
  registration.addEventListener('updatefound', watch);
  watch();
  look();
}

/** The browser looks for a newer version when a page is opened; one that stays open for days looks when it is returned to. */
function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < hour) return;
    looked = Date.now();
    registration.update().catch(() => undefined);
  });
}

function change(told: Partial<Offline>): void {
  current = { ...current, ...told };
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
