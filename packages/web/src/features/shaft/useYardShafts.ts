import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { hasYard } from '../../app/server/hasYard.ts';

/** The drive shafts of the yard’s records; null until they are there, and without a server of the yard. */
export function useYardShafts(): readonly SetupDocument[] | null {
  const [shafts, setShafts] = useState<readonly SetupDocument[] | null>(null);
  useEffect(() => {
    if (!hasYard) return undefined;
    let isGone = false;
    void import('./yardShafts.ts')
      .then(({ yardShafts }) => yardShafts())
      .then((found) => {
        if (!isGone) setShafts(found);
      });
    return () => {
      isGone = true;
    };
  }, []);
  return shafts;
}
