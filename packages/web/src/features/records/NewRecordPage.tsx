import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { YardFrame } from '../../app/server/YardFrame.tsx';
import { onceOf, said, yard } from '../../app/server/yard.ts';
import { ChoiceField } from '../dimensions/ChoiceField.tsx';
import { plainChoices, saidBy } from '../dimensions/plainChoices.ts';
import { copied } from './copied.ts';
import { kindNamed, kinds, kindWords, type Kind } from './kinds.ts';
import { RecordPicker } from './RecordPicker.tsx';
import type { ListedRecord } from './recordTypes.ts';
import { classChoices } from './templates.ts';
import { recordOf } from './useRecord.ts';

/** A new record: of a kind, from what its class usually is, or like one that is there. */
export function NewRecordPage({ kind: wanted }: { readonly kind: string }) {
  const [word = '', base = null] = wanted.split(':');
  return (
    <YardFrame at="#records" title="A new record">
      <NewRecord first={kindNamed(word) ?? 'implement'} base={base} />
    </YardFrame>
  );
}

interface NewRecordProps {
  readonly first: Kind;
  /** Id of the model of a machine, or of the tractor of a state. */
  readonly base: string | null;
}

function NewRecord({ first, base }: NewRecordProps) {
  const [kind, setKind] = useState(first);
  const [name, setName] = useState('');
  const [fields, setFields] = useState<Readonly<Record<string, string>>>({});
  const [owner, setOwner] = useState<ListedRecord | null>(null);
  const [like, setLike] = useState<ListedRecord | null>(null);
  const [under, setUnder] = useUnder(base);
  const [pending, setPending] = useState<ReadonlySet<string>>(new Set());
  const standsOn = kind === 'machine' ? 'model' : kind === 'state' ? 'parent' : null;
  const make = useMutation({
    mutationFn: async () => {
      if (like !== null) return copied(await recordOf(like.id), name.trim());
      const json = {
        kind,
        name: name.trim(),
        fields: fieldsSaid(kind, fields),
        ...(owner === null || kind !== 'machine' ? {} : { owner: owner.id }),
        ...(standsOn === null || under === null ? {} : { [standsOn]: under.id }),
      };
      return onceOf(json, (key) => said(yard.records.$post({ header: { 'idempotency-key': key }, json })));
    },
  });
  /** What was chosen for another kind says nothing of this one. */
  const choose = (next: Kind): void => {
    setKind(next);
    setFields({});
    setLike(null);
    setUnder(null);
    setPending(new Set());
  };
  /** A name that was typed and not picked is nobody’s: the record waits until it is. */
  const pend = (words: string) => (isPending: boolean) => {
    const next = new Set(pending);
    if (isPending) next.add(words);
    else next.delete(words);
    setPending(next);
  };
  const picker = (words: string) => ({ words, onPending: pend(words) });
  const [unpicked] = pending;
  const isReady = name.trim() !== '' && (standsOn === null || under !== null) && unpicked === undefined;
  return (
    <form
      className="sheet new-record"
      onSubmit={(event) => {
        event.preventDefault();
        // Only while it still stands here: who has gone elsewhere is not called away.
        if (isReady) make.mutate(undefined, { onSuccess: ({ id }) => (location.hash = `#record=${id}`) });
      }}
    >
      <label className="reading-labelled">
        <span>What it is</span>
        <select value={kind} onChange={({ target }) => choose(kindNamed(target.value) ?? kind)}>
          {kinds.map((one) => (
            <option key={one} value={one}>
              {kindWords[one].one}
            </option>
          ))}
        </select>
      </label>
      <label className="reading-labelled">
        <span>Name</span>
        <input value={name} maxLength={200} autoFocus onChange={({ target }) => setName(target.value)} />
      </label>
      {standsOn === null ? null : (
        <RecordPicker
          {...picker(kind === 'machine' ? 'It is one of' : 'Laid over the tractor')}
          kinds={kind === 'machine' ? ['tractor', 'coupler', 'implement'] : ['tractor']}
          picked={under}
          onPick={setUnder}
        />
      )}
      {kind === 'machine' ? (
        <RecordPicker {...picker('Whose it is')} kinds={['customer']} picked={owner} onPick={setOwner} />
      ) : null}
      {like === null
        ? classChoices[kind].map((key) => {
            const choice = plainChoices[key];
            return choice === undefined ? null : (
              <ChoiceField
                key={key}
                path={key}
                choice={choice}
                chosen={fields[key] ?? firstOf(key)}
                onChange={(chosen) => setFields({ ...fields, [key]: chosen })}
              />
            );
          })
        : null}
      {standsOn === null ? (
        <RecordPicker {...picker('Or like one that is there')} kinds={[kind]} picked={like} onPick={setLike} />
      ) : null}
      <Trouble problem={make.error} />
      {unpicked === undefined ? null : (
        <p className="field-error" role="alert">
          “{unpicked}” is typed but not picked: press one of the names that were found, or empty the box.
        </p>
      )}
      <p className="button-row">
        <button type="submit" className="button-solid" disabled={!isReady || make.isPending}>
          Make the record
        </button>
        <a className="button" href="#records">
          Leave
        </a>
      </p>
    </form>
  );
}

/** What a choice begins with: what has to be said begins with its first option. */
function firstOf(key: string): string {
  const choice = plainChoices[key];
  return choice?.required === true ? (choice.options[0]?.[0] ?? '') : (choice?.usual ?? '');
}

/** The choices as a record has them. */
function fieldsSaid(kind: Kind, chosen: Readonly<Record<string, string>>): Record<string, unknown> {
  const said = classChoices[kind].flatMap((key): [string, unknown][] => {
    const choice = plainChoices[key];
    return choice === undefined ? [] : [[key, saidBy(choice, chosen[key] ?? firstOf(key))]];
  });
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

/** The record that the new one stands on: given by the address, or picked. */
function useUnder(base: string | null) {
  const [picked, setPicked] = useState<ListedRecord | null | undefined>(undefined);
  const given = useQuery({
    queryKey: ['record', base],
    queryFn: () => recordOf(base ?? ''),
    enabled: base !== null && picked === undefined,
  });
  return [picked === undefined ? (given.data ?? null) : picked, setPicked] as const;
}
