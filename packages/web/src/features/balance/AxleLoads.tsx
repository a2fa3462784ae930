import { printBoth, type UnitSystem } from '@hitchwright/core/units';
import { balanceRemarks } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { StillDrawing } from '../check/StillDrawing.tsx';
import type { Answered } from '../check/useAssessment.ts';
import { useFormat } from '../check/useFormat.ts';
import type { LiftPlace } from '../lift/place.ts';
import { fittedNames, type Balance } from './axleLoads.ts';
import { BalanceUnknown } from './BalanceUnknown.tsx';
import { LimitTable } from './LimitTable.tsx';
import { LoadTable } from './LoadTable.tsx';
import { Slopes } from './Slopes.tsx';
import './balance.css';

interface AxleLoadsProps {
  readonly answered: Answered;
  /** Where the lift stands; null where no slider is in sight that moves it. */
  readonly place: LiftPlace | null;
  readonly onMeasure: (field: string) => void;
}

/** Whether it stays upright, in sentences and tables: what the axles carry through the lift, their limits, and slopes. */
export function AxleLoads({ answered, place, onMeasure }: AxleLoadsProps) {
  const { answer, setup, drawings } = answered;
  const { balance } = answer;
  const isPrint = useFormat() === 'print';
  return (
    <section className="axles" aria-labelledby="axles-title">
      <h2 id="axles-title">Axle loads</h2>
      {balance === null ? (
        <BalanceUnknown setup={setup} onMeasure={onMeasure} />
      ) : (
        <>
          <Sentences answered={answered} balance={balance} />
          {drawings?.axles == null || (place !== null && !isPrint) ? null : (
            <StillDrawing pictures={drawings.axles} inWords="The axle loads in words" />
          )}
          <LoadTable answer={answer} balance={balance} place={place} />
          <LimitTable answer={answer} />
          <Slopes balance={balance} setup={setup} pictures={drawings?.slopes ?? null} />
        </>
      )}
    </section>
  );
}

function Sentences({ answered: { answer }, balance }: { readonly answered: Answered; readonly balance: Balance }) {
  const { system } = usePreferences();
  return (
    <div className="axle-part">
      {[...balanceRemarks(answer, system), ...fromTheList(answer), countedText(balance, system)].map((text) => (
        <p key={text}>
          <Figures text={text} />
        </p>
      ))}
    </div>
  );
}

/** How many weights of which kind on the list make up what is needed. */
function fromTheList({ cures }: Answered['answer']): string[] {
  return cures
    .filter(({ kind }) => kind === 'frontWeights')
    .map(({ count, part }) => `From the list: ${count} × ${part ?? 'front weight'}.`);
}

/** What the loads are made of, so that what was left out is seen. */
function countedText({ base, fitted, behind }: Balance, system: UnitSystem): string {
  const mass = (value: number): string => printBoth(value, 'mass', { system });
  const ahead = fitted.map((one) => `${fittedNames[one.what]}, ${mass(one.mass)}`);
  return `Counted: the tractor as weighed for the job, ${mass(base)}; ${[...ahead, `hung behind, ${mass(behind)}`].join('; ')}.`;
}
