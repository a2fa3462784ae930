import type { YardQuestion } from './usePicked.ts';

const key = 'hitchwright.picked';
/** Addresses of one visit that are remembered: as far back as anybody goes. */
const most = 30;

type Remembered = readonly (readonly [address: string, question: YardQuestion])[];

/** Remembers, for as long as the tab is open, which of the yard’s records the question at an address is made of. */
export function rememberPicks(address: string, question: YardQuestion | null): void {
  const others = remembered().filter(([other]) => other !== address);
  const all: Remembered = question === null ? others : [...others, [address, question]];
  try {
    sessionStorage.setItem(key, JSON.stringify(all.slice(-most)));
  } catch {
    // Where nothing can be kept, a reload asks for the records again.
  }
}

/** The records behind the question at an address; null where none are remembered. */
export function picksAt(address: string): YardQuestion | null {
  return remembered().find(([other]) => other === address)?.[1] ?? null;
}

function remembered(): Remembered {
  try {
    return JSON.parse(sessionStorage.getItem(key) ?? '[]') as Remembered;
  } catch {
    return [];
  }
}
