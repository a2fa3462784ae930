import { editsFor } from '../dimensions/asked.ts';
import { ChoiceField } from '../dimensions/ChoiceField.tsx';
import { chosenIn, plainChoices, saidBy } from '../dimensions/plainChoices.ts';
import { asSetup, pathIn, plainAt } from './fieldsOf.ts';
import type { RecordDesk } from './useRecord.ts';

interface PlainFieldProps {
  readonly desk: RecordDesk;
  readonly field: string;
}

/** A field that is chosen: written down as soon as it is. */
export function PlainField({ desk: { record, change }, field }: PlainFieldProps) {
  const choice = plainChoices[field.slice(field.lastIndexOf('.') + 1)];
  if (choice === undefined) return null;
  const write = (value: unknown): void => {
    const path = pathIn(record, field);
    const before = path.length - field.length;
    const edits = editsFor(path, value, asSetup(record)).map((edit) => [edit.path.slice(before), edit.value ?? null]);
    void change({ fields: Object.fromEntries(edits) as Record<string, unknown> });
  };
  return (
    <ChoiceField
      path={field}
      choice={choice}
      chosen={chosenIn(choice, plainAt(record, field))}
      onChange={(chosen) => write(saidBy(choice, chosen))}
    />
  );
}
