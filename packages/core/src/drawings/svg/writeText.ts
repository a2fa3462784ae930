import { diameterSign } from '../diameterSign.ts';
import { fractionRise, fractionSize, haloWidth, runsOf, secondGap, type Run } from '../lettering.ts';
import type { Lettering } from '../scene.ts';
import { coordinate, escaped } from './escape.ts';

/** A line of lettering: its ground cleared by a second text underneath, then the text. */
export function writeText(item: Lettering, scale: number): string {
  const size = item.size * scale;
  const sign = item.diameter === true ? writeSign(item, size) : '';
  const content = runsOf(item.text).map(runWriter(size)).join('') + secondText(item, scale);
  const place = placeOf(item, item.diameter === true ? diameterSign(item.at, size).advance : 0);
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
    const wanted = part === 'over' ? -fractionRise * size : 0;
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
  return `<tspan class="second" font-weight="400" font-size="${coordinate(size)}" dx="${coordinate(size * secondGap)}">${content}</tspan>`;
}

function writeSign({ at, tone }: Lettering, size: number): string {
  const { centre, radius, stroke, width } = diameterSign(at, size);
  const line = `class="l ${tone === 'accent' ? 'misfit' : 'thin'}" style="stroke-width:${coordinate(width)}"`;
  const [[x1, y1], [x2, y2]] = stroke;
  return (
    `<circle ${line} cx="${coordinate(centre[0])}" cy="${coordinate(-centre[1])}" r="${coordinate(radius)}"/>` +
    `<line ${line} x1="${coordinate(x1)}" y1="${coordinate(-y1)}" x2="${coordinate(x2)}" y2="${coordinate(-y2)}"/>`
  );
}
