import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { outcomeOf, verdictName } from './verdicts.ts';

/** A verdict as its mark and its word. */
export function VerdictWord({ verdict }: { readonly verdict: string }) {
  return (
    <span className={`ans-verdict ans-verdict-${outcomeOf(verdict)}`}>
      <VerdictMark outcome={outcomeOf(verdict)} />
      {verdictName(verdict)}
    </span>
  );
}

interface SaysProps {
  readonly verdict: string;
  readonly reason: string;
}

/** A verdict and its first reason; where all is well there is none. */
export function Says({ verdict, reason }: SaysProps) {
  return (
    <>
      <VerdictWord verdict={verdict} />
      {reason === verdictName(verdict) ? null : <Figures text={reason} />}
    </>
  );
}
