import type { SetupDocument } from '@hitchwright/core/records';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Dialog } from '../../app/Dialog.tsx';
import { Trouble } from '../../app/server/Trouble.tsx';
import { onceOf, said, yard } from '../../app/server/yard.ts';
import { YardQueries } from '../../app/server/YardQueries.tsx';
import { recordAt } from '../question/question.ts';
import { nameOf } from '../yard/sampleYard.ts';
import '../answers/saveAnswer.css';

const machines = [
  ['implement', 'Implement'],
  ['tractor', 'Tractor'],
  ['coupler', 'Coupler'],
  ['shaft', 'Drive shaft'],
] as const;

interface KeepMachinesProps {
  readonly document: SetupDocument;
  readonly onClose: () => void;
}

/** What was typed into the question, to be kept in the yard’s records without typing it again. */
export function KeepMachines({ document, onClose }: KeepMachinesProps) {
  const units = document['units'] === 'metric' ? 'metric' : 'us';
  return (
    <Dialog title="Keep it in the records" className="save-answer" onClose={onClose}>
      <p className="save-part">
        Every figure goes along as it stands here, with who read it and how, as far as that was said.
      </p>
      <YardQueries>
        {machines.map(([kind, words]) => {
          const record = recordAt(document, kind);
          return record === null ? null : (
            <KeepOne key={kind} kind={kind} words={words} record={record} units={units} />
          );
        })}
      </YardQueries>
    </Dialog>
  );
}

interface KeepOneProps {
  readonly kind: (typeof machines)[number][0];
  readonly words: string;
  readonly record: SetupDocument;
  readonly units: 'us' | 'metric';
}

function KeepOne({ kind, words, record, units }: KeepOneProps) {
  const [name, setName] = useState(nameOf(record, ''));
  const keep = useMutation({
    mutationFn: () => {
      const json = { kind, document: { ...record, name: name.trim() }, units };
      return onceOf(json, (key) => said(yard.records['of-setup'].$post({ header: { 'idempotency-key': key }, json })));
    },
  });
  return (
    <form
      className="save-part"
      onSubmit={(event) => {
        event.preventDefault();
        keep.mutate();
      }}
    >
      <label className="save-label">
        <span>{words}: its name</span>
        <input value={name} maxLength={200} onChange={({ target }) => setName(target.value)} />
      </label>
      {keep.data === undefined ? (
        <button type="submit" disabled={name.trim() === '' || keep.isPending}>
          Keep it
        </button>
      ) : (
        <p role="status">
          Kept. <a href={`#record=${keep.data.id}`}>Open the record</a>
        </p>
      )}
      <Trouble problem={keep.error} />
    </form>
  );
}
