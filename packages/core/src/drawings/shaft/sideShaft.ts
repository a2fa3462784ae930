import type { Station } from '../../engine/lift/index.ts';
import type { ShaftStation } from '../../engine/shaft/index.ts';
import { printMarginSize, type UnitSystem } from '../../units/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Circle, Dimension, Item, LineRole, Point } from '../scene.ts';
import { body, hatch, line, rectangle, run } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { placed, poseAlong, poseAt, type Pose } from '../side/pose.ts';
import type { SideStage } from '../side/sideStage.ts';
import { drivenOf, type Driven } from './driven.ts';
import { faultsAt, isInQuestion, type Faults } from './faults.ts';
import { halvesOf, type Halves } from './halves.ts';
import { angleText, lengthText } from './shaftWords.ts';
import { cross, guardItems, halvesItems, inView, sizes, splinedEnd } from './parts.ts';

/** Room over a side view for what is said of its shaft [paper mm]. */
export const shaftLabelRoom = 7;

/** One height of a shaft in a side view. */
interface Seen {
  readonly driven: Driven;
  readonly station: ShaftStation;
  readonly faults: Faults;
  readonly pen: Pen;
}

/** A side view’s lettering of its shaft: where its label stands, over everything [scene mm]. */
export interface ShaftLettering {
  readonly top: number;
  readonly left: number;
  readonly right: number;
}

/** The drive shaft from the side at one height: stub, joints, tubes with their true overlap, guard. */
export function sideShaft(stage: SideStage, index: number, pen: Pen, letters: ShaftLettering | null): Item[] {
  const driven = drivenOf(stage.answer);
  const station = driven?.shaft.stations[index];
  if (driven === null || station === undefined) return [];
  const seen: Seen = { driven, station, faults: faultsAt(driven, station), pen };
  const pose = poseAlong(station.tractorCross, station.implementCross);
  const halves = sideHalves(station);
  return [
    ...splines(seen),
    ...(halves === null ? plainLine(seen) : tubes(seen, pose, halves)),
    ...crosses(seen),
    ...(letters === null ? [] : [...angles(seen), ...(halves === null ? [] : told(seen, pose, halves, letters))]),
  ];
}

/** The halves as the side view shows them: as much overlap and as much left as there is, though the shaft runs a little aside. */
function sideHalves({ tractorCross, implementCross, overlap, toBottom }: ShaftStation): Halves | null {
  if (overlap === null || toBottom === null) return null;
  const length = Math.hypot(implementCross[0] - tractorCross[0], implementCross[1] - tractorCross[1]);
  return halvesOf({ length, overlap, toBottom });
}

/** The line of a shaft: heavy where something of it is in question. */
function roleOf({ driven }: Seen): LineRole {
  return isInQuestion(driven.answer, 'shaft.bottoming', 'shaft.overlap', 'shaft.apart') ? 'heavy' : 'thin';
}

/** Stub and input shaft with their yokes, each along its own axis. */
function splines(seen: Seen): Item[] {
  const { station } = seen;
  const role = roleOf(seen);
  return [
    ...inView(poseAt(station.tractorCross, 0), splinedEnd('thin', role)),
    ...inView(poseAt(station.implementCross, station.slope + 180), splinedEnd('thin', role)),
  ];
}

function plainLine({ station }: Seen): Item[] {
  return [line('heavy', station.tractorCross, station.implementCross)];
}

function tubes(seen: Seen, pose: Pose, halves: Halves): Item[] {
  const { driven, faults } = seen;
  const { guard } = driven.shaft;
  const look = { role: roleOf(seen), isShort: faults.short || faults.apart, bottoms: faults.bottoms };
  const radii = guard === null ? null : { tube: guard.tube / 2, cone: guard.cone / 2, coneLength: guard.coneLength };
  return inView(pose, [...halvesItems(halves, look), ...(radii === null ? [] : guardItems(radii, halves.length))]);
}

/** Both crosses, and the points that stub and input shaft were measured at; a joint bent too far in the accent. */
function crosses({ station, faults }: Seen): Item[] {
  const dot = (point: 'stub' | 'input', centre: Point): Circle => ({
    kind: 'circle',
    role: 'thin',
    centre,
    radius: 5,
    fill: 'line',
    point,
  });
  const joint = (point: 'tractorCross' | 'implementCross', isOver: boolean): Item[] =>
    cross(isOver ? 'misfit' : 'heavy', station[point]).map((item) => ({ ...(item as Circle), point }));
  return [
    ...joint('tractorCross', faults.over.tractor !== null),
    ...joint('implementCross', faults.over.implement !== null),
    dot('stub', station.stub),
    dot('input', station.input),
  ];
}

/** Radius of the arc of an angle [paper mm]. */
const arcRadius = 9;

/** Both angles of the joints: each an arc from its axis to the shaft, and a number on the side away from the shaft. */
function angles(seen: Seen): Item[] {
  const { station } = seen;
  const { tractorCross: front, implementCross: rear, slope } = station;
  const toRear = bearing(front, rear);
  return [
    ...angleAt(seen, 'tractor', front, [0, toRear]),
    ...angleAt(seen, 'implement', rear, [slope + 180, toRear + 180]),
  ];
}

function bearing(from: Point, to: Point): number {
  return (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
}

function angleAt(
  seen: Seen,
  end: 'tractor' | 'implement',
  at: Point,
  [axis, shaft]: readonly [number, number],
): Item[] {
  const { pen, station, faults } = seen;
  const isOver = faults.over[end] !== null;
  const role: LineRole = isOver ? 'misfit' : 'dimension';
  const radius = Math.min(onPaper(pen, arcRadius), 0.42 * station.shortest);
  const pose = poseAt(at, axis);
  const turn = ((shaft - axis + 540) % 360) - 180;
  const steps = Array.from({ length: 9 }, (_, i): Point => placed(poseAt(at, axis + (turn * i) / 8), [radius, 0]));
  const angle = end === 'tractor' ? station.tractorAngle : station.implementAngle;
  const size = isOver ? pen.sheet.letters.dimension : pen.sheet.letters.note;
  const beyond = placed(pose, [-sizes.stub - onPaper(pen, 1.4), 0]);
  return [
    line('centre', at, placed(pose, [radius * 1.2, 0])),
    run(role, steps),
    lettering([beyond[0], beyond[1] - onPaper(pen, size * 0.34)], angleText(angle), size, {
      anchor: end === 'tractor' ? 'end' : 'start',
      ...(isOver ? { tone: 'accent' as const, weight: 600 as const } : {}),
    }),
  ];
}

/** The length that matters most along the shaft at this height. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly size: number;
  readonly words: string;
  readonly isBad: boolean;
}

function spanOf({ station, faults }: Seen, { outer, inner }: Halves): Span {
  const overlap = station.overlap ?? 0;
  const toBottom = station.toBottom ?? 0;
  if (faults.apart) return { from: outer[1], to: inner[0], size: overlap, words: 'apart', isBad: true };
  if (faults.bottoms) return { from: inner[1], to: outer[1], size: toBottom, words: 'too long', isBad: true };
  if (faults.tight) return { from: outer[1], to: inner[1], size: toBottom, words: 'to bottom', isBad: true };
  return { from: inner[0], to: outer[1], size: overlap, words: 'overlap', isBad: faults.short };
}

/** How far off the shaft its dimension line lies [paper mm]. */
const dimensionOff = 4;

/** That length dimensioned along the shaft, with its label over the picture and a leader between them. */
function told(seen: Seen, pose: Pose, halves: Halves, letters: ShaftLettering): Item[] {
  const { pen } = seen;
  const span = spanOf(seen, halves);
  const [from, to] = [placed(pose, [span.from, 0]), placed(pose, [span.to, 0])];
  const along: Point = [pose.cos, pose.sin];
  const off = onPaper(pen, dimensionOff) + sizes.outer;
  const role = span.isBad ? 'misfit' : 'dimension';
  const dimension: Dimension = {
    kind: 'dimension',
    role,
    from,
    to,
    along,
    at: from[0] * along[1] - from[1] * along[0] - off,
    label: null,
    sides: 1,
    mmPerUnit: 1,
  };
  const foot = placed(pose, [(span.from + span.to) / 2, off]);
  return [dimension, ...label(seen, span, foot, letters)];
}

function label({ pen }: Seen, span: Span, foot: Point, { top, left, right }: ShaftLettering): Item[] {
  const size = pen.sheet.letters.dimension;
  const { text, second } = spanText(span, pen.system);
  const x = Math.max(left + onPaper(pen, 18), Math.min(right - onPaper(pen, 22), foot[0]));
  return [
    line('dimension', [x, top - onPaper(pen, 0.8)], foot),
    lettering([x, top], text, size, {
      anchor: 'middle',
      weight: 600,
      tone: span.isBad ? 'accent' : 'ink',
      second: { text: second, size: pen.sheet.letters.second },
    }),
  ];
}

function spanText({ size, words, isBad }: Span, system: UnitSystem): { text: string; second: string } {
  if (isBad && size < 0) return inTwo(printMarginSize(size, 'length', system), words);
  return inTwo(lengthText(size, system, 'down'), words);
}

/** A length in both units as a label and its second. */
function inTwo(length: string, words: string): { text: string; second: string } {
  const [text = '', second = ''] = length.split(' (');
  return { text: `${text} ${words}`, second: second.replace(/ (in|mm)\)$/, '') };
}

/** Thickness of what bounds an opening, for place only [mm]. */
const bar = 32;

/** What bounds the opening of the coupler from above and below, cut. */
export function windowEdges({ shaft }: SideStage, { origin, framePitch }: Station): Item[] {
  const window = shaft?.window ?? null;
  if (window === null) return [];
  const { behind, top, bottom } = window;
  const cut = (low: number): Item[] => {
    const corners = rectangle([behind - bar / 2, low], [behind + bar / 2, low + bar]);
    return [body('thin', corners), hatch('thin', corners)];
  };
  return inView(poseAt(origin, framePitch), [...cut(top), ...(bottom === null ? [] : cut(bottom - bar))]);
}
