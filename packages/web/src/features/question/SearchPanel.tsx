import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import type { Machine } from '../yard/sampleYard.ts';
import { choicesFor, type Choice, type OnlyFrom, type Picked } from './choices.ts';
import { ChoiceList } from './ChoiceList.tsx';
import { useYardChoices } from './useYardChoices.ts';

const titles: Readonly<Record<Machine, string>> = {
  implement: 'Which implement?',
  tractor: 'Which tractor?',
  coupler: 'With which coupler?',
};

const hints: Readonly<Record<Machine, string>> = {
  implement: 'Name, or a category such as 1',
  tractor: 'Name, or category and power: 1, 35 hp',
  coupler: 'Name, or a category such as 1',
};

interface SearchPanelProps {
  readonly machine: Machine;
  /** Only records of the sample yard, or only those of the yard. */
  readonly only?: OnlyFrom;
  readonly onClose: () => void;
  readonly onChoose: (choice: Choice, picked: Picked | null) => void;
}

/** The search for one machine: type to narrow, arrows and Enter to choose, Escape to leave; focus goes back by itself. */
export function SearchPanel({ machine, only, onClose, onChoose }: SearchPanelProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [typed, setTyped] = useState('');
  const [active, setActive] = useState(0);
  const ofYard = useYardChoices(machine, typed);
  const groups = choicesFor(machine, typed, only ?? null, ofYard);
  const [problem, setProblem] = useState('');
  const choices = groups.flatMap((group) => group.choices);
  const chosen = choices[Math.min(active, choices.length - 1)];
  const field = useRef<HTMLInputElement>(null);
  /** What is being fetched; another choice, or leaving, lets it go. */
  const taking = useRef<Choice | null>(null);
  useEffect(() => {
    dialog.current?.showModal();
    field.current?.focus();
  }, []);
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) setActive((Math.min(active, choices.length - 1) + step + choices.length) % choices.length);
    else if (event.key === 'Enter' && chosen !== undefined) take(chosen);
    else return;
    event.preventDefault();
  };
  /** Closing first gives focus back to the word in the sentence. */
  const take = (choice: Choice): void => {
    taking.current = null;
    if (choice.fetched === undefined) {
      dialog.current?.close();
      onChoose(choice, null);
      return;
    }
    taking.current = choice;
    choice.fetched().then(
      (picked) => {
        if (taking.current !== choice) return;
        dialog.current?.close();
        onChoose({ ...choice, record: picked.record }, picked);
      },
      (refused: unknown) => setProblem(refused instanceof Error ? refused.message : String(refused)),
    );
  };
  /** The browser tells of a closed dialog only later, when the word that has focus again may have been pressed: the page is told now. */
  const leave = (): void => {
    taking.current = null;
    dialog.current?.close();
    onClose();
  };
  return (
    <dialog
      ref={dialog}
      className="search"
      aria-labelledby="search-title"
      onCancel={(event) => {
        event.preventDefault();
        leave();
      }}
      onClose={leave}
    >
      <div className="search-head">
        <h2 id="search-title">{titles[machine]}</h2>
        <button type="button" className="quiet" onClick={leave}>
          Close
        </button>
      </div>
      <input
        ref={field}
        className="search-field"
        role="combobox"
        aria-expanded="true"
        aria-controls="search-list"
        aria-label={`${titles[machine]} ${hints[machine]}`}
        aria-activedescendant={chosen === undefined ? undefined : `choice-${chosen.id}`}
        autoComplete="off"
        spellCheck={false}
        placeholder={hints[machine]}
        value={typed}
        onKeyDown={onKeyDown}
        onChange={(event) => {
          setTyped(event.target.value);
          setActive(0);
        }}
      />
      {problem === '' ? null : (
        <p className="field-error search-problem" role="alert">
          {problem}
        </p>
      )}
      <ChoiceList label={titles[machine]} groups={groups} activeId={chosen?.id} onChoose={take} />
    </dialog>
  );
}
