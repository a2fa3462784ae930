import type { PlainChoice } from './plainChoices.ts';

interface ChoiceFieldProps {
  readonly path: string;
  readonly choice: PlainChoice;
  readonly chosen: string;
  /** An empty text stands for "not known". */
  readonly onChange: (value: string) => void;
}

/** What can be chosen; what a document says beside it is kept among it. */
function optionsFor({ options }: PlainChoice, chosen: string): PlainChoice['options'] {
  return chosen === '' || options.some(([value]) => value === chosen) ? options : [...options, [chosen, chosen]];
}

/** A field that is chosen in plain words. */
export function ChoiceField({ path, choice, chosen, onChange }: ChoiceFieldProps) {
  return (
    <div className="field">
      <label htmlFor={`field-${path}`}>{choice.label}</label>
      <select id={`field-${path}`} value={chosen} onChange={({ target }) => onChange(target.value)}>
        {choice.required === true || choice.usual !== undefined ? null : <option value="">not known</option>}
        {optionsFor(choice, chosen).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
