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
}

/** Finds one record as its name is typed. */
export function RecordPicker({ words, kinds, picked, onPick }: RecordPickerProps) {
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
          onChange={({ target }) => setSearch(target.value)}
        />
      </label>
      <ul id={id}>
        {(search.trim() === '' ? [] : (found.data?.items ?? [])).map((record) => (
          <li key={record.id}>
            <button type="button" onClick={() => onPick(record)}>
              {record.name} <span>{kindWords[record.kind].one}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
