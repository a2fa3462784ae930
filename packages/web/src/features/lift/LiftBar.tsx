import type { CSSProperties } from 'react';
import { alongRuler, type NamedHeight, type Sweep } from './heights.ts';
import { HeightTag } from './HeightTag.tsx';
import { LiftSlider, type Slider } from './LiftSlider.tsx';
import { PlayButton } from './PlayButton.tsx';
import type { Play } from './usePlay.ts';

interface LiftBarProps {
  readonly sweep: Sweep;
  readonly heights: readonly NamedHeight[];
  readonly play: Play;
  readonly slider: Slider;
}

/** The ruler under the thumb, that stays in sight while the drawings scroll. */
export function LiftBar({ sweep, heights, play, slider }: LiftBarProps) {
  return (
    <div className="lift-bar">
      <PlayButton play={play} />
      <div className="lift-level">
        {heights.map(({ name, station }) => (
          <span
            key={name}
            className="lift-tick"
            style={{ '--at': alongRuler(sweep, station) } as CSSProperties}
            aria-hidden="true"
          />
        ))}
        <LiftSlider className="lift-slider-level" slider={slider} />
        <HeightTag sweep={sweep} place={slider.place} />
      </div>
    </div>
  );
}
