import { becauseOf, verdictWords } from '@hitchwright/core/words';
import { useEffect, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import type { Answered } from './useAssessment.ts';

/** Says the verdict politely when it changes, once the typing has paused. */
export function VerdictSpoken({ answered }: { readonly answered: Answered | null }) {
  const { system } = usePreferences();
  const [spoken, setSpoken] = useState('');
  const words = answered === null ? null : wordsOf(answered, system);
  useEffect(() => {
    if (words === null) return undefined;
    const timer = setTimeout(() => setSpoken(words), 700);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p className="unseen" role="status">
      {spoken}
    </p>
  );
}

function wordsOf({ answer, setup }: Answered, system: 'us' | 'metric'): string {
  const because = becauseOf(answer, setup, system);
  return `${verdictWords(answer)}. ${because ?? ''}`.trim();
}
