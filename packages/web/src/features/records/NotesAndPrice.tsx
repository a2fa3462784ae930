import { atPath } from '@hitchwright/core/records';
import { plainAt } from './fieldsOf.ts';
import { partKinds, weightKinds } from './kinds.ts';
import { Labelled } from './Labelled.tsx';
import type { RecordDesk } from './useRecord.ts';
import { useTyped } from './useTyped.ts';

/** What a record has beside its figures: kind of part, price, how to reach somebody, a note. */
export function NotesAndPrice({ desk }: { readonly desk: RecordDesk }) {
  const { kind } = desk.record;
  const isPriced = kind !== 'customer' && kind !== 'machine' && kind !== 'state';
  return (
    <details className="field-group" open>
      <summary>
        <span>{kind === 'customer' ? 'How to reach them' : 'Beside its figures'}</span>
      </summary>
      {kind === 'part' || kind === 'weight' ? <PartKind desk={desk} /> : null}
      {kind === 'customer' ? (
        <>
          <TextField desk={desk} field="contact.phone" words="Telephone" />
          <TextField desk={desk} field="contact.email" words="E-mail" />
          <TextField desk={desk} field="contact.address" words="Address" />
        </>
      ) : null}
      {isPriced ? <PriceField desk={desk} /> : null}
      <TextField desk={desk} field="note" words="Note" isLong />
    </details>
  );
}

function PartKind({ desk: { record, change } }: { readonly desk: RecordDesk }) {
  const options = record.kind === 'weight' ? weightKinds : partKinds;
  const kind = record.fields['kind'];
  return (
    <Labelled isField words="Kind">
      <select
        value={typeof kind === 'string' ? kind : ''}
        onChange={({ target }) => void change({ fields: { kind: target.value === '' ? null : target.value } })}
      >
        <option value="">not said</option>
        {options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </Labelled>
  );
}

interface TextFieldProps {
  readonly desk: RecordDesk;
  readonly field: string;
  readonly words: string;
  readonly isLong?: boolean;
}

/** A text that is written down when one leaves it. */
function TextField({ desk: { record, change }, field, words, isLong = false }: TextFieldProps) {
  const kept = atPath(record.fields, field);
  const text = typeof kept === 'string' ? kept : '';
  const [typed, setTyped] = useTyped(text);
  const leave = (): void => {
    if (typed !== text) void change({ fields: { [field]: typed.trim() === '' ? null : typed.trim() } });
  };
  const shared = { value: typed, maxLength: 2000, onBlur: leave };
  return (
    <Labelled isField words={words}>
      {isLong ? (
        <textarea rows={3} {...shared} onChange={({ target }) => setTyped(target.value)} />
      ) : (
        <input {...shared} onChange={({ target }) => setTyped(target.value)} />
      )}
    </Labelled>
  );
}

interface Price {
  readonly amount: number;
  readonly currency: string;
}

function PriceField({ desk: { record, change } }: { readonly desk: RecordDesk }) {
  const kept = plainAt(record, 'price') as Price | undefined;
  const [amount, setAmount] = useTyped(kept === undefined ? '' : String(kept.amount));
  const [currency, setCurrency] = useTyped(kept?.currency ?? 'USD');
  const isWrong = amount.trim() !== '' && !/^\d+([.,]\d{1,2})?$/.test(amount.trim());
  const leave = (): void => {
    const price = amount.trim() === '' ? null : { amount: Number(amount.replace(',', '.')), currency };
    const isSame = price?.amount === kept?.amount && (price === null || price.currency === kept?.currency);
    if (!isWrong && !isSame) void change({ fields: { price } });
  };
  return (
    <div className="price-field">
      <Labelled isField words="Price">
        <input
          inputMode="decimal"
          value={amount}
          aria-invalid={isWrong}
          onBlur={leave}
          onChange={({ target }) => setAmount(target.value)}
        />
      </Labelled>
      <Labelled isField words="Currency">
        <input
          value={currency}
          maxLength={3}
          onBlur={leave}
          onChange={({ target }) => setCurrency(target.value.toUpperCase())}
        />
      </Labelled>
      {isWrong ? <p className="field-error">A price is a number such as 1250 or 1250.50.</p> : null}
    </div>
  );
}
