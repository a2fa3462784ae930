import { fractionSize, runsOf, type Run } from '../lettering.ts';
import type { Lettering } from '../scene.ts';
import { coordinate, escaped } from './escape.ts';

const raised = 0.3;
/** Width of the cleared ground around letters [part of their size]. */
const haloWidth = 0.3;

/** A line of lettering: its ground cleared by a second text underneath, then the text. */
export function writeText(item: Lettering, scale: number): string {
  const size = item.size * scale;
  const sign = item.diameter === true ? diameterSign(item, size) : '';
  const content = runsOf(item.text).map(runWriter(size)).join('') + secondText(item, scale);
  const place = placeOf(item, item.diameter === true ? size * 0.95 : 0);
  const weight = item.weight === 400 ? '' : ` font-weight="${item.weight}"`;
  const anchor = item.anchor === 'start' ? '' : ` text-anchor="${item.anchor}"`;
  const shared = `${place} font-size="${coordinate(size)}"${weight}${anchor}`;
  const halo =
    item.halo === false
      ? ''
      : `<text class="halo" aria-hidden="true" ${shared} stroke-width="${coordinate(size * haloWidth)}">${content}</text>`;
  return `${halo}${sign}<text class="${item.tone}" ${shared}>${content}</text>`;
}

function placeOf({ at, upward }: Lettering, shift: number): string {
  const [x, y] = [coordinate(at[0] + shift), coordinate(-at[1])];
  return upward === true ? `x="${x}" y="${y}" transform="rotate(-90 ${x} ${y})"` : `x="${x}" y="${y}"`;
}

/** Each piece of a fraction moves from where the last one stood, so the baseline is kept track of. */
function runWriter(size: number): (run: Run) => string {
  let baseline = 0;
  return ({ part, text }) => {
    const wanted = part === 'over' ? -raised * size : 0;
    const dy = wanted - baseline;
    baseline = wanted;
    const small = part === 'over' || part === 'under' ? ` font-size="${coordinate(size * fractionSize)}"` : '';
    const shift = dy === 0 ? '' : ` dy="${coordinate(dy)}"`;
    return small === '' && shift === '' ? escaped(text) : `<tspan${small}${shift}>${escaped(text)}</tspan>`;
  };
}

function secondText({ second }: Lettering, scale: number): string {
  if (second === undefined) return '';
  const size = second.size * scale;
  const content = runsOf(second.text).map(runWriter(size)).join('');
  return `<tspan class="second" font-weight="400" font-size="${coordinate(size)}" dx="${coordinate(size * 0.5)}">${content}</tspan>`;
}

function diameterSign({ at, tone }: Lettering, size: number): string {
  const [x, y] = [at[0] + size * 0.4, -at[1] - size * 0.33];
  const [r, reach] = [size * 0.3, size * 0.42];
  const width = coordinate(size * 0.075);
  const stroke = tone === 'accent' ? 'misfit' : 'thin';
  const ends = [x - reach * 0.7, y + reach, x + reach * 0.7, y - reach].map(coordinate);
  return (
    `<circle class="l ${stroke}" style="stroke-width:${width}" cx="${coordinate(x)}" cy="${coordinate(y)}" r="${coordinate(r)}"/>` +
    `<line class="l ${stroke}" style="stroke-width:${width}" x1="${ends[0]}" y1="${ends[1]}" x2="${ends[2]}" y2="${ends[3]}"/>`
  );
}
