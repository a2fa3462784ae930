import type { Setup } from '../../records/index.ts';
import { halfWidthOf, topOf, type PinPicture } from '../pinPlan/picture.ts';
import { rearPins } from '../pinPlan/rear.ts';
import { sideExtent, sidePins } from '../pinPlan/side.ts';
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
import type { Shown } from '../shown.ts';

/** The pins of an implement; null where their spread was not given shoulder to shoulder. */
export function pinsPicture({ implement }: Setup): MachinePicture | null {
  const figure = (key: string): Shown | null => given(implement, key);
  const span = figure('shoulderSpan');
  if (span === null || (implement.shoulderSpan?.provenance.from ?? 'shoulder') !== 'shoulder') return null;
  const [tip, hole] = [figure('standOut'), figure('shoulderToHole')];
  const [height, setback] = [figure('mastHeight'), figure('mastSetback')];
  const picture = placedPins(figure, span, implement.pinsPoint === 'in' ? -1 : 1);
  const step = span.value / 2;
  const reach = (name: string) => (one: Shown) => shortRow(one, [step, step + picture.sign * one.value], name);
  return {
    views: {
      rear: rearPins(picture),
      side: sidePins(picture),
      half: halfWidthOf(picture),
      extent: sideExtent(picture),
      rise: topOf(picture),
      drop: picture.lowerDiameter,
      rows: [
        ...from(hole, reach('step to hole')),
        ...from(tip, reach('step to tip')),
        spanRow(span, 'shoulder to shoulder'),
      ],
      columns: from(height, (one) => heightColumn(one, picture.now.setback)),
      above: backRows(setback, picture.now.height),
    },
    figures: told([
      ['Shoulder to shoulder of the lower pins', span],
      ['Lower pin from step to tip', tip],
      ['Lower pin from step to retaining hole', hole],
      ['Upper pin above the lower pins', height],
      ['Upper pin behind the lower pins', setback],
    ]),
    note: 'Lower pins dimensioned from their steps, the upper pin from the lower ones.',
  };
}

/** For place only, where a figure was not given [mm]. */
const forPlace = { tip: 60, diameter: 22, mastWidth: 70 } as const;

/** Pins that stay where they are, with nothing asked of them. */
function placedPins(figure: (key: string) => Shown | null, span: Shown, sign: 1 | -1): PinPicture {
  const seats: PinPicture['now'] = {
    span: span.value,
    tip: valueOr(figure('standOut'), forPlace.tip),
    hole: figure('shoulderToHole')?.value ?? null,
    height: figure('mastHeight')?.value ?? null,
    setback: valueOr(figure('mastSetback'), 0),
  };
  return {
    sign,
    now: seats,
    wanted: seats,
    targets: new Map(),
    lowerDiameter: valueOr(figure('lowerPinDiameter'), forPlace.diameter),
    upperDiameter: valueOr(figure('upperPinDiameter'), forPlace.diameter),
    mastWidth: valueOr(figure('clevisOuterWidth'), forPlace.mastWidth),
    hooks: null,
    topHookWidth: 0,
    zones: new Map(),
  };
}
