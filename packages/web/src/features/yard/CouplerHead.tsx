import type { CouplerKind, SetupDocument } from '@hitchwright/core/records';
import { columnName, useYardInView } from './yardInView.ts';

const kinds: Readonly<Record<CouplerKind, string>> = {
  uFrame: 'frame with three hooks',
  triangle: 'triangular frame',
  clawEnds: 'claws on the lower links',
  bar: 'bar for jaws',
  hookEnds: 'hooks on the lower links',
};

/** What kind of thing a column is, in a few words. */
export function couplerKindOf(coupler: SetupDocument | null): string {
  if (coupler === null) return 'straight on the links';
  return kinds[coupler['kind'] as CouplerKind] ?? 'coupler';
}

interface CouplerHeadProps {
  readonly column: number;
  readonly isChosen: boolean;
  readonly onChoose: (column: number) => void;
}

/** Head of a coupler's column: choosing it draws the pins against it. */
export function CouplerHead({ column, isChosen, onChoose }: CouplerHeadProps) {
  const { columns } = useYardInView();
  const coupler = columns[column] ?? null;
  return (
    <th scope="col" className={isChosen ? 'coupler-head coupler-head-chosen' : 'coupler-head'}>
      <button type="button" aria-pressed={isChosen} onClick={() => onChoose(column)}>
        <CouplerSketch kind={coupler === null ? null : (coupler['kind'] as CouplerKind)} />
        <span className="yard-title">{columnName(columns, column)}</span>
        <span className="coupler-kind">{couplerKindOf(coupler)}</span>
      </button>
    </th>
  );
}

const sketches: Readonly<Record<CouplerKind, string>> = {
  uFrame: 'M14 44V20h60v24M22 44V28h44v16M38 20l3-18h6l3 18',
  triangle: 'M18 46 40 4h8l22 42h-8L44 12 26 46z',
  clawEnds: 'M18 28v10a7 7 0 0 0 14 0v-4M56 28v10a7 7 0 0 0 14 0v-4',
  bar: 'M14 36h60v6H14zM36 36l4-30h8l4 30',
  hookEnds: 'M18 26v14a6 6 0 0 0 12 0v-4M58 26v14a6 6 0 0 0 12 0v-4',
};

function CouplerSketch({ kind }: { readonly kind: CouplerKind | null }) {
  const isBare = kind === null || kind === 'clawEnds' || kind === 'hookEnds';
  return (
    <svg className="coupler-sketch" viewBox="0 0 88 48" aria-hidden="true" focusable="false">
      {kind === null ? (
        <path d="M20 38a5 5 0 1 0 10 0 5 5 0 1 0-10 0M58 38a5 5 0 1 0 10 0 5 5 0 1 0-10 0" />
      ) : (
        <path d={sketches[kind]} />
      )}
      {isBare ? <circle cx="44" cy="8" r="4.5" /> : null}
    </svg>
  );
}
