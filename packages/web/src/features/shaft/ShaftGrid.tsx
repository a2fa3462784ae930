import { useMemo } from 'react';
import { useMedia } from '../../app/media.ts';
import type { Reply } from '../check/assessor.ts';
import { useBook } from '../yard/answerBook.ts';
import { useGrid } from '../yard/useGrid.ts';
import { aloneIn, drivenIn, setupWith, type Driven, type Pair } from './shaftSetups.ts';
import { ShaftSummary } from './ShaftSummary.tsx';
import { ShaftTable } from './ShaftTable.tsx';
import { ShaftList } from './ShaftList.tsx';
import './shaft.css';

/** What shafts and driven implements are shown from: a row for each shaft, a reply for each implement in it. */
export interface ShaftViewProps {
  readonly pair: Pair;
  readonly driven: Driven;
  readonly replies: readonly (readonly (Reply | null)[])[];
}

/** A table has room for no more implements beside each other. */
const mostColumns = 10;

interface ShaftGridProps {
  readonly pair: Pair;
  /** What stands between tractor and implements. */
  readonly name: string;
}

/** Which drive shaft of the yard serves which driven implement, between one tractor and one coupler. */
export function ShaftGrid({ pair, name }: ShaftGridProps) {
  const driven = useMemo(() => drivenIn(pair.yard), [pair]);
  if (driven.shafts.length === 0 || driven.implements.length === 0) return <NothingDriven driven={driven} />;
  return <Shafts pair={pair} name={name} driven={driven} />;
}

function NothingDriven({ driven: { shafts } }: { readonly driven: Driven }) {
  return (
    <p className="pad">
      {shafts.length === 0 ? 'There is no drive shaft on the shelf' : 'No implement here is driven by a shaft'}, so
      there is nothing to try.
    </p>
  );
}

function Shafts({ pair, name, driven }: ShaftGridProps & { readonly driven: Driven }) {
  const book = useBook();
  const { replies, ...progress } = useGrid(book, () =>
    driven.shafts.map((part) => driven.implements.map((implement) => aloneIn(setupWith(pair, implement, part)))),
  );
  const isNarrow = useMedia('(max-width: 1199px)');
  const View = isNarrow || driven.implements.length > mostColumns ? ShaftList : ShaftTable;
  return (
    <>
      <View pair={pair} driven={driven} replies={replies} />
      <ShaftSummary name={name} driven={driven} replies={replies} progress={progress} />
    </>
  );
}
