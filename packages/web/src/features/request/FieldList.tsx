import type { Suggestion } from '@hitchwright/core/advice';
import { labelOf, suggestionText } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';

interface FieldListProps {
  readonly suggestions: readonly Suggestion[];
  readonly asked: ReadonlySet<string>;
  readonly onToggle: (path: string) => void;
}

/** What can be asked for, best first; each can be ticked or left out. */
export function FieldList({ suggestions, asked, onToggle }: FieldListProps) {
  const { system } = usePreferences();
  return (
    <ul className="plain-list field-list">
      {suggestions.map((suggestion) => (
        <li key={suggestion.path}>
          <label>
            <input type="checkbox" checked={asked.has(suggestion.path)} onChange={() => onToggle(suggestion.path)} />
            <span>
              <Figures text={suggestionText(suggestion, system)} />
              <span className="unseen"> Ask for {labelOf(suggestion.path)}</span>
            </span>
          </label>
        </li>
      ))}
    </ul>
  );
}
