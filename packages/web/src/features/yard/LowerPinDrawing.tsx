import { useId } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { across, type DrawnColumn, type Scale } from './drawnColumns.ts';
import type { DrawnLowerPin } from './pinFigures.ts';
import { DrawnWords } from './DrawnWords.tsx';
import { lowerPinWords } from './pinWords.ts';
import { frameHeight, PinFrame, stretch } from './PinFrame.tsx';

interface LowerPinDrawingProps {
  readonly pins: DrawnColumn<DrawnLowerPin>;
  readonly row: number;
  readonly against: string;
}

/** The lower right pin from behind, to scale, across the hook of the chosen coupler. */
export function LowerPinDrawing({ pins: { pins, hatched, scale }, row, against }: LowerPinDrawingProps) {
  const id = useId();
  const { system } = usePreferences();
  const pin = pins[row] ?? 'waiting';
  if (typeof pin === 'string') return <DrawnWords hatched={hatched} scale={scale} words={pin} id={id} />;
  return (
    <PinFrame id={id} hatched={hatched} scale={scale} label={lowerPinWords(pin, hatched, system, against)}>
      {pin.isMisfit
        ? hatched.map((hook) => <Gap key={hook.low} pin={pin} hook={hook} scale={scale} fill={`url(#${id}-misfit)`} />)
        : null}
      <Pin pin={pin} scale={scale} />
    </PinFrame>
  );
}

function Pin({ pin, scale }: { readonly pin: DrawnLowerPin; readonly scale: Scale }) {
  const half = Math.max(across(scale, scale.from + pin.diameter) / 2, 3);
  const way = pin.tip > pin.shoulder ? 1 : -1;
  const middle = frameHeight / 2;
  const plate = stretch(scale, pin.shoulder - way * pin.plate, pin.shoulder);
  const body = stretch(scale, pin.shoulder, pin.tip);
  return (
    <g className={pin.isMisfit ? 'pin pin-misfit' : 'pin'}>
      <rect {...plate} y={middle - 22} height={44} />
      <rect {...body} y={middle - half} height={2 * half} />
      <line className="pin-axis" x1={plate.x - 6} x2={body.x + body.width + 8} y1={middle} y2={middle} />
    </g>
  );
}

/** What lies between the pin and the hook that it should fill. */
function Gap(props: { pin: DrawnLowerPin; hook: { low: number; high: number }; scale: Scale; fill: string }) {
  const { pin, hook, scale, fill } = props;
  const short =
    Math.max(pin.shoulder, pin.tip) < hook.high ? stretch(scale, Math.max(pin.shoulder, pin.tip), hook.high) : null;
  const wide = pin.shoulder > hook.low ? stretch(scale, hook.low, pin.shoulder) : null;
  const gap = wide ?? short;
  return gap === null ? null : <rect {...gap} y={frameHeight / 2 - 20} height={40} fill={fill} />;
}
