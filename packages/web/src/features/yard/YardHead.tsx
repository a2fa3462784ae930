import { useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { RecordsLink } from '../../app/server/RecordsLink.tsx';
import type { Choice, OnlyFrom, Picked } from '../question/choices.ts';
import { SearchPanel } from '../question/SearchPanel.tsx';

interface YardHeadProps {
  /** What the tractor is called. */
  readonly name: string;
  /** Where another tractor is taken from. */
  readonly only: OnlyFrom;
  readonly onChoose: (choice: Choice, picked: Picked | null) => void;
}

/** The strip of a yard page: the question, in which another tractor can be chosen. */
export function YardHead({ name, only, onChoose }: YardHeadProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <Header
      actions={
        <>
          <a className="quiet" href="#">
            One check
          </a>
          <RecordsLink />
        </>
      }
    >
      <h1 className="question">
        What goes on the{' '}
        <button type="button" className="slot" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {name}
        </button>
        ?
      </h1>
      {isOpen ? (
        <SearchPanel
          machine="tractor"
          only={only}
          onClose={() => setOpen(false)}
          onChoose={(choice, picked) => {
            setOpen(false);
            onChoose(choice, picked);
          }}
        />
      ) : null}
    </Header>
  );
}
