import { lazy, Suspense, useState } from 'react';
import { Drawing } from './Drawing.tsx';
import type { Answered } from './useAssessment.ts';
import { useFormat } from './useFormat.ts';
import { ViewSwitch, type View } from './ViewSwitch.tsx';

const LiftView = lazy(() => import('../lift/LiftView.tsx').then(({ LiftView }) => ({ default: LiftView })));

interface ViewsProps {
  readonly answered: Answered;
  readonly onMeasure: (field: string) => void;
}

/** The drawing from behind or from the side, under the switch between them. Paper always gets the one from behind. */
export function Views({ answered, onMeasure }: ViewsProps) {
  const [view, setView] = useState<View>('rear');
  const isPrint = useFormat() === 'print';
  return (
    <div className="views">
      <ViewSwitch view={view} onView={setView} />
      {view === 'side' && !isPrint ? (
        <Suspense fallback={<p className="drawing drawing-none">Opening the side view…</p>}>
          <LiftView answered={answered} onMeasure={onMeasure} />
        </Suspense>
      ) : (
        <Drawing answered={answered} />
      )}
    </div>
  );
}
