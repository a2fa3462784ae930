import { atPath, type CouplerKind, type Edit, type InputError, type SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { couplerKinds } from '@hitchwright/core/tables';
import { ErrorList, leafOf } from '../check/ErrorList.tsx';
import type { SidePanel } from '../check/Sheet.tsx';
import type { Answered } from '../check/useAssessment.ts';
import { calledIn, recordAt } from '../question/question.ts';
import type { Machine } from '../yard/sampleYard.ts';
import { FieldGroupBox } from './FieldGroupBox.tsx';
import { groupsOf, pathsOf, type FieldGroup } from './groups.ts';
import { VerdictStrip } from './VerdictStrip.tsx';
import './dimensions.css';

export interface DimensionsProps {
  readonly document: SetupDocument;
  readonly answered: Answered | null;
  readonly errors: readonly InputError[];
  readonly begin: Extract<SidePanel, { shows: 'dimensions' }>;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** Every dimension of the three machines, as text that is read while it is typed. */
export function DimensionsPanel({ document, answered, errors, begin, onEdit }: DimensionsProps) {
  const [machine, setMachine] = useState<Machine>(machineOf(begin));
  const [begun, setBegun] = useState(begin);
  if (begun !== begin) {
    setBegun(begin);
    setMachine(machineOf(begin));
  }
  useFocusOn(begin.field, machine);
  const shown = recordAt(document, machine) === null ? 'implement' : machine;
  const elsewhere = errors.filter(({ path }) => !path.startsWith(shown));
  return (
    <section className="dimensions" aria-labelledby="dimensions-title">
      <h2 id="dimensions-title" className="unseen">
        Dimensions
      </h2>
      {answered === null ? null : <VerdictStrip answered={answered} isOlder={errors.length > 0} />}
      <MachineSwitch document={document} machine={shown} onMachine={setMachine} />
      <ErrorList errors={elsewhere} onShow={(field) => setMachine(field.split('.')[0] as Machine)} />
      {groupsOf(shown, kindOf(document)).map((group) => (
        <FieldGroupBox
          key={`${group.at} ${group.title}`}
          group={group}
          isOpen={group.isUsual === true || hasError(errors, group) || isIn(begin.field, group)}
          document={document}
          answered={answered}
          errors={errors}
          onEdit={onEdit}
        />
      ))}
    </section>
  );
}

function MachineSwitch(props: { document: SetupDocument; machine: Machine; onMachine: (machine: Machine) => void }) {
  const { document, machine, onMachine } = props;
  const present = (['implement', 'tractor', 'coupler'] as const).filter((one) => recordAt(document, one) !== null);
  return (
    <div className="machine-switch" role="group" aria-label="Whose dimensions">
      {present.map((one) => (
        <button key={one} type="button" aria-pressed={one === machine} onClick={() => onMachine(one)}>
          <span className="machine-kind">{one}</span>
          <span className="machine-name">{calledIn(document, one)}</span>
        </button>
      ))}
    </div>
  );
}

/** Brings the field that was asked for under the cursor. */
function useFocusOn(field: string | undefined, machine: Machine): void {
  useEffect(() => {
    if (field === undefined) return;
    const box = window.document.getElementById(`field-${field}`);
    box?.closest('details')?.setAttribute('open', '');
    box?.focus();
    box?.scrollIntoView({ block: 'center' });
  }, [field, machine]);
}

function machineOf({ machine, field }: DimensionsProps['begin']): Machine {
  return machine ?? ((field?.split('.')[0] ?? 'implement') as Machine);
}

function kindOf(document: SetupDocument): CouplerKind {
  const kind = atPath(document, 'coupler.kind');
  return couplerKinds.find((known) => known === kind) ?? 'uFrame';
}

function hasError(errors: readonly InputError[], group: FieldGroup): boolean {
  return errors.some(({ path }) => isIn(leafOf(path), group));
}

function isIn(path: string | undefined, group: FieldGroup): boolean {
  return path !== undefined && pathsOf(group).includes(path);
}
