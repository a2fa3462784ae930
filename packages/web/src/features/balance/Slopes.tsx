import { fieldRules, type Setup } from '@hitchwright/core/records';
import { printQuantity } from '@hitchwright/core/units';
import type { Drawings } from '../check/assessor.ts';
import { StillDrawing } from '../check/StillDrawing.tsx';
import type { Balance } from './axleLoads.ts';

type Tips = NonNullable<Balance['stations'][number]['tips']>;

const kinds = [
  ['sideways', 'Sideways, the front axle free to swing'],
  ['sidewaysOnStop', 'Sideways, the front axle on its stop'],
  ['uphill', 'Facing uphill'],
] as const satisfies readonly (readonly [keyof Tips, string])[];

const needed = ['centreHeight', 'frontPivotHeight', 'rearTrack'] as const;

interface SlopesProps {
  readonly balance: Balance;
  readonly setup: Setup;
  readonly pictures: Drawings['slopes'];
}

/** Slopes at which it would just tip over at rest: information, never a permission. */
export function Slopes({ balance, setup, pictures }: SlopesProps) {
  const tips = balance.stations.flatMap((station) => station.tips ?? []);
  return (
    <div className="axle-part">
      <h3>Slopes, for information</h3>
      {tips.length === 0 ? (
        <p>{unknownText(setup)}</p>
      ) : (
        <>
          <p>
            The angle at which it would just tip over, standing still on firm even ground, wherever the lift is at its
            worst. These are ideal limits at rest, never a slope to work on: bumps, turns and speed take most of it
            away.
          </p>
          <dl className="axle-slopes">
            {kinds.map(([kind, name]) => (
              <div key={kind}>
                <dt>{name}</dt>
                <dd>{angleText(Math.min(...tips.map((one) => one[kind])))}</dd>
              </div>
            ))}
          </dl>
          {pictures === null ? null : <StillDrawing pictures={pictures} inWords="The slopes in words" />}
        </>
      )}
    </div>
  );
}

function angleText(angle: number): string {
  if (angle <= 0) return 'not even on the level';
  return printQuantity(angle, 'angle', { system: 'metric', round: 'down', step: 1 });
}

function unknownText({ tractor }: Setup): string {
  const missing = needed.filter((field) => tractor[field] === undefined || tractor[field].kind === 'unknown');
  if (missing.length === 0) return 'Not worked out: no top link holds what is carried.';
  const labels = missing.map((field) => fieldRules.get(`tractor.${field}`)?.label ?? field);
  return `Not worked out: needs the ${labels.join(', the ')}.`;
}
