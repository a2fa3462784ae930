import { useEffect, useState, useSyncExternalStore } from 'react';
import { follow, load, openSession, writeEntry, writeSession, type Open } from './memory.ts';
import { blankEntry, type Entry, type Session } from './session.ts';

/** A session, and how to change it. */
export interface SessionDesk extends Open {
  change(part: Partial<Session>): void;
  enter(path: string, part: Partial<Entry>): void;
}

/** The session of that id: null while it is fetched, undefined where this device has none. */
export function useSession(id: string): SessionDesk | null | undefined {
  const open = useSyncExternalStore(follow, () => openSession(id));
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    let isHere = true;
    void load(id).then((found) => {
      if (isHere) setMissing(!found);
    });
    return () => {
      isHere = false;
    };
  }, [id]);
  if (open === undefined) return isMissing ? undefined : null;
  return {
    ...open,
    change: (part) => writeSession({ ...open.session, ...part }),
    enter: (path, part) => {
      const before = openSession(id)?.entries.get(path) ?? blankEntry(path);
      // Whatever is changed of a figure opens it again, until it is said to be finished.
      writeEntry(id, { ...before, state: 'open', ...part, touched: new Date().toISOString() });
    },
  };
}
