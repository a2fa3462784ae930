import type { Edit, SetupDocument } from '@hitchwright/core/records';
import { useId } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ShaftBar } from './ShaftBar.tsx';
import { isOfSample, shelfFor, type ShelfShaft } from './shelf.ts';
import { useYardShafts } from './useYardShafts.ts';
import './shaft.css';

interface ShaftShelfProps {
  readonly document: SetupDocument;
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** The drive shafts at hand, drawn to one scale: one of them, none, or the figures that are typed below. */
export function ShaftShelf({ document, onEdit }: ShaftShelfProps) {
  const { system } = usePreferences();
  const group = useId();
  const yardShafts = useYardShafts();
  const { shafts, longest, chosen } = shelfFor(document, system, yardShafts);
  const choose = (value: unknown): void => onEdit([{ path: 'shaft', value }]);
  const radio = (key: string, isChosen: boolean, onChoose: () => void) => (
    <input type="radio" name={group} value={key} checked={isChosen} onChange={onChoose} />
  );
  return (
    <fieldset className="shaft-shelf">
      <legend>Which drive shaft?</legend>
      {yardShafts?.length === 0 && !isOfSample(document) ? <p>There is no drive shaft in the yard’s records.</p> : null}
      {shafts.map((shaft) => (
        <label key={shaft.name}>
          {radio(shaft.name, chosen === shaft, () => choose(shaft.record))}
          <Choice shaft={shaft} longest={longest} />
        </label>
      ))}
      {chosen === 'typed' ? (
        <label>
          {radio('typed', true, () => undefined)}
          <span className="shelf-name">As typed below</span>
        </label>
      ) : null}
      <label>
        {radio('none', chosen === 'none', () => choose(undefined))}
        <span className="shelf-name">None yet</span>
      </label>
    </fieldset>
  );
}

function Choice({ shaft, longest }: { readonly shaft: ShelfShaft; readonly longest: number }) {
  return (
    <span className="shelf-shaft">
      <span className="shelf-name">
        <Figures text={shaft.name} />
      </span>
      <ShaftBar closed={shaft.closed} overlap={shaft.overlap} longest={longest} />
      <span className="shelf-note">
        <Figures text={shaft.note} />
      </span>
    </span>
  );
}
