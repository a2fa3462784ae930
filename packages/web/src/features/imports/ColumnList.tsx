import type { MappingChange, MappingTold } from '@hitchwright/core/exchange';
import { useState } from 'react';
import { Figures } from '../../marks/Figures.tsx';
import { pointName, pointsQuestion } from '../dimensions/plainChoices.ts';
import { ColumnEditor } from './ColumnEditor.tsx';
import type { Ask, Column, Mapping } from './importTypes.ts';
import { targetWords, unitWord } from './targets.ts';

interface ColumnListProps {
  readonly mapping: Mapping;
  readonly samples: Readonly<Record<string, readonly string[]>>;
  readonly told: readonly MappingTold[];
  readonly asks: readonly Ask[];
  readonly isBusy: boolean;
  readonly onChange: (change: MappingChange) => void;
}

/** Every column: its heading, what stands in it, what it is taken for and how sure that is. */
export function ColumnList({ mapping, samples, told, asks, isBusy, onChange }: ColumnListProps) {
  const [opened, setOpened] = useState<string | null>(null);
  return (
    <section aria-labelledby="imp-columns">
      <h3 id="imp-columns" className="imp-part imp-columns-title">
        {mapping.columns.length} columns
      </h3>
      <ol className="imp-columns">
        {mapping.columns.map((column) => (
          <li
            key={column.letter}
            className={column.target.role === 'ignore' ? 'imp-column imp-column-out' : 'imp-column'}
          >
            <ColumnHead column={column} samples={samples[column.letter] ?? []} />
            <div className="imp-taken">
              <Taken
                kind={mapping.kind}
                column={column}
                isAsked={asks.some((ask) => ask.column === column.letter)}
                sentences={told.filter((one) => one.column === column.letter).map(({ sentence }) => sentence)}
              />
              {opened === column.letter ? (
                <ColumnEditor kind={mapping.kind} column={column} isBusy={isBusy} onChange={onChange} />
              ) : null}
            </div>
            <button
              type="button"
              className="imp-change"
              aria-expanded={opened === column.letter}
              onClick={() => setOpened(opened === column.letter ? null : column.letter)}
            >
              {opened === column.letter ? 'Done' : 'Change'}
              <span className="unseen"> column {column.letter}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

function ColumnHead({ column, samples }: { readonly column: Column; readonly samples: readonly string[] }) {
  return (
    <>
      <p className="imp-letter" aria-label={`Column ${column.letter}`}>
        {column.letter}
      </p>
      <div className="imp-heading">
        <h4>{column.heading === '' ? 'without a heading' : column.heading}</h4>
        <p className="imp-samples">
          {samples.length === 0 ? 'empty' : samples.map((sample, i) => <span key={`${i} ${sample}`}>{sample}</span>)}
        </p>
      </div>
    </>
  );
}

interface TakenProps {
  readonly kind: string;
  readonly column: Column;
  readonly isAsked: boolean;
  readonly sentences: readonly string[];
}

function Taken({ kind, column, isAsked, sentences }: TakenProps) {
  const { target, from } = column;
  const unit = unitText(column);
  const path = `${kind}.${'field' in target ? (target.field ?? '') : ''}`;
  return (
    <>
      <p>
        <b>{targetWords(kind, target)}</b>
        <span className="imp-sure">{isAsked ? 'asked above' : sureText(column)}</span>
      </p>
      {unit === '' ? null : <p>{unit}</p>}
      {from === null ? null : (
        <p>
          {pointsQuestion(path)}: {pointName(path, from)}
        </p>
      )}
      {sentences.map((sentence) => (
        <p key={sentence} className="imp-told">
          <Figures text={sentence} />
        </p>
      ))}
    </>
  );
}

/** How sure it is what a column holds. */
function sureText({ confidence, target }: Column): string {
  if (confidence === 1) return 'you chose it';
  if (target.role === 'ignore') return 'not known';
  if (confidence >= 0.9) return 'sure';
  return confidence >= 0.7 ? 'likely' : 'a guess';
}

/** Why the unit was taken; what the figures tell stands in a sentence of its own. */
const unitBecause: Readonly<Record<string, string>> = {
  heading: 'as the sheet says',
  person: 'as you said',
};

function unitText({ unit, unitFrom }: Column): string {
  if (unit === null) return '';
  const because = unitFrom === null ? '' : (unitBecause[unitFrom] ?? '');
  return `in ${unitWord(unit)}${because === '' ? '' : `, ${because}`}`;
}
