import { stationWords } from '@hitchwright/core/drawings';
import { topicOf, type Topic } from '@hitchwright/core/findings';
import { useMemo, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import type { Answered } from '../check/useAssessment.ts';
import { useFormat } from '../check/useFormat.ts';
import { HeightJumps } from './HeightJumps.tsx';
import { namedHeights, type Sweep } from './heights.ts';
import { LiftBar } from './LiftBar.tsx';
import { LiftPictures } from './LiftPictures.tsx';
import type { Slider } from './LiftSlider.tsx';
import { LiftWords } from './LiftWords.tsx';
import type { LiftPlace } from './place.ts';
import { PlayButton } from './PlayButton.tsx';
import type { PlotChoice } from './PlotSwitch.tsx';
import { usePictures } from './usePictures.ts';
import { usePlay, type Play } from './usePlay.ts';

interface LiftProps {
  readonly answered: Answered;
  readonly sweep: Sweep;
  readonly place: LiftPlace;
}

/** The lift that can be moved: its pictures, its slider, and the heights that have a name. */
export function Lift({ answered, sweep, place }: LiftProps) {
  const format = useFormat();
  const last = sweep.stations.length - 1;
  const [said, setSaid] = useState('');
  const [plots, setPlots] = useState(() => openingPlots(answered.answer));
  const heights = useMemo(() => namedHeights(sweep), [sweep]);
  const play = usePlay(place, last, heights);
  const slider = useSlider(answered, place, last, play);
  const pictures = usePictures(answered, format, place);
  const jump = (station: number): void => {
    slider.onMove(station);
    setSaid(slider.spoken(station));
  };
  if (pictures === null) return <p className="lift-waiting">Drawing the lift…</p>;
  if (pictures === 'broken')
    return (
      <p className="lift-waiting">Something inside broke on this drawing. The verdict and the notes still hold.</p>
    );
  const isPhone = format === 'phone';
  return (
    <>
      <LiftPictures
        pictures={pictures}
        sweep={sweep}
        slider={slider}
        isPhone={isPhone}
        plots={plots}
        onPlots={setPlots}
      >
        {isPhone ? null : <PlayButton play={play} />}
        <HeightJumps heights={heights} place={place} onJump={jump} />
      </LiftPictures>
      <LiftWords pictures={pictures} place={place} />
      {isPhone ? <LiftBar sweep={sweep} heights={heights} play={play} slider={slider} /> : null}
      <p className="unseen" role="status">
        {said}
      </p>
    </>
  );
}

/** The plots of what the verdict turns on. */
function openingPlots({ lead }: Answered['answer']): PlotChoice {
  const choices: Partial<Record<Topic, PlotChoice>> = { runs: 'drivePlots', staysUpright: 'axlePlots' };
  return (lead === null ? undefined : choices[topicOf(lead.id)]) ?? 'plots';
}

function useSlider({ answer }: Answered, place: LiftPlace, last: number, { stop }: Play): Slider {
  const { system } = usePreferences();
  return useMemo(
    () => ({
      place,
      last,
      spoken: (station) => stationWords(answer, station, system),
      onMove: (station) => {
        stop();
        place.set(station);
      },
    }),
    [answer, place, last, stop, system],
  );
}
