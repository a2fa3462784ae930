import { useMedia } from '../../app/media.ts';
import type { Reply } from '../check/assessor.ts';
import { useGrid } from '../yard/useGrid.ts';
import { aloneIn, drivenImplements, setupWith, shaftParts, type Pair } from './shaftSetups.ts';
import { ShaftSummary } from './ShaftSummary.tsx';
import { ShaftTable } from './ShaftTable.tsx';
import { ShaftList } from './ShaftList.tsx';
import './shaft.css';

/** What shafts and driven implements are shown from: a row for each shaft, a reply for each implement in it. */
export interface ShaftViewProps {
  readonly pair: Pair;
  readonly replies: readonly (readonly (Reply | null)[])[];
}

/** Which drive shaft of the yard serves which driven implement, between one tractor and one coupler. */
export function ShaftGrid({ pair, name }: { readonly pair: Pair; readonly name: string }) {
  const { replies, ...progress } = useGrid(() =>
    shaftParts.map((part) => drivenImplements.map((implement) => aloneIn(setupWith(pair, implement, part)))),
  );
  const isNarrow = useMedia('(max-width: 1199px)');
  const View = isNarrow ? ShaftList : ShaftTable;
  return (
    <>
      <View pair={pair} replies={replies} />
      <ShaftSummary name={name} replies={replies} progress={progress} />
    </>
  );
}
