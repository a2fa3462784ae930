import { lazy, Suspense, useRef } from 'react';
import type { ShownLift } from '../lift/useShownLift.ts';
import { Drawing } from './Drawing.tsx';
import type { Answered } from './useAssessment.ts';
import { useFormat } from './useFormat.ts';
import { useIsLow } from './useIsLow.ts';
import { ViewSwitch } from './ViewSwitch.tsx';

const LiftView = lazy(() => import('../lift/LiftView.tsx').then(({ LiftView }) => ({ default: LiftView })));

interface ViewsProps {
  readonly answered: Answered;
  readonly lift: ShownLift;
  readonly onMeasure: (field: string) => void;
}

/** The drawing from behind or from the side, under the switch between them. Paper always gets the one from behind. */
export function Views({ answered, lift, onMeasure }: ViewsProps) {
  const isPrint = useFormat() === 'print';
  const box = useRef<HTMLDivElement>(null);
  const isLow = useIsLow(box);
  return (
    <div ref={box} className={isLow ? 'views views-low' : 'views'}>
      <ViewSwitch view={lift.view} onView={lift.show} />
      {lift.view === 'side' && !isPrint ? (
        <Suspense fallback={<p className="drawing drawing-none">Opening the side view…</p>}>
          <LiftView answered={answered} place={lift.place} onMeasure={onMeasure} />
        </Suspense>
      ) : (
        <Drawing answered={answered} />
      )}
    </div>
  );
}
