import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import { cellText, verdictWords } from '@hitchwright/core/words';
import { useMemo } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import type { Reply } from '../check/assessor.ts';
import { leadTo } from '../check/usePicked.ts';
import { columnName, useYardInView } from './yardInView.ts';

interface YardCellProps {
  readonly reply: Reply | null;
  readonly document: SetupDocument;
  /** Where it stands. */
  readonly row: number;
  readonly column: number;
  readonly implement: string;
}

/** One answer of the yard: its mark and first reason; it leads to its check. */
export function YardCell({ reply, document, row, column, implement }: YardCellProps) {
  const { system } = usePreferences();
  const { columns, questionAt } = useYardInView();
  const link = useMemo(() => `#${linkOf(document)}`, [document]);
  if (reply === null) return <span className="cell-waiting">…</span>;
  if (reply.kind !== 'answer') return <span className="cell-waiting">no answer</span>;
  const { verdict } = reply.answer;
  const text = cellText(reply.answer, system);
  return (
    <a className={`cell cell-${verdict}`} href={link} onClick={() => leadTo(link, questionAt(row, column))}>
      <VerdictMark outcome={verdict} />
      <span>
        <span className="unseen">
          {implement}, {columnName(columns, column)}: {verdictWords(reply.answer)}.{' '}
        </span>
        <Figures text={text} />
      </span>
    </a>
  );
}
