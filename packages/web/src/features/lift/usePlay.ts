import { useCallback, useEffect, useMemo, useState } from 'react';
import { useMedia } from '../../app/media.ts';
import type { NamedHeight } from './heights.ts';
import type { LiftPlace } from './place.ts';

/** Time that a station stands while the lift is played, and a named height where motion is to be reduced [ms]. */
const stationTime = 45;
const restTime = 1200;

/** A lift that is played, or stands. */
export interface Play {
  readonly isPlaying: boolean;
  readonly start: () => void;
  readonly stop: () => void;
}

/**
 * Plays the lift once from where it stands, or from its lowest where it stands at its highest. Where motion is to be
 * reduced it steps from one named height to the next instead.
 */
export function usePlay(place: LiftPlace, last: number, heights: readonly NamedHeight[]): Play {
  const [isPlaying, setPlaying] = useState(false);
  const isReduced = useMedia('(prefers-reduced-motion: reduce)');
  useEffect(() => {
    if (!isPlaying) return undefined;
    const step = (): void => {
      const next = isReduced ? nextRest(heights, place.get(), last) : place.get() + 1;
      place.set(Math.min(next, last));
      if (next >= last) setPlaying(false);
    };
    const timer = setInterval(step, isReduced ? restTime : stationTime);
    return () => clearInterval(timer);
  }, [isPlaying, isReduced, place, last, heights]);
  const stop = useCallback(() => setPlaying(false), []);
  const start = useCallback(() => {
    if (place.get() >= last) place.set(0);
    setPlaying(true);
  }, [place, last]);
  return useMemo(() => ({ isPlaying, start, stop }), [isPlaying, start, stop]);
}

function nextRest(heights: readonly NamedHeight[], station: number, last: number): number {
  const above = heights.map((height) => height.station).filter((rest) => rest > station);
  return Math.min(last, ...above);
}
