/** The plots beside the view: what the lift manages, or what the drive shaft does. */
export type PlotChoice = 'plots' | 'drivePlots';

interface PlotSwitchProps {
  readonly shown: PlotChoice;
  readonly onShow: (choice: PlotChoice) => void;
}

const names: Readonly<Record<PlotChoice, string>> = { plots: 'Lift', drivePlots: 'Drive' };

/** Chooses between the plots where only one pair has room beside the view. */
export function PlotSwitch({ shown, onShow }: PlotSwitchProps) {
  return (
    <div className="plot-switch" role="group" aria-label="Plots">
      {(['plots', 'drivePlots'] as const).map((choice) => (
        <button key={choice} type="button" aria-pressed={shown === choice} onClick={() => onShow(choice)}>
          {names[choice]}
        </button>
      ))}
    </div>
  );
}
