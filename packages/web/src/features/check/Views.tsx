import { topicOf } from '@hitchwright/core/findings';
import { lazy, Suspense, useState } from 'react';
import { Drawing } from './Drawing.tsx';
import type { Answered } from './useAssessment.ts';
import { useFormat } from './useFormat.ts';
import { ViewSwitch, type View } from './ViewSwitch.tsx';

const LiftView = lazy(() => import('../lift/LiftView.tsx').then(({ LiftView }) => ({ default: LiftView })));

/** The picture that shows why comes first: a drive is seen from the side. */
function openingView({ answer: { lead, sweep } }: Answered): View {
  return lead !== null && topicOf(lead.id) === 'runs' && sweep !== null ? 'side' : 'rear';
}

interface ViewsProps {
  readonly answered: Answered;
  readonly onMeasure: (field: string) => void;
}

/** The drawing from behind or from the side, under the switch between them. Paper always gets the one from behind. */
export function Views({ answered, onMeasure }: ViewsProps) {
  const [view, setView] = useState(() => openingView(answered));
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
