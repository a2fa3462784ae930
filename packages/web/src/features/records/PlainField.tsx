import { ChoiceField } from '../dimensions/ChoiceField.tsx';
import { chosenIn, plainChoices, saidBy } from '../dimensions/plainChoices.ts';
import { plainAt } from './fieldsOf.ts';
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
    const liquid = field === 'tyreLiquid.size';
    if (liquid && value === undefined) return void change({ fields: { tyreLiquid: null } });
    const fluid = liquid && plainAt(record, 'tyreLiquid.fluid') === undefined ? { 'tyreLiquid.fluid': 'water' } : {};
    void change({ fields: { [field]: value ?? null, ...fluid } });
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
