import type { CSSProperties, ReactNode } from 'react';
import type { Sweep } from './heights.ts';
import { LiftDrawing } from './LiftDrawing.tsx';
import { LiftSlider, type Slider } from './LiftSlider.tsx';
import { plotChoices, PlotSwitch, type PlotChoice } from './PlotSwitch.tsx';
import { onPlotsRuler, onViewRuler } from './ruler.ts';
import type { LiftPaper } from './painter.ts';
import type { Pictures } from './usePictures.ts';

interface LiftPicturesProps {
  readonly pictures: Pictures;
  readonly sweep: Sweep;
  readonly slider: Slider;
  /** On a phone the slider has a bar of its own, and all pairs of plots stand one below the other. */
  readonly isPhone: boolean;
  readonly plots: PlotChoice;
  readonly onPlots: (choice: PlotChoice) => void;
  /** What moves the lift, below the pictures or in the room beside the top view. */
  readonly children: ReactNode;
}

/** The pictures of a lift: view and plots side by side at one level where there is room, the drive from above and the axle loads below them. */
export function LiftPictures(props: LiftPicturesProps) {
  const { pictures, isPhone, plots, onPlots, children } = props;
  const { paper } = pictures;
  const choices = plotChoices(paper);
  const shown = choices.includes(plots) ? plots : 'plots';
  const others = isPhone ? choices.filter((choice) => choice !== shown) : [];
  return (
    <div className={sheetClass(paper)} style={columnsOf(paper)}>
      <View {...props} />
      {isPhone ? null : <PlotSwitch choices={choices} shown={shown} onShow={onPlots} />}
      <Plots key={shown} {...props} which={shown} />
      {others.map((which) => (
        <Plots key={which} {...props} which={which} />
      ))}
      {paper.hasDrive ? (
        <div className="lift-top">
          <LiftDrawing pictures={pictures} which="top" place={props.slider.place} />
        </div>
      ) : null}
      <div className="lift-controls">{children}</div>
      {paper.hasAxles ? (
        <div className="lift-axles">
          <LiftDrawing pictures={pictures} which="seeSaw" place={props.slider.place} />
        </div>
      ) : null}
    </div>
  );
}

function viewHasRuler({ paper }: Pictures, isPhone: boolean): boolean {
  return !paper.areBeside && !isPhone;
}

function View({ pictures, sweep, slider, isPhone }: LiftPicturesProps) {
  return (
    <div className="lift-ruled lift-view">
      <LiftDrawing pictures={pictures} which="view" place={slider.place} />
      {viewHasRuler(pictures, isPhone) ? (
        <LiftSlider className="lift-slider-upright" style={onViewRuler(pictures.paper, sweep)} slider={slider} />
      ) : null}
    </div>
  );
}

function Plots({ pictures, sweep, slider, isPhone, which }: LiftPicturesProps & { readonly which: PlotChoice }) {
  return (
    <div className="lift-ruled lift-plots">
      <LiftDrawing pictures={pictures} which={which} place={slider.place} />
      <LiftSlider
        className="lift-slider-upright"
        style={onPlotsRuler(pictures.paper, sweep)}
        slider={slider}
        isSecond={viewHasRuler(pictures, isPhone) || isPhone}
      />
    </div>
  );
}

function sheetClass(paper: LiftPaper): string {
  const isSwitched = plotChoices(paper).length > 1;
  const names = [paper.areBeside && 'lift-beside', isSwitched && 'lift-switched', paper.hasDrive && 'lift-driven'];
  return ['lift-sheet', ...names].filter((name) => name !== false).join(' ');
}

function columnsOf({ areBeside, view, plots }: LiftPaper): CSSProperties {
  const [left, right] = [view.right - view.left, plots.right - plots.left];
  return areBeside ? { gridTemplateColumns: `minmax(0, ${left}fr) minmax(0, ${right}fr)` } : {};
}
