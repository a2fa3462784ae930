import { useEffect, useRef } from 'react';
import type { Choice, ChoiceGroup } from './choices.ts';

interface ChoiceListProps {
  readonly label: string;
  readonly groups: readonly ChoiceGroup[];
  readonly activeId: string | undefined;
  readonly onChoose: (choice: Choice) => void;
}

/** The list below the search field; the keyboard stays in the field. */
export function ChoiceList({ label, groups, activeId, onChoose }: ChoiceListProps) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [activeId]);
  return (
    <div ref={list} id="search-list" className="search-list" role="listbox" aria-label={label}>
      {groups.map(({ heading, choices }, i) => (
        <div key={heading} role="group" aria-labelledby={`group-${i}`}>
          <div id={`group-${i}`} className="search-group">
            {heading}
          </div>
          {choices.map((choice) => (
            <div
              key={choice.id}
              id={`choice-${choice.id}`}
              className="choice"
              role="option"
              aria-selected={choice.id === activeId}
              onClick={() => onChoose(choice)}
            >
              <span className="choice-name">{choice.name}</span>
              <span className="choice-note">{choice.note}</span>
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}
