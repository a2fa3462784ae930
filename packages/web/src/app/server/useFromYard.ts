import { useEffect, useState } from 'react';
import { hasYard } from './hasYard.ts';

/**
 * What the yard’s records have, once it is there.
 *
 * @param load asks for it, the same function each time; null while it is not wanted
 * @param first what stands until then, and without a server of the yard
 */
export function useFromYard<T>(load: (() => Promise<T>) | null, first: T): T {
  const [found, setFound] = useState(first);
  useEffect(() => {
    if (!hasYard || load === null) return undefined;
    let isGone = false;
    void load().then((loaded) => {
      if (!isGone) setFound(() => loaded);
    });
    return () => {
      isGone = true;
    };
  }, [load]);
  return found;
}
