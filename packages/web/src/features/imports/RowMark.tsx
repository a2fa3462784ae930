import type { Becomes } from './rowWords.ts';

/** A mark beside the word that says what becomes of a row: solid where something is written, an outline where nothing is. */
const paths: Readonly<Record<Becomes, { readonly line: string; readonly solid: string }>> = {
  new: { line: '', solid: 'M2 2h12v12H2z' },
  changes: { line: 'M2 2h12v12H2z', solid: 'M2 14V2l12 12z' },
  back: { line: 'M2 2h12v12H2z', solid: 'M2 8h12v6H2z' },
  nothing: { line: 'M2 2h12v12H2z', solid: '' },
  refused: { line: 'M2.5 2.5l11 11M13.5 2.5l-11 11', solid: '' },
  twice: { line: 'M2 2h9v9H2zM6 11v3h8V6h-3', solid: '' },
  skipped: { line: 'M2 8h12', solid: '' },
};

export function RowMark({ becomes }: { readonly becomes: Becomes }) {
  const { line, solid } = paths[becomes];
  return (
    <svg className="imp-mark" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      {line === '' ? null : <path d={line} className="imp-mark-line" />}
      {solid === '' ? null : <path d={solid} className="imp-mark-solid" />}
    </svg>
  );
}
