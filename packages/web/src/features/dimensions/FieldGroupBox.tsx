import { atPath, fieldRules, type Edit, type SetupDocument } from '@hitchwright/core/records';
import type { DimensionsProps } from './DimensionsPanel.tsx';
import { editsFor, isAsked } from './asked.ts';
import { pathsOf, type FieldGroup } from './groups.ts';
import { chosenIn, plainChoices, saidBy, type PlainChoice } from './plainChoices.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { QuantityField } from './QuantityField.tsx';

interface FieldGroupBoxProps extends Pick<DimensionsProps, 'document' | 'errors' | 'onEdit'> {
  readonly group: FieldGroup;
  readonly isOpen: boolean;
}

/** One group of fields under a heading that folds it. */
export function FieldGroupBox({ group, isOpen, document, errors, onEdit }: FieldGroupBoxProps) {
  const paths = pathsOf(group).filter((path) => isAsked(path, document));
  const given = paths.filter((path) => isGiven(path, document)).length;
  return (
    <details className="field-group" open={isOpen}>
      <summary>
        <span>{group.title}</span>
        <span className="field-count">
          {given} of {paths.length}
        </span>
      </summary>
      {paths.map((path) =>
        fieldRules.has(path) ? (
          <QuantityField
            key={path}
            path={path}
            raw={atPath(document, path)}
            errors={errors.filter((error) => error.path === path || error.path.startsWith(`${path}.`))}
            onChange={(value) => onEdit([{ path, value }])}
          />
        ) : (
          <PlainField key={path} path={path} document={document} onEdit={onEdit} />
        ),
      )}
    </details>
  );
}

/** A choice that holds anyhow counts as given. */
function isGiven(path: string, document: SetupDocument): boolean {
  return (atPath(document, path) ?? null) !== null || choiceAt(path)?.usual !== undefined;
}

function choiceAt(path: string): PlainChoice | undefined {
  return plainChoices[path.slice(path.lastIndexOf('.') + 1)];
}

interface PlainFieldProps {
  readonly path: string;
  readonly document: SetupDocument;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

function PlainField({ path, document, onEdit }: PlainFieldProps) {
  const raw = atPath(document, path);
  const text = typeof raw === 'string' ? raw : '';
  const write = (value: unknown): void => onEdit(editsFor(path, value, document));
  const choice = choiceAt(path);
  if (choice !== undefined) {
    return (
      <ChoiceField
        path={path}
        choice={choice}
        chosen={chosenIn(choice, raw)}
        onChange={(chosen) => write(saidBy(choice, chosen))}
      />
    );
  }
  return (
    <div className="field">
      <label htmlFor={`field-${path}`}>name</label>
      <input
        id={`field-${path}`}
        maxLength={200}
        value={text}
        onChange={({ target }) => write(target.value === '' ? undefined : target.value)}
      />
    </div>
  );
}
