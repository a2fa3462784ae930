import { keepEntry, keepSession, keptSession, type KeptSession } from './keep.ts';
import type { Entries, Entry, Session } from './session.ts';

/** How well what was typed is kept. */
type Keeping = 'kept' | 'full' | 'none';

/** A session as a page has it: what is on the device, and what could not be written yet. */
export interface Open {
  readonly session: Session;
  readonly entries: Entries;
  readonly keeping: Keeping;
}

/** Sessions of this visit; they live on where the device keeps nothing. */
const opened = new Map<string, Open>();
/** What could not be written yet, by session: the session itself or paths of entries. */
const unwritten = new Map<string, Set<string>>();
const listeners = new Set<() => void>();
const theSession = '';

/** Other pages of this site on the same device. */
const others = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('hitchwright.measure');
others?.addEventListener('message', ({ data }: MessageEvent<string>) => {
  if (opened.has(data)) void load(data);
});

export function follow(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The session as this page has it; undefined until it was loaded or begun. */
export function openSession(id: string): Open | undefined {
  return opened.get(id);
}

/** Loads a session from the device, with what another page has written meanwhile; false where there is none. */
export async function load(id: string): Promise<boolean> {
  const kept = await read(id);
  const here = opened.get(id);
  if (kept === null) return here !== undefined;
  const entries = new Map(kept.entries.map((entry) => [entry.path, entry]));
  for (const [path, entry] of here?.entries ?? []) {
    if ((entries.get(path)?.touched ?? '') < entry.touched) entries.set(path, entry);
  }
  put(id, {
    session: isUnwritten(id, theSession) && here !== undefined ? here.session : kept.session,
    entries,
    keeping: here?.keeping ?? 'kept',
  });
  return true;
}

async function read(id: string): Promise<KeptSession | null> {
  try {
    return await keptSession(id);
  } catch (problem) {
    if (!(problem instanceof DOMException)) throw problem;
    return null;
  }
}

/** Begins a session, or changes what it says of itself. */
export function writeSession(session: Session): void {
  const here = opened.get(session.id);
  put(session.id, { session, entries: here?.entries ?? new Map<string, Entry>(), keeping: here?.keeping ?? 'kept' });
  mark(session.id, theSession);
  void write(session.id);
}

/** Changes one figure; it is on the screen at once and on the device as soon as that takes it. */
export function writeEntry(id: string, entry: Entry): void {
  const here = opened.get(id);
  if (here === undefined) throw new Error('invariant: the session is open');
  put(id, { ...here, entries: new Map([...here.entries, [entry.path, entry]]) });
  mark(id, entry.path);
  void write(id);
}

/** Tries again to write what could not be written. */
export async function write(id: string): Promise<void> {
  for (const path of [...(unwritten.get(id) ?? [])]) {
    const here = opened.get(id);
    if (here === undefined) return;
    const entry = here.entries.get(path);
    try {
      if (path === theSession) await keepSession(here.session);
      else if (entry !== undefined) await keepEntry(id, entry);
    } catch (problem) {
      if (!(problem instanceof DOMException)) throw problem;
      keepingOf(id, problem.name === 'QuotaExceededError' ? 'full' : 'none');
      return;
    }
    const now = opened.get(id);
    if (path === theSession ? now?.session === here.session : now?.entries.get(path) === entry)
      unwritten.get(id)?.delete(path);
  }
  keepingOf(id, 'kept');
  others?.postMessage(id);
}

function keepingOf(id: string, keeping: Keeping): void {
  const here = opened.get(id);
  if (here !== undefined && here.keeping !== keeping) put(id, { ...here, keeping });
}

function put(id: string, open: Open): void {
  opened.set(id, open);
  for (const listener of listeners) listener();
}

function mark(id: string, path: string): void {
  unwritten.set(id, (unwritten.get(id) ?? new Set<string>()).add(path));
}

function isUnwritten(id: string, path: string): boolean {
  return unwritten.get(id)?.has(path) === true;
}

/** Forgets a session that was taken off the device. */
export function forget(id: string): void {
  opened.delete(id);
  unwritten.delete(id);
}
