import { printQuantity } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { NamedHeight } from './heights.ts';
import { useAtPlace, type LiftPlace } from './place.ts';

interface HeightJumpsProps {
  readonly heights: readonly NamedHeight[];
  readonly place: LiftPlace;
  readonly onJump: (station: number) => void;
}

/** Buttons that bring the lift to the heights that have a name. */
export function HeightJumps({ heights, place, onJump }: HeightJumpsProps) {
  const { system } = usePreferences();
  const isHere = ({ station, isReached }: NamedHeight, at: number): boolean => isReached && station === at;
  const here = useAtPlace(place, (station) => heights.find((height) => isHere(height, station))?.station ?? null);
  return (
    <div className="lift-jumps" role="group" aria-label="Go to">
      {heights.map(({ name, height, station, isReached }) => (
        <button
          key={name}
          type="button"
          aria-current={isReached && station === here ? 'true' : undefined}
          onClick={() => onJump(station)}
        >
          <b>{name}</b>{' '}
          <span>
            <Figures text={printQuantity(height, 'length', { system, step: system === 'us' ? 8 : 1 })} />
            {isReached ? null : ', out of reach'}
          </span>
        </button>
      ))}
    </div>
  );
}
