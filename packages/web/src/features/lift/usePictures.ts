import type { Format } from '@hitchwright/core/drawings';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import type { Answered } from '../check/useAssessment.ts';
import type { LiftPlace } from './place.ts';
import { openPainter, type LiftDelivery, type LiftPaper, type LiftPicture, type Painter } from './painter.ts';

/** The pictures of a lift that are ready, by station. */
export interface Pictures {
  readonly order: number;
  readonly paper: LiftPaper;
  readonly ready: ReadonlyMap<number, LiftPicture>;
}

/**
 * Follows an answer with pictures of its lift, beginning where the lift stands; the old ones stay until the first of the
 * new ones are there.
 */
export function usePictures({ setup, answer }: Answered, format: Format, place: LiftPlace): Pictures | 'broken' | null {
  const { system } = usePreferences();
  const [pictures, setPictures] = useState<Pictures | 'broken' | null>(null);
  const painter = useRef<Painter | null>(null);
  useEffect(() => {
    const opened = openPainter(
      (delivery) => setPictures((before) => withDelivery(before, delivery)),
      () => setPictures('broken'),
    );
    painter.current = opened;
    return opened.close;
  }, []);
  useEffect(() => {
    painter.current?.order({ setup, answer, system, format, first: place.get() });
  }, [setup, answer, system, format, place]);
  return pictures;
}

function withDelivery(before: Pictures | 'broken' | null, delivery: LiftDelivery): Pictures {
  const { order, paper, pictures } = delivery;
  const kept = before !== null && before !== 'broken' && before.order === order ? before.ready : [];
  return { order, paper, ready: new Map([...kept, ...pictures]) };
}

/** The picture of a station, or of the nearest one that is ready. */
export function pictureAt({ ready }: Pictures, station: number): LiftPicture | null {
  const exact = ready.get(station);
  if (exact !== undefined) return exact;
  const away = ([at]: readonly [number, LiftPicture]): number => Math.abs(at - station);
  return [...ready].sort((a, b) => away(a) - away(b))[0]?.[1] ?? null;
}
