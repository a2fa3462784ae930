import type { Station } from '../../engine/lift/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Dimension, Item, LineRole, Point } from '../scene.ts';
import { line, run } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { sideShaft, windowEdges, type ShaftLettering } from '../shaft/sideShaft.ts';
import type { Extent } from './extent.ts';
import type { HeightMark } from './heights.ts';
import { couplerPart, type RigidPart } from './parts/coupler.ts';
import { ground } from './parts/ground.ts';
import { cutAtGround, implementPart } from './parts/implement.ts';
import { armAndRod, at, ballPath, lowerLink, otherPositions, topLink } from './parts/linkage.ts';
import { loadMark } from './parts/loadMark.ts';
import { solidPin } from './parts/bars.ts';
import { tractorBehind } from './parts/tractor.ts';
import { placed, placedItem, poseAt } from './pose.ts';
import { shortText, pitchText } from './readings.ts';
import { groundDepth } from './sideLayout.ts';
import { stationAt, type SideStage } from './sideStage.ts';
import { isShortAt } from './worst.ts';

/** Tractor, coupler and implement from the side: what stands still, and what moves with the lift. */
interface Picture {
  readonly still: readonly Item[];
  readonly moving: (station: number) => readonly Item[];
}

/** Where a picture is drawn: its pen, its box, and up to where the level of the balls is carried. */
interface Setting {
  readonly pen: Pen;
  readonly box: Bounds;
  readonly extent: Extent;
  readonly marks: readonly HeightMark[];
  readonly levelTo: number | null;
  /** Pitch and ground clearance are written in the picture; else they stand under it. */
  readonly isLettered: boolean;
  /** Where the shaft is told of, where it is. */
  readonly shaftLetters?: ShaftLettering;
}

/** Opens the picture of a lift; parts that keep their shape are made once. */
export function openPicture(stage: SideStage, setting: Setting): Picture {
  const { pen, box, marks } = setting;
  const coupler = couplerPart(stage);
  const implement = implementPart(stage);
  const depth = onPaper(pen, groundDepth);
  const markRadius = setting.isLettered ? 2.2 : 1.7;
  return {
    still: [
      ...tractorBehind(stage, box, onPaper(pen, 1.3)),
      ...ground(box, depth),
      ballPath(stage),
      ...otherPositions(stage, marks),
    ],
    moving: (index) => {
      const station = stationAt(stage, index);
      return [
        ...level(station, setting),
        ...buried(implement, station, box),
        ...(coupler === null ? [] : rigid(coupler, station)),
        ...topLink(stage, station),
        ...armAndRod(stage, station),
        ...lowerLink(stage, station),
        ...implementPins(stage, station),
        ...windowEdges(stage, station),
        ...sideShaft(stage, index, pen, setting.shaftLetters ?? null),
        ...(station.closes ? pitchAngle(station, setting) : []),
        ...(setting.isLettered ? clearance(stage, station, setting) : []),
        ...(stage.isCentreKnown ? load(stage, station, onPaper(pen, markRadius)) : []),
      ];
    },
  };
}

/** The centre of all that is lifted, in the accent where the lift is not proven to manage the load. */
function load({ sweep }: SideStage, station: Station, radius: number): Item[] {
  return loadMark(isShortAt(sweep, station) ? 'misfit' : 'thin', station.centre, radius);
}

function rigid({ items, poseAt }: RigidPart, station: Station): Item[] {
  const pose = poseAt(station);
  return items.map((item) => placedItem(pose, item));
}

/** A part that may dig in: what is under the ground is dashed. */
function buried(part: RigidPart, station: Station, floor: Bounds): Item[] {
  return rigid(part, station).flatMap((item): Item[] => (item.kind === 'stroke' ? cutAtGround(item, floor) : [item]));
}

function implementPins({ pin, upperPin }: SideStage, { pins, mast }: Station): Item[] {
  const role = (standing: string): LineRole => (standing === 'unknown' ? 'thin' : 'heavy');
  return [
    at('pins', solidPin(role(pin.standing), pins, pin.value / 2)),
    at('mast', solidPin(role(upperPin.standing), mast, upperPin.value / 2)),
  ];
}

/** The level of the balls, carried to a ruler or a plot at the right. */
function level({ ball }: Station, { levelTo }: Setting): Item[] {
  return levelTo === null ? [] : [line('centre', ball, [levelTo, ball[1]])];
}

/** The implement's own level, and where it is lettered the angle between that and the true one behind it. */
function pitchAngle(station: Station, { pen, extent, isLettered }: Setting): Item[] {
  const pose = poseAt(station.pins, station.pitch);
  const tail = onPaper(pen, 2);
  const radius = extent.reach + (isLettered ? onPaper(pen, 3) : 0);
  const axis = line('centre', placed(pose, [-40, 0]), placed(pose, [radius + tail, 0]));
  if (!isLettered) return [axis];
  const [x, z] = station.pins;
  const { dimension: size } = pen.sheet.letters;
  const rise = radius * Math.sin((station.pitch * Math.PI) / 360);
  const clear = onPaper(pen, size * 0.34 + 1);
  const middle = station.pitch < 0 ? Math.min(rise, -clear) : Math.max(rise, clear);
  const label: Point = [x + radius + tail + onPaper(pen, 1.2), z + middle - onPaper(pen, size * 0.34)];
  return [
    axis,
    line('dimension', [x + extent.reach + onPaper(pen, 1), z], [x + radius + tail, z]),
    run('dimension', arcOf(station.pins, radius, station.pitch)),
    lettering(label, pitchText(station.pitch), size),
  ];
}

function arcOf([x, z]: Point, radius: number, degrees: number): Point[] {
  return Array.from({ length: 9 }, (_, i): Point => {
    const angle = (degrees * i * Math.PI) / 8 / 180;
    return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)];
  });
}

/** Least gap in which a ground clearance is dimensioned [paper mm]. */
const leastGap = 6;

/** The ground clearance, where there is room for it under the lowest part. */
function clearance(stage: SideStage, station: Station, { pen, box, extent }: Setting): Item[] {
  const gap = station.clearance;
  if (gap === null || stage.lowest === null || gap < onPaper(pen, leastGap)) return [];
  const [x] = placed(poseAt(station.pins, station.pitch), stage.lowest);
  const { text, second } = shortText(gap, pen.system);
  const { letters } = pen.sheet;
  const wide = onPaper(pen, widthOf(text, letters.dimension) + widthOf(second, letters.second) + letters.second + 2);
  const isAtEdge = x + wide > Math.max(box.right, extent.right + onPaper(pen, 8));
  const beside = onPaper(pen, isAtEdge ? -1.4 : 1.4);
  const label = lettering([x + beside, gap / 2 - onPaper(pen, letters.dimension * 0.34)], text, letters.dimension, {
    second: { text: second, size: letters.second },
    anchor: isAtEdge ? 'end' : 'start',
  });
  const dimension: Dimension = {
    kind: 'dimension',
    role: 'dimension',
    from: [x, 0],
    to: [x, gap],
    along: [0, 1],
    at: x,
    label,
    sides: 1,
    mmPerUnit: 1,
  };
  return [dimension];
}
