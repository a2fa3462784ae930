import { becauseOf, verdictWords } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Answered } from '../check/useAssessment.ts';

interface VerdictStripProps {
  readonly answered: Answered;
  readonly isOlder: boolean;
}

/** The verdict in one strip that stays in sight while dimensions are typed. */
export function VerdictStrip({ answered: { answer, setup }, isOlder }: VerdictStripProps) {
  const { system } = usePreferences();
  return (
    <div className="verdict-strip">
      <VerdictMark outcome={answer.verdict} />
      <p>
        {isOlder ? <b>Older answer. </b> : null}
        <b>{verdictWords(answer)}.</b> <Figures text={becauseOf(answer, setup, system) ?? ''} />
      </p>
    </div>
  );
}
