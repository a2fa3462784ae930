import type { LiftPaper } from './painter.ts';

/** The plots beside the view: what the lift manages, what the drive shaft does, or what the axles carry. */
export type PlotChoice = 'plots' | 'drivePlots' | 'axlePlots';

interface PlotSwitchProps {
  readonly choices: readonly PlotChoice[];
  readonly shown: PlotChoice;
  readonly onShow: (choice: PlotChoice) => void;
}

const names: Readonly<Record<PlotChoice, string>> = { plots: 'Lift', drivePlots: 'Drive', axlePlots: 'Axles' };

/** The plots that there are to choose from. */
export function plotChoices({ hasDrive, hasAxles }: Pick<LiftPaper, 'hasDrive' | 'hasAxles'>): readonly PlotChoice[] {
  return ['plots', ...(hasDrive ? (['drivePlots'] as const) : []), ...(hasAxles ? (['axlePlots'] as const) : [])];
}

/** Chooses between the plots where only one pair has room beside the view. */
export function PlotSwitch({ choices, shown, onShow }: PlotSwitchProps) {
  if (choices.length < 2) return null;
  return (
    <div className="plot-switch" role="group" aria-label="Plots">
      {choices.map((choice) => (
        <button key={choice} type="button" aria-pressed={shown === choice} onClick={() => onShow(choice)}>
          {names[choice]}
        </button>
      ))}
    </div>
  );
}
