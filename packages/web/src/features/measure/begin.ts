import type { MeasuringRequest, SetupDocument } from '@hitchwright/core/records';
import { askForLastingStorage } from '../../app/offline/lastingStorage.ts';
import { load, writeSession } from './memory.ts';

/** Begins a measuring of a setup on this device, and says where it is. */
export function beginMeasuring(setup: SetupDocument): string {
  const id = freshId();
  writeSession({ id, begun: new Date().toISOString(), setup, request: null, who: '', isReady: false, isAslant: null });
  void askForLastingStorage();
  return measureHash(id);
}

/** Begins to answer a request, or goes on where it was left. */
export async function beginAnswer({ setup, ...request }: MeasuringRequest): Promise<string> {
  const isKnown = await load(request.id);
  if (!isKnown) {
    const begun = new Date().toISOString();
    writeSession({ id: request.id, begun, setup, request, who: '', isReady: false, isAslant: null });
    void askForLastingStorage();
  }
  return measureHash(request.id);
}

/** The fragment of a measuring. */
export function measureHash(id: string): string {
  return `#measure=${id}`;
}

/** A name that nothing else has, in letters and figures. */
export function freshId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => (byte % 36).toString(36)).join('');
}
