import { lineDashes, lineWidths } from '../lineStyles.ts';
import type { LineRole } from '../scene.ts';

const ink = 'var(--ink, #221F1A)';
const second = 'var(--ink-2, #5A5346)';
const accent = 'var(--accent, #A3123F)';
const ghost = 'var(--ghost, #B5AA94)';
const sheet = 'var(--sheet, #FBF7EC)';
const face = "var(--drawing-font, 'National Park', 'Source Sans 3', 'Segoe UI', system-ui, sans-serif)";

/** The style of a drawing, scoped to its class; widths are in the drawing's own millimetres, so they go with its scale. */
export function styleOf(scope: string, scale: number): string {
  const width = (role: LineRole): string => String(Math.round(lineWidths[role] * scale * 1000) / 1000);
  const dashes = (lengths: readonly number[]): string =>
    lengths.map((length) => Math.round(length * scale * 100) / 100).join(' ');
  const rules = [
    `{color:${ink}}`,
    ` .l{fill:none;stroke-linejoin:round;stroke-linecap:butt}`,
    ` .heavy{stroke:${ink};stroke-width:${width('heavy')}}`,
    ` .thin{stroke:${ink};stroke-width:${width('thin')}}`,
    ` .hidden{stroke:${ink};stroke-width:${width('hidden')};stroke-dasharray:${dashes(lineDashes.hidden)}}`,
    ` .centre{stroke:${second};stroke-width:${width('centre')};stroke-dasharray:${dashes(lineDashes.centre)}}`,
    ` .ghost{stroke:${ghost};stroke-width:${width('ghost')}}`,
    ` .misfit{stroke:${accent};stroke-width:${width('misfit')}}`,
    ` .dimension{stroke:${second};stroke-width:${width('dimension')}}`,
    ` .misfit.thinner{stroke-width:${width('thin')}}`,
    ` .thin.h{stroke:${second};stroke-width:${width('centre')}}`,
    ` .misfit.h{stroke-width:${width('thin')}}`,
    ` .on-sheet{fill:${sheet}}`,
    ` .solid{stroke:none}`,
    ` .solid.heavy,.solid.thin{fill:${ink}}`,
    ` .solid.dimension{fill:${second}}`,
    ` .solid.misfit{fill:${accent}}`,
    ` .sheet{fill:${sheet}}`,
    ` text{font-family:${face};font-variant-numeric:tabular-nums lining-nums;white-space:pre}`,
    ` .ink{fill:${ink}}`,
    ` .second{fill:${second}}`,
    ` .accent{fill:${accent}}`,
    ` .on-accent{fill:${sheet}}`,
    ` .halo,.halo *{fill:${sheet};stroke:${sheet};stroke-linejoin:round}`,
  ];
  return rules.map((rule) => scoped(rule, scope)).join('');
}

function scoped(rule: string, scope: string): string {
  const [selectors = '', ...rest] = rule.split('{');
  return `${selectors
    .split(',')
    .map((selector) => `.${scope}${selector.startsWith('.') ? ` ${selector}` : selector}`)
    .join(',')}{${rest.join('{')}`;
}
