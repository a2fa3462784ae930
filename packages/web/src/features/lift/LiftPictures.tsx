import type { CSSProperties } from 'react';
import type { Sweep } from './heights.ts';
import { LiftDrawing } from './LiftDrawing.tsx';
import { LiftSlider, type Slider } from './LiftSlider.tsx';
import { onPlotsRuler, onViewRuler } from './ruler.ts';
import type { LiftPaper } from './painter.ts';
import type { Pictures } from './usePictures.ts';

interface LiftPicturesProps {
  readonly pictures: Pictures;
  readonly sweep: Sweep;
  readonly slider: Slider;
  /** On a phone the slider has a bar of its own. */
  readonly isPhone: boolean;
}

/** Side view and plots, side by side at one level where there is room, with a slider on each ruler that is drawn. */
export function LiftPictures({ pictures, sweep, slider, isPhone }: LiftPicturesProps) {
  const { paper } = pictures;
  const { place } = slider;
  const viewHasRuler = !paper.areBeside && !isPhone;
  return (
    <div className="lift-sheet" style={columnsOf(paper)}>
      <div className="lift-ruled">
        <LiftDrawing pictures={pictures} which="view" place={place} />
        {viewHasRuler ? (
          <LiftSlider className="lift-slider-upright" style={onViewRuler(paper, sweep)} slider={slider} />
        ) : null}
      </div>
      <div className="lift-ruled">
        <LiftDrawing pictures={pictures} which="plots" place={place} />
        <LiftSlider
          className="lift-slider-upright"
          style={onPlotsRuler(paper, sweep)}
          slider={slider}
          isSecond={viewHasRuler || isPhone}
        />
      </div>
    </div>
  );
}

function columnsOf({ areBeside, view, plots }: LiftPaper): CSSProperties {
  const [left, right] = [view.right - view.left, plots.right - plots.left];
  return areBeside ? { gridTemplateColumns: `minmax(0, ${left}fr) minmax(0, ${right}fr)` } : {};
}
