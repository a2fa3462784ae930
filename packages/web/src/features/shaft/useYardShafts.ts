import type { SetupDocument } from '@hitchwright/core/records';
import { useFromYard } from '../../app/server/useFromYard.ts';

type Shafts = readonly SetupDocument[] | null;
const load = (): Promise<Shafts> => import('./yardShafts.ts').then(({ yardShafts }) => yardShafts());

/** The drive shafts of the yard’s records; null until they are there, and without a server of the yard. */
export function useYardShafts(): Shafts {
  return useFromYard<Shafts>(load, null);
}
