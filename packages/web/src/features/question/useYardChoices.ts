import { useEffect, useState } from 'react';
import { hasYard } from '../../app/server/hasYard.ts';
import type { Machine } from '../yard/sampleYard.ts';
import type { ChoiceGroup } from './choices.ts';

/** What the yard’s records have for what has been typed; null without a server of the yard. */
export function useYardChoices(machine: Machine, typed: string): ChoiceGroup | null {
  const [group, setGroup] = useState<ChoiceGroup | null>(null);
  useEffect(() => {
    if (!hasYard) return undefined;
    let isOlder = false;
    void import('./yardChoices.ts')
      .then(({ yardChoices }) => yardChoices(machine, typed))
      .then((found) => {
        if (!isOlder) setGroup(found);
      });
    return () => {
      isOlder = true;
    };
  }, [machine, typed]);
  return group;
}
