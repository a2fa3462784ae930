import { splitQuantity, type UnitSystem } from '@hitchwright/core/units';
import { useLayoutEffect, useRef } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { alongRuler, type Sweep } from './heights.ts';
import type { LiftPlace } from './place.ts';

interface HeightTagProps {
  readonly sweep: Sweep;
  readonly place: LiftPlace;
}

/** The tag that is dragged, with the height of the balls. It moves with every frame, so it is written by hand. */
export function HeightTag({ sweep, place }: HeightTagProps) {
  const { system } = usePreferences();
  const tag = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const show = (): void => write(tag.current, sweep, place.get(), system);
    show();
    return place.follow(show);
  }, [sweep, place, system]);
  return (
    <span ref={tag} className="lift-pointer" aria-hidden="true">
      <span className="figure">
        <span />
        <span className="fraction-above" />
        <span />
        <span className="fraction-below" />
        <span />
      </span>
    </span>
  );
}

function write(tag: HTMLSpanElement | null, sweep: Sweep, station: number, system: UnitSystem): void {
  const height = sweep.stations[station]?.ballHeight ?? 0;
  const step = system === 'us' ? 8 : 1;
  const { whole, numerator, denominator, unit } = splitQuantity(height, 'length', { system, step });
  const slash = numerator === undefined ? '' : '⁄';
  const texts = [whole, numerator ?? '', slash, denominator ?? '', ` ${unit}`];
  tag?.style.setProperty('--at', String(alongRuler(sweep, station)));
  texts.forEach((text, i) => {
    const part = tag?.firstElementChild?.children[i];
    if (part && part.textContent !== text) part.textContent = text;
  });
}
