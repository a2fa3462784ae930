import { useId } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { across, type DrawnColumn, type Scale } from './drawnColumns.ts';
import type { DrawnUpperPin } from './pinFigures.ts';
import { DrawnWords } from './DrawnWords.tsx';
import { upperPinWords } from './pinWords.ts';
import { frameHeight, PinFrame, stretch } from './PinFrame.tsx';

interface UpperPinDrawingProps {
  readonly pins: DrawnColumn<DrawnUpperPin>;
  readonly row: number;
  readonly against: string;
}

/** The upper pin along its height above the lower ones, to scale, against the top hook of the chosen coupler. */
export function UpperPinDrawing({ pins: { pins, hatched, scale }, row, against }: UpperPinDrawingProps) {
  const id = useId();
  const { system } = usePreferences();
  const pin = pins[row] ?? 'waiting';
  if (typeof pin === 'string') return <DrawnWords hatched={hatched} scale={scale} words={pin} id={id} />;
  return (
    <PinFrame id={id} hatched={hatched} scale={scale} label={upperPinWords(pin, hatched, system, against)}>
      {pin.isMisfit
        ? pin.heights.map((mast) => (
            <Gap key={mast} mast={mast} hatched={hatched} scale={scale} fill={`url(#${id}-misfit)`} />
          ))
        : null}
      {pin.heights.map((mast) => (
        <Eye
          key={mast}
          x={across(scale, mast)}
          radius={Math.max(across(scale, scale.from + pin.diameter) / 2, 4)}
          isMisfit={pin.isMisfit}
        />
      ))}
    </PinFrame>
  );
}

function Eye({ x, radius, isMisfit }: { readonly x: number; readonly radius: number; readonly isMisfit: boolean }) {
  const reach = radius + 4;
  const y = frameHeight / 2;
  return (
    <g className={isMisfit ? 'pin pin-misfit' : 'pin'}>
      <circle cx={x} cy={y} r={radius} />
      <path className="pin-axis" d={`M${x - reach} ${y}h${2 * reach}M${x} ${y - reach}v${2 * reach}`} />
    </g>
  );
}

/** From the nearest hook to the pin that misses it. */
function Gap(props: { mast: number; hatched: DrawnColumn<DrawnUpperPin>['hatched']; scale: Scale; fill: string }) {
  const { mast, hatched, scale, fill } = props;
  const edges = hatched.flatMap(({ low, high }) => [low, high]);
  const isInside = hatched.some(({ low, high }) => mast >= low && mast <= high);
  if (edges.length === 0 || isInside) return null;
  const nearest = edges.reduce((best, edge) => (Math.abs(edge - mast) < Math.abs(best - mast) ? edge : best));
  return <rect {...stretch(scale, nearest, mast)} y={frameHeight / 2 - 10} height={20} fill={fill} />;
}
