import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Dialog } from '../../app/Dialog.tsx';
import { usePreferences } from '../../app/preferences.ts';
import { Trouble } from '../../app/server/Trouble.tsx';
import { onceOf, said, yard } from '../../app/server/yard.ts';
import { YardQueries } from '../../app/server/YardQueries.tsx';
import type { YardQuestion } from '../check/usePicked.ts';
import { verdictName } from './verdicts.ts';
import { RecordPicker } from '../records/RecordPicker.tsx';
import type { ListedRecord } from '../records/recordTypes.ts';
import './saveAnswer.css';

interface SaveAnswerProps {
  readonly asked: YardQuestion;
  /** Cures are counted on: an answer is about records, and keeps none. */
  readonly hasChosen: boolean;
  readonly onClose: () => void;
}

/** Keeps an answer with the customer it was given to: it is checked again whenever a value it rests on changes. */
export function SaveAnswer({ asked, hasChosen, onClose }: SaveAnswerProps) {
  return (
    <Dialog title="Save the answer" className="save-answer" onClose={onClose}>
      {hasChosen ? (
        <p className="save-part">
          It is saved as the records stand: the cures that are counted on here are not kept with it, and others may cure
          it there.
        </p>
      ) : null}
      <YardQueries>
        <SaveForm asked={asked} />
      </YardQueries>
    </Dialog>
  );
}

function SaveForm({ asked }: Pick<SaveAnswerProps, 'asked'>) {
  const { system } = usePreferences();
  const [title, setTitle] = useState(() => document.querySelector('h1')?.textContent?.slice(0, 200) ?? '');
  const [customer, setCustomer] = useState<ListedRecord | null>(null);
  const [isPicking, setPicking] = useState(false);
  const save = useMutation({
    mutationFn: () => {
      const json = {
        title: title.trim(),
        refs: { ...asked, parts: 'fitting' as const, units: system },
        ...(customer === null ? {} : { customer: customer.id }),
      };
      return onceOf(json, (key) => said(yard.answers.$post({ header: { 'idempotency-key': key }, json })));
    },
  });
  if (save.data !== undefined)
    return (
      <div className="save-part" role="status">
        <p>
          <b>Saved: {verdictName(save.data.verdict).toLowerCase()}.</b> When a value that it rests on changes, it is
          checked again, and listed if it comes out otherwise.
        </p>
        <p className="button-row">
          <a className="button" href={`#answer=${save.data.id}`}>
            Look at it
          </a>
        </p>
      </div>
    );
  return (
    <form
      className="save-part"
      onSubmit={(event) => {
        event.preventDefault();
        if (title.trim() !== '' && !isPicking) save.mutate();
      }}
    >
      <label className="save-label">
        <span>What was asked</span>
        <input value={title} maxLength={200} onChange={({ target }) => setTitle(target.value)} />
      </label>
      <RecordPicker
        words="Who asked"
        kinds={['customer']}
        picked={customer}
        onPick={setCustomer}
        onPending={setPicking}
      />
      <Trouble problem={save.error} />
      <button type="submit" className="button-solid" disabled={save.isPending || isPicking || title.trim() === ''}>
        Save
      </button>
    </form>
  );
}
