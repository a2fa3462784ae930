import type { UnitSystem } from '@hitchwright/core/units';
import { across, columnWidth, type Scale } from './drawnColumns.ts';

const inch = 25.4;

/** The ruler above a drawn column: a tick for every inch or 25 mm, a figure for every second. */
export function PinRuler({ scale, system }: { readonly scale: Scale; readonly system: UnitSystem }) {
  const step = system === 'us' ? inch : 25;
  const first = Math.ceil(scale.from / step);
  const count = Math.floor(scale.to / step) - first + 1;
  const ticks = Array.from({ length: count }, (_, i) => first + i);
  const every = count > 9 ? 4 : 2;
  return (
    <svg className="ruler" viewBox={`0 0 ${columnWidth} 30`} aria-hidden="true" focusable="false">
      {ticks.map((tick) => {
        const x = across(scale, tick * step);
        const isNamed = tick % every === 0 && x > 10 && x < columnWidth - 10;
        return (
          <g key={tick}>
            <line x1={x} x2={x} y1={isNamed ? 20 : 24} y2={30} />
            {isNamed ? (
              <text x={x} y={15} textAnchor="middle">
                {system === 'us' ? tick : tick * step}
              </text>
            ) : null}
          </g>
        );
      })}
    </svg>
  );
}
