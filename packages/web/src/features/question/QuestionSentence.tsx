import type { SetupDocument } from '@hitchwright/core/records';
import { useState } from 'react';
import type { Machine } from '../yard/sampleYard.ts';
import type { Choice, Picked } from './choices.ts';
import { calledIn } from './question.ts';
import { SearchPanel } from './SearchPanel.tsx';
import './question.css';

interface QuestionSentenceProps {
  readonly document: SetupDocument | null;
  readonly onChoose: (machine: Machine, choice: Choice, picked: Picked | null) => void;
}

/** The question as a sentence: each underlined word opens the search for it. */
export function QuestionSentence({ document, onChoose }: QuestionSentenceProps) {
  const [open, setOpen] = useState<Machine | null>(null);
  const slot = (machine: Machine, blank: string) => (
    <Slot name={calledIn(document, machine)} blank={blank} machine={machine} onOpen={() => setOpen(machine)} />
  );
  return (
    <>
      <h1 className="question">
        Will the {slot('implement', 'implement')} go on the {slot('tractor', 'tractor')} with{' '}
        {slot('coupler', 'no coupler')}?
      </h1>
      {open === null ? null : (
        <SearchPanel
          machine={open}
          onClose={() => setOpen(null)}
          onChoose={(choice, picked) => {
            setOpen(null);
            onChoose(open, choice, picked);
          }}
        />
      )}
    </>
  );
}

interface SlotProps {
  readonly name: string | null;
  readonly blank: string;
  readonly machine: Machine;
  readonly onOpen: () => void;
}

function Slot({ name, blank, machine, onOpen }: SlotProps) {
  const isBlank = name === null && machine !== 'coupler';
  return (
    <button
      type="button"
      className={isBlank ? 'slot slot-blank' : 'slot'}
      aria-haspopup="dialog"
      data-machine={machine}
      onClick={onOpen}
    >
      {isBlank ? <span className="unseen">choose the </span> : null}
      {name ?? blank}
    </button>
  );
}
