import { gaugeOf, type Gauge } from './gauge.ts';
import { missOfFinding, type Miss } from './miss.ts';
import { isOnStage, type Stage } from './stage.ts';

/** A misfit that has its place in the view. */
export interface Misfit {
  readonly gauge: Gauge;
  readonly miss: Miss;
}

/** Misfits of the meeting that is drawn, the lead finding first; only those that agree with what is drawn. */
export function misfitsOf(stage: Stage): Misfit[] {
  const { findings, lead } = stage.answer;
  const ordered = lead === null ? findings : [lead, ...findings.filter(({ id }) => id !== lead.id)];
  return ordered.flatMap((finding) => {
    const miss = isOnStage(stage, finding) ? missOfFinding(finding) : null;
    const gauge = miss === null ? null : gaugeOf(stage, finding);
    return miss === null || gauge === null ? [] : [{ gauge, miss }];
  });
}
