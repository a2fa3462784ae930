import type { Printed } from '@hitchwright/core/exchange';
import { verdictWords } from '@hitchwright/core/words';
import { dayText } from '../../app/day.ts';
import type { Answered } from './useAssessment.ts';

interface PrintedNoteProps {
  readonly printed: Printed;
  readonly answered: Answered;
}

/** Says whether today’s answer is still the one on the sheet that led here. */
export function PrintedNote({ printed: { date, verdict }, answered: { answer } }: PrintedNoteProps) {
  const day = dayText(date);
  const said = verdictWords({ verdict, lead: null });
  if (verdict === answer.verdict)
    return (
      <p className="printed-note" role="note">
        You came from a sheet of {day}. It says what this page says today: {verdictWords(answer).toLowerCase()}.
      </p>
    );
  return (
    <p className="printed-note printed-differs" role="alert">
      <b>The sheet that led here is out of date.</b> On {day} it said “{said}”; today the same figures give “
      {verdictWords(answer)}”. Go by this page, and print it anew.
    </p>
  );
}
