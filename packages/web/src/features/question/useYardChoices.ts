import { useEffect, useState } from 'react';
import { hasYard } from '../../app/server/hasYard.ts';
import type { Machine } from '../yard/sampleYard.ts';
import type { ChoiceGroup } from './choices.ts';

/** What the yard’s records have for what has been typed; null until it is there, and without a server of the yard. */
export function useYardChoices(machine: Machine, typed: string): ChoiceGroup | null {
  const [found, setFound] = useState<{ readonly typed: string; readonly group: ChoiceGroup } | null>(null);
  useEffect(() => {
    if (!hasYard) return undefined;
    let isOlder = false;
    void import('./yardChoices.ts')
      .then(({ yardChoices }) => yardChoices(machine, typed))
      .then((group) => {
        if (!isOlder) setFound({ typed, group });
      });
    return () => {
      isOlder = true;
    };
  }, [machine, typed]);
  return found?.typed === typed ? found.group : null;
}
