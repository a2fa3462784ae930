import { TapeDrawing } from '../measure/TapeDrawing.tsx';
import { pathIn, ruleOf } from './fieldsOf.ts';
import type { Answered } from './recordTypes.ts';

interface FieldPictureProps {
  readonly record: Answered;
  readonly field: string | null;
}

/** Where the tape goes for a field, drawn and said. */
export function FieldPicture({ record, field }: FieldPictureProps) {
  const rule = field === null ? undefined : ruleOf(record, field);
  if (field === null || rule === undefined)
    return <p className="record-no-picture">Open a figure, and where it is measured is drawn here.</p>;
  return (
    <figure className="field-picture">
      <TapeDrawing path={pathIn(record, field)} way={null} reading={null} />
      <figcaption>
        <b className="field-picture-name">{rule.label}</b> {rule.measure}
      </figcaption>
    </figure>
  );
}
