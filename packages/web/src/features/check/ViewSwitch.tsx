/** The views of a check that can be looked at. */
export type View = 'rear' | 'side';

interface ViewSwitchProps {
  readonly view: View;
  readonly onView: (view: View) => void;
}

const names: Readonly<Record<View, string>> = { rear: 'Rear', side: 'Side, through the lift' };

/** Chooses between the views, beside the drawing. */
export function ViewSwitch({ view, onView }: ViewSwitchProps) {
  return (
    <div className="side-switch view-switch" role="group" aria-label="View">
      {(['rear', 'side'] as const).map((one) => (
        <button key={one} type="button" className="side-tab" aria-pressed={view === one} onClick={() => onView(one)}>
          {names[one]}
        </button>
      ))}
    </div>
  );
}
