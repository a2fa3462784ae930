import type { Setup } from '../../records/index.ts';
import type { Item, Point } from '../scene.ts';
import type { Shown } from '../shown.ts';
import { body, circle, line, mirrored, rectangle, run } from '../strokes.ts';
import {
  backRows,
  from,
  given,
  heightColumn,
  shortRow,
  spanRow,
  told,
  valueOr,
  type MachinePicture,
} from './picture.ts';

/** The hooks of a coupler; null for a kind without hooks of its own spread, or where that spread was not given. */
export function hooksPicture({ coupler }: Setup): MachinePicture | null {
  const figure = (key: string): Shown | null => given(coupler, key);
  const span = figure('hookSpan');
  if (coupler?.kind !== 'uFrame' || span === null) return null;
  const [width, height, behind] = [figure('hookWidth'), figure('topHookHeight'), figure('topHookBehind')];
  const [w, d] = [valueOr(width, forPlace), valueOr(figure('hookSeat'), forPlace)];
  const back = valueOr(behind, 0);
  const centre = span.value / 2;
  return {
    views: {
      rear: [...rearHooks(centre, w, d), ...from(height, ({ value }) => rearTop(centre, value, d)).flat()],
      side: [...sideHook([0, 0], d), ...from(height, ({ value }) => sideTop([back, value], d)).flat()],
      half: centre + w / 2 + 40,
      extent: [2 * d - Math.min(0, back), 2 * d + Math.max(0, back)],
      rise: valueOr(height, 0) + 2 * d,
      drop: 1.5 * d,
      rows: [
        ...from(width, (one) => shortRow(one, [centre - w / 2, centre + w / 2], 'hook width')),
        spanRow(span, 'hook centres'),
      ],
      columns: from(height, (one) => heightColumn(one, back)),
      above: backRows(behind, height?.value ?? null),
    },
    figures: told([
      ['Centres of the lower hooks', span],
      ['Width of a lower hook along the pin', width],
      ['Top hook above the lower hooks', height],
      ['Top hook behind the lower hooks', behind],
    ]),
    note: 'Circles: pins seated in the hooks.',
  };
}

/** A size for place only [mm]. */
const forPlace = 25;

function sideTop(top: Point, seat: number): Item[] {
  return [line('ghost', [0, 0], top), ...sideHook(top, seat)];
}

function rearHooks(centre: number, width: number, seat: number): Item[] {
  const right = rectangle([centre - width / 2, -1.2 * seat], [centre + width / 2, 0.9 * seat]);
  return [body('heavy', right), body('heavy', mirrored(right))];
}

function rearTop(centre: number, height: number, seat: number): Item[] {
  const post = (sign: 1 | -1): Item => line('ghost', [sign * centre, seat], [sign * seat, height]);
  return [post(1), post(-1), body('heavy', rectangle([-seat / 2, height - seat], [seat / 2, height + 0.9 * seat]))];
}

/** A hook open at the top with its pin seated. */
function sideHook([x, z]: Point, seat: number): Item[] {
  const half = seat / 2;
  return [
    run('heavy', [
      [x - half, z + seat],
      [x - half, z - half],
      [x + half, z - half],
      [x + half, z + seat],
    ]),
    circle('centre', [x, z], half * 0.92),
  ];
}
