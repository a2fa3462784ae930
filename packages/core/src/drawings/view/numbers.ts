import { balloonsOf } from '../balloonsOf.ts';
import type { CheckId, Finding } from '../../engine/findings/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Balloon, Item, Point } from '../scene.ts';
import { isOnStage, type Stage } from '../stage.ts';

/** Which part of the view a note is about; what is no matter of pins and hooks has its balloons in other views. */
function anchorOf(id: CheckId): 'upper' | 'lower' | null {
  if (!/^(front|rear)\./.test(id)) return null;
  if (/\.(upperPin|clevis|mast|topLink)$/.test(id)) return 'upper';
  return id === 'rear.room' || id === 'rear.receiver' ? null : 'lower';
}

/** Distance of neighbouring balloons [paper mm]. */
const pitch = 6.6;
const mostAtOnePlace = 3;

/** Balloons with the numbers of the notes: in a row above the upper pin, in a column beside the right lower pin. */
export function numbers(stage: Stage, pen: Pen, half: number, isUpperLeft: boolean): Item[] {
  const all = [...balloonsOf(stage.answer)].flatMap(([id, number]) => {
    const finding = stage.answer.findings.find((one) => one.id === id);
    return finding === undefined || !isOnStage(stage, finding) ? [] : [{ finding, number }];
  });
  const at = (place: 'upper' | 'lower') =>
    all.filter(({ finding }) => anchorOf(finding.id) === place).slice(0, mostAtOnePlace);
  return [...upperRow(stage, pen, at('upper'), isUpperLeft ? -1 : 1), ...lowerColumn(stage, pen, at('lower'), half)];
}

type Numbered = readonly { readonly finding: Finding; readonly number: number }[];

function upperRow({ upper }: Stage, pen: Pen, notes: Numbered, side: 1 | -1): Item[] {
  if (!upper.exists) return [];
  const reach = side * (upper.clevisOuter.value / 2 + 10);
  const z = Math.max(upper.distance.value, upper.hook?.distance.value ?? 0) + Math.max(34, onPaper(pen, 8.5));
  return notes.map(({ finding, number }, i) => {
    const y = reach + side * onPaper(pen, 7 + i * pitch);
    return balloon([y, z], number, i === 0 ? [reach, upper.distance.value] : null, finding);
  });
}

function lowerColumn(stage: Stage, pen: Pen, notes: Numbered, half: number): Item[] {
  const y = half - onPaper(pen, 0.6);
  const target = targetOf(stage);
  return notes.map(({ finding, number }, i) => {
    const z = target[1] + onPaper(pen, 13 + i * pitch);
    return balloon([y, z], number, i === 0 ? target : null, finding);
  });
}

function targetOf({ pins, seats, frame, bar }: Stage): Point {
  if (frame !== null) return [frame.receiverWidth.value / 2 + 12, 20];
  if (bar !== null) return [bar.span.value / 2 - 4, bar.diameter.value / 2 + 20];
  const reach =
    pins.sign === 1
      ? pins.shoulders.value / 2 + pins.standOut.value - 5
      : (seats.centres.value + seats.width.value) / 2 - 4;
  return [reach, pins.diameter.value / 2 - 4];
}

function balloon(at: Point, number: number, leaderTo: Point | null, { id, status }: Finding): Balloon {
  return { kind: 'balloon', at, number, leaderTo, filled: status === 'fail' || status === 'cured', finding: id };
}
