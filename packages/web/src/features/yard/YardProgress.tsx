import type { Progress } from './useGrid.ts';

interface YardProgressProps {
  readonly label: string;
  readonly progress: Progress;
}

/** How far the work is, and the way to stop it and to go on. */
export function YardProgress({ label, progress: { done, total, isRunning, stop, goOn } }: YardProgressProps) {
  return (
    <section className="yard-progress" aria-label={label}>
      <p role="status">
        {isRunning ? 'Working' : done < total ? 'Stopped' : 'All worked out'}: {done} of {total}
      </p>
      {done === total ? null : (
        <button type="button" onClick={isRunning ? stop : goOn}>
          {isRunning ? 'Stop' : 'Go on'}
        </button>
      )}
    </section>
  );
}
