import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import { serveText, serveWords } from '@hitchwright/core/words';
import { useMemo } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Reply } from '../check/assessor.ts';
import { nameOf } from '../yard/sampleYard.ts';
import { isItsOwn, setupWith, type Pair } from './shaftSetups.ts';

interface ServeCellProps {
  readonly pair: Pair;
  readonly part: SetupDocument;
  readonly implement: SetupDocument;
  readonly reply: Reply | null;
}

/** What one shaft comes to for one implement: its mark and shortest reason; it leads to its check. */
export function ServeCell({ pair, part, implement, reply }: ServeCellProps) {
  const { system } = usePreferences();
  const link = useMemo(
    () => (reply === null ? '' : `#${linkOf(setupWith(pair, implement, part))}`),
    [reply, pair, implement, part],
  );
  if (reply === null) return <span className="cell-waiting">…</span>;
  if (reply.kind !== 'answer') return <span className="cell-waiting">no answer</span>;
  const { runs } = reply.answer.outcomes;
  return (
    <a className={`cell serve cell-${runs}`} href={link}>
      <VerdictMark outcome={runs} />
      <span>
        <span className="unseen">
          {nameOf(part, 'shaft')} for {nameOf(implement, 'it')}: {serveWords[runs]}.{' '}
        </span>
        <Figures text={inOneUnit(serveText(reply.answer, system))} />
        {isItsOwn(part, implement) ? <span className="serve-own">its own shaft</span> : null}
      </span>
    </a>
  );
}

/** In a narrow cell there is room for the chosen unit only. */
function inOneUnit(text: string): string {
  return text.replace(/ \([\d/ .,]+ (?:mm|in|kW|hp|lb|kg|N·m|lbf·ft)\)/g, '');
}
