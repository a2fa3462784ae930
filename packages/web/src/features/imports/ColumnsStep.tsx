import { rowKinds } from '@hitchwright/core/exchange';
import { ErrorWords } from '../check/ErrorList.tsx';
import { Trouble } from '../../app/server/Trouble.tsx';
import { counted } from '../history/whenText.ts';
import { kindWords } from '../records/kinds.ts';
import { ColumnList } from './ColumnList.tsx';
import type { Ask, Choice, Mapping } from './importTypes.ts';
import { Questions } from './Questions.tsx';
import { StepTitle } from './StepStrip.tsx';
import type { ImportDesk } from './useImport.ts';

interface ColumnsStepProps {
  readonly desk: ImportDesk;
  readonly onLook: () => void;
}

/** The second step: which sheet, what its rows are, and what each column means. Questions come first. */
export function ColumnsStep({ desk, onLook }: ColumnsStepProps) {
  const { state, isChoosing } = desk;
  const { mapping, told, asks, errors, samples } = state.mapping;
  return (
    <div aria-busy={isChoosing}>
      <section className="imp-part" aria-label="The sheet">
        <StepTitle>What the columns mean</StepTitle>
        <p className="imp-name">{state.name}</p>
        {[...state.told, ...told.filter(({ column }) => column === null).map(({ sentence }) => sentence)].map(
          (sentence) => (
            <p key={sentence} className="imp-told">
              {sentence}
            </p>
          ),
        )}
        <Choices desk={desk} />
        <div role="alert">
          {errors.map((error) => (
            <p key={`${error.path} ${error.hint}`} className="imp-error">
              <ErrorWords error={error} />
            </p>
          ))}
        </div>
        <Trouble problem={desk.problem} />
      </section>
      {mapping === null ? null : (
        <>
          <Questions asks={asks} isBusy={isChoosing} onAnswer={(ask, value) => desk.choose(answerTo(ask, value))} />
          <ColumnList
            mapping={mapping}
            samples={samples}
            told={told}
            asks={asks}
            onChange={desk.change}
            isBusy={isChoosing}
          />
        </>
      )}
      <div className="imp-bar">
        <p>
          What you choose here is remembered for sheets with the same headings.
          {asks.length === 0
            ? ''
            : ` ${counted(asks.length, 'question')} left: what isn’t answered is refused, cell by cell.`}
        </p>
        <a className="button" href="#import">
          Another file
        </a>
        <button type="button" className="button-solid" disabled={mapping === null || isChoosing} onClick={onLook}>
          See what becomes of every row
        </button>
      </div>
    </div>
  );
}

function Choices({ desk: { state, choose, isChoosing } }: { readonly desk: ImportDesk }) {
  const { sheets, sheet, mapping } = state;
  return (
    <div className="imp-choices">
      <label>
        <span>Sheet</span>
        <select
          value={sheet}
          disabled={isChoosing || sheets.length < 2}
          onChange={({ target }) => choose({ sheet: Number(target.value) })}
        >
          {sheets.map(({ name, rows }, i) => (
            <option key={`${i} ${name}`} value={i}>
              {name} ({counted(rows, 'row')})
            </option>
          ))}
        </select>
      </label>
      {mapping.mapping === null ? null : <OfMapping mapping={mapping.mapping} isBusy={isChoosing} onChoose={choose} />}
    </div>
  );
}

interface OfMappingProps {
  readonly mapping: Mapping;
  readonly isBusy: boolean;
  readonly onChoose: (choice: Choice) => void;
}

function OfMapping({ mapping: { kind, system, otherKinds }, isBusy, onChoose }: OfMappingProps) {
  const others = (otherKinds ?? [])
    .filter((other) => other !== kind)
    .map((other) => kindWords[other].many.toLowerCase());
  return (
    <>
      <label>
        <span>Its rows are{others.length === 0 ? '' : ` (and ${others.join(', ')}, as a column says)`}</span>
        <select
          value={kind}
          disabled={isBusy}
          onChange={({ target }) => onChoose({ change: { kind: target.value as Mapping['kind'] } })}
        >
          {rowKinds.map((one) => (
            <option key={one} value={one}>
              {kindWords[one].many.toLowerCase()}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>Figures without a unit</span>
        <select
          value={system ?? ''}
          disabled={isBusy}
          onChange={({ target }) =>
            onChoose({ change: { system: target.value === '' ? null : (target.value as 'us' | 'metric') } })
          }
        >
          <option value="">as each column says</option>
          <option value="us">US: inches, pounds, horsepower</option>
          <option value="metric">metric: millimetres, kilograms, kilowatts</option>
        </select>
      </label>
    </>
  );
}

/** What an answer to a question changes. */
function answerTo({ about, column }: Ask, value: string): Choice {
  const at = column === null ? {} : { column };
  if (about === 'kind') return { change: { kind: value as Mapping['kind'] } };
  if (about === 'unit' || about === 'currency')
    return { change: column === null ? { system: value as 'us' | 'metric' } : { ...at, unit: value } };
  if (about === 'from') return { change: { ...at, from: value } };
  const target = value === '' ? ({ role: 'ignore' } as const) : ({ role: 'field', field: value } as const);
  return { change: { ...at, target } };
}
