import { atPath, type CouplerKind, type Edit, type InputError, type SetupDocument } from '@hitchwright/core/records';
import { useEffect, useMemo, useState } from 'react';
import { couplerKinds } from '@hitchwright/core/tables';
import { usePreferences } from '../../app/preferences.ts';
import { ErrorList, leafOf } from '../check/ErrorList.tsx';
import { inUnits } from '../check/inUnits.ts';
import type { SidePanel } from '../check/Sheet.tsx';
import type { Answered } from '../check/useAssessment.ts';
import { calledIn, recordAt } from '../question/question.ts';
import { nameOf } from '../yard/sampleYard.ts';
import { FieldGroupBox } from './FieldGroupBox.tsx';
import { isDriven } from './driveGroups.ts';
import { groupsOf, pathsOf, type FieldGroup, type Side } from './groups.ts';
import { ShaftShelf } from '../shaft/ShaftShelf.tsx';
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
export function DimensionsPanel({ document: asked, answered, errors, begin, onEdit }: DimensionsProps) {
  const { system } = usePreferences();
  const document = useMemo(() => inUnits(asked, system), [asked, system]);
  const [machine, setMachine] = useState(sideOf(begin));
  const [begun, setBegun] = useState(begin);
  if (begun !== begin) {
    setBegun(begin);
    setMachine(sideOf(begin));
  }
  useFocusOn(begin.field, machine);
  const shown = sidesOf(document).includes(machine) ? machine : 'implement';
  const groups = groupsOf(shown, kindOf(document));
  const elsewhere = errors.filter(({ path }) => !path.startsWith(shown));
  return (
    <section className="dimensions" aria-labelledby="dimensions-title">
      <h2 id="dimensions-title" className="unseen">
        Dimensions
      </h2>
      {answered === null ? null : <VerdictStrip answered={answered} isOlder={errors.length > 0} />}
      <MachineSwitch document={document} machine={shown} onMachine={setMachine} />
      <ErrorList errors={elsewhere} onShow={(field) => setMachine(field.split('.')[0] as Side)} />
      {shown === 'shaft' ? <ShaftShelf document={document} onEdit={onEdit} /> : null}
      {groups.filter(isAskedIn(document, errors)).map((group) => (
        <FieldGroupBox
          key={`${group.at} ${group.title}`}
          group={group}
          isOpen={group.isUsual === true || hasError(errors, group) || isIn(begin.field, group)}
          document={document}
          errors={errors}
          onEdit={onEdit}
        />
      ))}
    </section>
  );
}

/** Whose dimensions there are to type: the machines of the question, and the drive shaft of what is driven. */
function sidesOf(document: SetupDocument): readonly Side[] {
  const machines = (['implement', 'tractor', 'coupler'] as const).filter((one) => recordAt(document, one) !== null);
  return isDriven(document) ? [...machines, 'shaft'] : machines;
}

/** A group of the drive is asked of what is driven, and wherever something in it can't be read. */
function isAskedIn(document: SetupDocument, errors: readonly InputError[]) {
  return (group: FieldGroup): boolean => group.ofDrive !== true || isDriven(document) || hasError(errors, group);
}

function MachineSwitch(props: { document: SetupDocument; machine: Side; onMachine: (machine: Side) => void }) {
  const { document, machine, onMachine } = props;
  return (
    <div className="machine-switch" role="group" aria-label="Whose dimensions">
      {sidesOf(document).map((one) => (
        <button key={one} type="button" aria-pressed={one === machine} onClick={() => onMachine(one)}>
          <span className="machine-kind">{one === 'shaft' ? 'drive shaft' : one}</span>
          <span className="machine-name">{one === 'shaft' ? shaftName(document) : calledIn(document, one)}</span>
        </button>
      ))}
    </div>
  );
}

/** Brings the field that was asked for under the cursor. */
function useFocusOn(field: string | undefined, machine: Side): void {
  useEffect(() => {
    if (field === undefined) return;
    const box = window.document.getElementById(`field-${field}`);
    box?.closest('details')?.setAttribute('open', '');
    box?.focus();
    box?.scrollIntoView({ block: 'center' });
  }, [field, machine]);
}

function sideOf({ machine, field }: DimensionsProps['begin']): Side {
  return machine ?? ((field?.split('.')[0] ?? 'implement') as Side);
}

function shaftName(document: SetupDocument): string {
  const shaft = recordAt(document, 'shaft');
  return shaft === null ? 'none chosen yet' : nameOf(shaft, 'without a name');
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
