import { PlainField } from './PlainField.tsx';
import { ReadingField } from './ReadingField.tsx';
import { plainAt, ruleOf, type RecordGroup } from './fieldsOf.ts';
import type { RecordDesk } from './useRecord.ts';

export interface GroupsProps {
  readonly desk: RecordDesk;
  readonly groups: readonly RecordGroup[];
  /** The field that is open. */
  readonly open: string | null;
  readonly onOpen: (field: string | null) => void;
  /** The drawing stands in the open field, not beside it. */
  readonly hasPicture: boolean;
}

/** Every field of a record in its groups, each with the value in use. */
export function RecordGroups({ desk, groups, open, onOpen, hasPicture }: GroupsProps) {
  const { record } = desk;
  return groups.map(({ title, fields, isUsual }) => (
    <details key={title} className="field-group" open={isUsual}>
      <summary>
        <span>{title}</span>
        <span className="field-count">
          {fields.filter((field) => isGiven(desk, field)).length} of {fields.length}
        </span>
      </summary>
      {fields.map((field) =>
        ruleOf(record, field) === undefined ? (
          <PlainField key={field} desk={desk} field={field} />
        ) : (
          <ReadingField
            key={field}
            desk={desk}
            field={field}
            isOpen={open === field}
            hasPicture={hasPicture}
            onOpen={(isOpen) => onOpen(isOpen ? field : null)}
          />
        ),
      )}
    </details>
  ));
}

function isGiven({ record }: RecordDesk, field: string): boolean {
  return field in record.inUse || field in (record.over?.inUse ?? {}) || plainAt(record, field) !== undefined;
}
