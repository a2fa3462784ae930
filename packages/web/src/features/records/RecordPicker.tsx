import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { said, yard } from '../../app/server/yard.ts';
import { kindWords, type Kind } from './kinds.ts';
import type { ListedRecord } from './recordTypes.ts';
import './picker.css';

interface RecordPickerProps {
  readonly words: string;
  readonly kinds: readonly Kind[];
  readonly picked: ListedRecord | null;
  readonly onPick: (record: ListedRecord | null) => void;
  /** Told whether something is typed that was not picked yet. */
  readonly onPending?: (isPending: boolean) => void;
}

/** Finds one record as its name is typed. */
export function RecordPicker({ words, kinds, picked, onPick, onPending }: RecordPickerProps) {
  const id = useId();
  const [search, setSearch] = useState('');
  const found = useQuery({
    queryKey: ['records', 'picked', kinds, search],
    queryFn: ({ signal }) =>
      said(yard.records.$get({ query: { kind: kinds.join(','), search, limit: '8' } }, { init: { signal } })),
    enabled: search.trim() !== '' && picked === null,
    placeholderData: keepPreviousData,
  });
  if (picked !== null)
    return (
      <p className="picked">
        <span>{words}</span> <b>{picked.name}</b>{' '}
        <button type="button" onClick={() => onPick(null)}>
          Another one
        </button>
      </p>
    );
  const take = (record: ListedRecord): void => {
    onPending?.(false);
    onPick(record);
  };
  const hits = search.trim() === '' ? [] : (found.data?.items ?? []);
  const [first] = hits;
  return (
    <div className="picker">
      <label className="picker-label">
        <span>{words}</span>
        <input
          type="search"
          value={search}
          maxLength={200}
          autoComplete="off"
          aria-controls={id}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            if (first !== undefined && !found.isPlaceholderData) take(first);
          }}
          onChange={({ target }) => {
            setSearch(target.value);
            onPending?.(target.value.trim() !== '');
          }}
        />
      </label>
      <ul id={id}>
        {hits.map((record) => (
          <li key={record.id}>
            <button type="button" onClick={() => take(record)}>
              {record.name} <span>{kindWords[record.kind].one}</span>
            </button>
          </li>
        ))}
      </ul>
      <p role="status" className="picker-state">
        {pickerState(search, hits.length, found.isFetching)}
      </p>
    </div>
  );
}

function pickerState(search: string, hits: number, isFetching: boolean): string {
  if (search.trim() === '') return '';
  if (hits === 0) return isFetching ? 'Looking…' : 'None is called so.';
  return 'Pick one of these, or empty the box.';
}
