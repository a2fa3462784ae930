import type { Answered } from '../check/useAssessment.ts';
import { ShaftDrawing } from '../shaft/ShaftDrawing.tsx';
import { Lift } from './Lift.tsx';
import { LiftUnknown } from './LiftUnknown.tsx';
import type { LiftPlace } from './place.ts';
import './lift.css';

interface LiftViewProps {
  readonly answered: Answered;
  readonly place: LiftPlace;
  readonly onMeasure: (field: string) => void;
}

/** The lift from the side and the drive shaft by itself, or what to measure so that there can be one. A shaft that a cure cuts is drawn beside the cure. */
export function LiftView({ answered, place, onMeasure }: LiftViewProps) {
  const { answer, setup, drawings } = answered;
  return (
    <section className="drawing lift" aria-label="Side view through the lift">
      {answer.sweep === null ? (
        <LiftUnknown setup={setup} basis={answer.liftBasis} onMeasure={onMeasure} />
      ) : (
        <Lift answered={answered} sweep={answer.sweep} place={place} />
      )}
      {drawings?.shaft == null || drawings.cut !== null ? null : (
        <div className="lift-shaft">
          <ShaftDrawing pictures={drawings.shaft} />
        </div>
      )}
    </section>
  );
}
