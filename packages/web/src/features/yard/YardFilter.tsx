import { useState } from 'react';
import type { FetchedYard, YardAsked } from './ownYard.ts';

interface YardFilterProps {
  readonly asked: YardAsked;
  readonly fetched: FetchedYard;
  readonly onAsk: (asked: YardAsked) => void;
}

/** Where the yard has more than a page can work through: what is shown of it, and the ways to the rest. */
export function YardFilter({ asked, fetched, onAsk }: YardFilterProps) {
  const [words, setWords] = useState({ implements: asked.implements, couplers: asked.couplers });
  const { next, more } = fetched;
  const isAll = next === null && asked.cursor === null && !more.couplers && more.parts === 0;
  if (isAll && asked.implements === '' && asked.couplers === '') return null;
  const box = (kind: 'implements' | 'couplers', label: string) => (
    <label>
      <span>{label}</span>
      <input
        type="search"
        value={words[kind]}
        maxLength={200}
        autoComplete="off"
        onChange={({ target }) => setWords({ ...words, [kind]: target.value })}
      />
    </label>
  );
  return (
    <form
      className="yard-filter"
      role="search"
      aria-label="Part of the yard"
      onSubmit={(event) => {
        event.preventDefault();
        onAsk({ ...asked, implements: words.implements.trim(), couplers: words.couplers.trim(), cursor: null });
      }}
    >
      <p role="status">{shownWords(asked, fetched)}</p>
      <div className="yard-filter-boxes">
        {box('implements', 'Implements called')}
        {box('couplers', 'Couplers called')}
        <button type="submit">Show these</button>
        {asked.cursor === null ? null : (
          <button type="button" onClick={() => onAsk({ ...asked, cursor: null })}>
            From the first
          </button>
        )}
        {next === null ? null : (
          <button type="button" onClick={() => onAsk({ ...asked, cursor: next })}>
            Next implements
          </button>
        )}
      </div>
    </form>
  );
}

function shownWords({ cursor }: YardAsked, { records, next, more }: FetchedYard): string {
  const [first, last] = [records.implements[0]?.name, records.implements.at(-1)?.name];
  const implement = `${records.implements.length} ${records.implements.length === 1 ? 'implement' : 'implements'}`;
  const isPart = next !== null || cursor !== null;
  return [
    isPart && first !== undefined ? `${implement} by name, from ${first} to ${last ?? first}.` : `${implement}.`,
    ...(next === null ? [] : ['There are more.']),
    ...(more.couplers ? [`The first ${records.couplers.length} couplers by name; there are more.`] : []),
    ...(more.parts === 0 ? [] : [`${more.parts} parts of the shelf are left out: a check takes 60, a yard 1000.`]),
  ].join(' ');
}
