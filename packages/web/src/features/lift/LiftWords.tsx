import { useState } from 'react';
import { Figures } from '../../marks/Figures.tsx';
import { useAtPlace, type LiftPlace } from './place.ts';
import { pictureAt, type Pictures } from './usePictures.ts';

interface LiftWordsProps {
  readonly pictures: Pictures;
  readonly place: LiftPlace;
}

/** The drawing in words; they change with every height, so they are written only while they are open. */
export function LiftWords({ pictures, place }: LiftWordsProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="drawing-words" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>The drawing in words</summary>
      {isOpen ? <Words pictures={pictures} place={place} /> : null}
    </details>
  );
}

function Words({ pictures, place }: LiftWordsProps) {
  const words = useAtPlace(place, (station) => (pictureAt(pictures, station)?.words ?? []).join('\n'));
  return words.split('\n').map((paragraph, i) => (
    <p key={i}>
      <Figures text={paragraph} />
    </p>
  ));
}
