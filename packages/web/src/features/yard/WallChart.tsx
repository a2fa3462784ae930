import type { Chart } from '@hitchwright/core/handover';
import type { ChartFormat } from '@hitchwright/print/pure';
import { useState } from 'react';
import { Dialog } from '../../app/Dialog.tsx';
import { download } from '../../app/download.ts';
import { PaperChoice } from '../handover/PaperChoice.tsx';
import { ProblemNote } from '../handover/ProblemNote.tsx';
import { useChartMaker } from '../handover/useMaker.ts';
import type { AnswerBook } from './answerBook.ts';
import { nameOf } from './sampleYard.ts';
import { useWallChart, type WallChartDesk } from './useWallChart.ts';
import { useYardInView, type YardPart } from './yardInView.ts';
import '../handover/handover.css';
import './wallChart.css';

interface WallChartProps {
  readonly book: AnswerBook;
  readonly onClose: () => void;
}

/** The wall chart of the yard: made pairing by pairing, then printed or kept. */
export function WallChart({ book, onClose }: WallChartProps) {
  const desk = useWallChart(book);
  return (
    <Dialog title="Wall chart" className="hand-over wall-chart" onClose={onClose}>
      <Making desk={desk} />
      {desk.state.at === 'made' ? <Made chart={desk.state.chart} /> : null}
    </Dialog>
  );
}

type Which = 'this' | 'every';

/** Which tractors are charted, how far it is, and what became of it. */
function Making({ desk }: { readonly desk: WallChartDesk }) {
  const view = useYardInView();
  const [which, setWhich] = useState<Which>('this');
  const partWanted = async (): Promise<YardPart> =>
    which === 'every'
      ? await view.everyTractor()
      : { yard: { ...view.yard, tractors: [view.tractor] }, leftOut: view.leftOut };
  const choose = (next: Which): void => {
    setWhich(next);
    desk.forget();
  };
  const isRunning = desk.state.at === 'running';
  return (
    <section className="hand-over-part" aria-label="Make the chart">
      <p>
        Every implement with every coupler and without one, to hang up: what goes on, and the first reason why not.
        {view.leftOut.length > 0 ? ' It takes in what is shown here only; the yard has more.' : ''}
      </p>
      <div className="hand-over-fields">
        <label>
          <span>Tractors</span>
          <select
            value={which}
            disabled={isRunning}
            onChange={({ target }) => choose(target.value === 'every' ? 'every' : 'this')}
          >
            <option value="this">{nameOf(view.tractor, 'This one')}</option>
            <option value="every">Every tractor</option>
          </select>
        </label>
      </div>
      <ChartState desk={desk} />
      <div className="hand-over-actions">
        {isRunning ? (
          <button type="button" onClick={desk.stop}>
            Stop
          </button>
        ) : (
          <button type="button" className="button-solid" onClick={() => desk.make(partWanted)}>
            {desk.state.at === 'made' ? 'Make it again' : 'Make the chart'}
          </button>
        )}
      </div>
    </section>
  );
}

function ChartState({ desk: { state } }: { readonly desk: WallChartDesk }) {
  if (state.at === 'problem') return <ProblemNote problem={state.problem} />;
  const progress = state.at === 'running' || state.at === 'stopped' ? state.progress : null;
  const { done, total } = progress ?? { done: 0, total: 0 };
  return (
    <>
      {state.at === 'running' && progress !== null ? (
        <progress aria-label="Pairings judged" value={done} max={total} />
      ) : null}
      <p role="status">
        {state.at === 'running' ? (progress === null ? 'Fetching the yard…' : `${done} of ${total}`) : null}
        {state.at === 'stopped'
          ? `Stopped${progress === null ? '' : ` at ${done} of ${total}`}. Nothing was kept.`
          : null}
        {state.at === 'made' ? [`${state.chart.countText}.`, ...state.leftOut].join(' ') : null}
      </p>
    </>
  );
}

/** Paper, and the file to keep or print. */
function Made({ chart }: { readonly chart: Chart }) {
  const desk = useChartMaker();
  const make = async (format: ChartFormat): Promise<void> => {
    const made = await desk.make(chart, format);
    if (made?.kind === 'file') download(made.name, made.bytes, made.type);
  };
  return (
    <section className="hand-over-part" aria-labelledby="wall-chart-made">
      <h3 id="wall-chart-made">Print or keep it</h3>
      <ProblemNote problem={desk.problem} />
      <div className="hand-over-fields">
        <PaperChoice desk={desk} />
      </div>
      <div className="hand-over-actions">
        <button type="button" className="button-solid" disabled={desk.making !== null} onClick={() => void make('pdf')}>
          PDF to print
        </button>
        <button type="button" disabled={desk.making !== null} onClick={() => void make('html')}>
          HTML page
        </button>
      </div>
      <p role="status">{desk.making === null ? null : 'It is being made…'}</p>
    </section>
  );
}
