import type { CheckId } from '../../src/engine/findings/index.ts';
import { gapBetween, gapToDisc, middle, turned, type Outline, type Point } from '../../src/engine/geometry/index.ts';
import { liftLimits } from '../../src/engine/lift/limits.ts';
import { throughLift } from '../../src/engine/lift/throughLift.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { holdsUpper } from '../../src/engine/lift/question.ts';
import type { OutlineRecord } from '../../src/records/index.ts';
import { openPlain } from '../properties/plainRun.ts';
import { implementPins, type Sources } from './pinTruth.ts';
import { lazily, less, pointOf, type Margins, type TrueFigure } from './truth.ts';

type Drawn = OutlineRecord<string>;
type Shift = readonly [across: TrueFigure, back: TrueFigure, up: TrueFigure];

/**
 * Margins of the room about hooks and of what is carried against the tractor: outlines put where they are at many heights,
 * each shifted as a whole within its drawn tolerance. Gaps of outlines are the engine’s own.
 */
export function outlineMargins(sources: Sources, ids: readonly CheckId[]): Margins {
  const told = [
    ...(ids.includes('rear.room') ? [['rear.room', roomMargin(sources)] as const] : []),
    ...(ids.includes('contact.machines') ? [['contact.machines', contactMargin(sources)] as const] : []),
  ];
  return {
    ids: told.map(([id]) => id),
    look: (truth) => ({ margins: told.map(([id, margin]) => [id, margin(truth)] as const), closes: Infinity }),
  };
}

/** A shift of an outline by no more than its tolerance in any direction: a corner of a cube in that ball. */
function shiftOf({ unknowns }: Sources, plusMinusMm = 0): Shift {
  const most = plusMinusMm / Math.sqrt(3);
  const one = (): TrueFigure => (most === 0 ? () => 0 : pointOf(unknowns.beside({ low: -most, high: most })));
  return [one(), one(), one()];
}

function moved(outline: Outline, by: readonly [number, number]): Outline {
  return outline.map(([a, b]) => [a + by[0], b + by[1]]);
}

function roomMargin(sources: Sources): TrueFigure {
  const { question, figures } = sources;
  const { hold, setup } = question.joint;
  const later = (path: string): TrueFigure => lazily(() => figures.of(path));
  const lower = less(later('implement.freeRoomLower'), later('coupler.roomNeededLower'));
  const upper = less(later('implement.freeRoomUpper'), later('coupler.roomNeededUpper'));
  const gauge: TrueFigure = hold === 'uFrame' ? (truth) => Math.min(lower(truth), upper(truth)) : lower;
  const bodies = (setup.implement.outlines ?? []).map((drawn) => ({
    drawn,
    shift: shiftOf(sources, drawn.plusMinusMm),
  }));
  const hooks = (setup.coupler?.outlines ?? []).map((drawn) => ({ drawn, shift: shiftOf(sources, drawn.plusMinusMm) }));
  if (bodies.length === 0 || hooks.length === 0) return gauge;
  const [behind, rise] = [later('coupler.hookBehind'), later('coupler.hookRise')];
  const turns = turnsOf(sources);
  const isGauged = question.ledger.given('implement.freeRoomLower');
  return (truth) => {
    const seat = [behind(truth), rise(truth)] as const;
    const at = turns(truth);
    const gaps = bodies.flatMap((body) => {
      const reach = farthest([...(body.drawn.rear ?? []), ...(body.drawn.side ?? [])], body.drawn.side ?? []);
      const travel = (i: number, k: number): number => reach * Math.abs((at[i] as number) - (at[k] as number));
      return hooks.map((hook) =>
        leastOf(at.length, (i) => gapAt(truth, body, hook, { seat, turn: at[i] as number }), travel),
      );
    });
    return Math.min(...gaps, ...(isGauged ? [gauge(truth)] : []));
  };
}

/** No corner of a part is farther from its pins than this: the greatest height in any view, and the greatest distance behind. */
function farthest(heights: Outline, side: Outline): number {
  const most = (outline: Outline, axis: 0 | 1): number =>
    Math.max(0, ...outline.map((corner) => Math.abs(corner[axis])));
  return Math.hypot(most(heights, 1), most(side, 0));
}

interface Placed {
  readonly drawn: Drawn;
  readonly shift: Shift;
}

/** Two parts clear each other if they do so in either view. */
function gapAt(
  truth: Reading,
  body: Placed,
  hook: Placed,
  { seat: [behind, rise], turn }: { readonly seat: readonly [number, number]; readonly turn: number },
): number {
  const [ay, ax, az] = body.shift.map((by) => by(truth)) as [number, number, number];
  const [by, bx, bz] = hook.shift.map((one) => one(truth)) as [number, number, number];
  const views: number[] = [];
  if (body.drawn.rear !== undefined && hook.drawn.rear !== undefined) {
    const placed = moved(seenFromBehind(body.drawn.rear, body.drawn.side, turn), [ay, rise + az]);
    views.push(gapBetween(placed, moved(hook.drawn.rear, [by, bz])));
  }
  if (body.drawn.side !== undefined && hook.drawn.side !== undefined) {
    const placed = moved(turned(body.drawn.side, turn), [behind + ax, rise + az]);
    views.push(gapBetween(placed, moved(hook.drawn.side, [bx, bz])));
  }
  return views.length === 0 ? Infinity : Math.max(...views);
}

/**
 * A part as it is seen from behind once it is turned: all that both of its views leave of it, each point of it where its
 * place behind the pins takes it. What is drawn from behind only is taken to stand at the pins.
 */
function seenFromBehind(rear: Outline, side: Outline | undefined, turn: number): Outline {
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)];
  if (side === undefined) return rear.map(([y, z]) => [y, z * cosine]);
  const points = [...rear, ...side].flatMap(([, z]) => {
    const [across, along] = [sliceAt(rear, z), sliceAt(side, z)];
    if (across === null || along === null) return [];
    return across.flatMap((y) => along.map((x): Point => [y, z * cosine + x * sine]));
  });
  return hullOf(points);
}

/** Where a convex outline begins and ends at a height; null above and below it. */
function sliceAt(outline: Outline, height: number): readonly [number, number] | null {
  const places = outline.flatMap(([a, z], i) => {
    const [b, other] = outline[(i + 1) % outline.length] as Point;
    if (z === height) return [a];
    if ((z - height) * (other - height) >= 0) return [];
    return [a + ((height - z) / (other - z)) * (b - a)];
  });
  return places.length === 0 ? null : [Math.min(...places), Math.max(...places)];
}

/** The corners of the smallest convex outline about some points, in order. */
function hullOf(points: readonly Point[]): Outline {
  const sorted = [...points].sort(([ay, az], [by, bz]) => ay - by || az - bz);
  const half = (along: readonly Point[]): Point[] => {
    const corners: Point[] = [];
    for (const point of along) {
      while (corners.length > 1 && turnsRight(corners.at(-2) as Point, corners.at(-1) as Point, point)) corners.pop();
      corners.push(point);
    }
    return corners.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function turnsRight([ay, az]: Point, [by, bz]: Point, [cy, cz]: Point): boolean {
  return (by - ay) * (cz - az) - (bz - az) * (cy - ay) <= 0;
}

/** How the implement is turned against the hooks, at every height. */
function turnsOf(sources: Sources): (truth: Reading) => readonly number[] {
  const { question, figures } = sources;
  const { hold } = question.joint;
  if (hold === 'uFrame') {
    const pins = implementPins(sources);
    const [height, behind] = ['topHookHeight', 'topHookBehind'].map((key) =>
      lazily(() => figures.of(`coupler.${key}`)),
    ) as [TrueFigure, TrueFigure];
    return (truth) => [
      Math.atan2(height(truth), behind(truth)) - Math.atan2(pins.mastHeight(truth), pins.mastSetback(truth)),
    ];
  }
  const { lift } = question;
  if (!lift.structure.linkage || !holdsUpper(lift)) return () => [0];
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  const plain = openPlain(formula, [steps.swing], (name) => lift.leaves.exact.get(name), sources.places);
  return (truth) => {
    plain.run(truth);
    return [...plain.values(steps.swing)];
  };
}

/** Something of the tractor that what is carried can strike, on one side or on either. */
interface Obstacle {
  readonly gapTo: (truth: Reading, outline: Outline) => number;
  readonly across: (truth: Reading) => readonly (readonly [number, number] | null)[];
}

function contactMargin(sources: Sources): TrueFigure {
  const { lift, joint } = sources.question;
  const { formula, steps } = throughLift(lift.structure, 'stroke');
  const { pins, pitch, body } = steps;
  const isFramed = lift.structure.held === 'byFrame';
  const frames = [
    { outlines: joint.setup.implement.outlines ?? [], place: [pins.x, pins.z, pitch] as const },
    {
      outlines: isFramed ? (joint.setup.coupler?.outlines ?? []) : [],
      place: [body.origin.x, body.origin.z, body.pitch] as const,
    },
  ].filter(({ outlines }) => outlines.length > 0);
  const wanted = frames.flatMap(({ place }) => place);
  const plain = openPlain(formula, wanted, (name) => lift.leaves.exact.get(name), sources.places);
  const parts = frames.flatMap(({ outlines, place }) =>
    outlines
      .filter(({ side }) => side !== undefined)
      .map((drawn) => ({ drawn, place, shift: shiftOf(sources, drawn.plusMinusMm) })),
  );
  const obstacles = [...drawnObstacles(sources), ...tyres(sources)];
  const play = joint.tractor('sidePlay');
  return (truth) => {
    plain.run(truth);
    const gaps = parts.map(({ drawn, place: [x, z, pitch], shift }) => {
      const [ay, ax, az] = shift.map((by) => by(truth)) as [number, number, number];
      const moving: Moving = {
        side: moved(drawn.side as Outline, [ax, az]),
        ...{ x: plain.values(x), z: plain.values(z), pitch: plain.values(pitch) },
      };
      const across = drawn.rear === undefined ? null : extentOf(drawn.rear, ay);
      return obstacles.map((obstacle) => {
        const least = leastAlong(moving, (outline) => obstacle.gapTo(truth, outline));
        const besides = obstacle.across(truth).map((other) => besideOf(across, other, middle(play(truth))));
        return Math.max(least, Math.min(...besides));
      });
    });
    return Math.min(...gaps.flat()) - liftLimits.machineGap;
  };
}

/** An outline and where it is at every height. */
interface Moving {
  readonly side: Outline;
  readonly x: Float64Array;
  readonly z: Float64Array;
  readonly pitch: Float64Array;
}

/** Every so manieth place is looked at first. */
const stride = 8;

/** The least of a gap over all places; one that travels too little from a place that was looked at to come below it is passed over. */
function leastOf(count: number, gapAt: (i: number) => number, travel: (i: number, k: number) => number): number {
  const first = new Map<number, number>();
  for (let i = 0; i < count; i += stride) first.set(i, gapAt(i));
  let least = Math.min(...first.values());
  for (let i = 0; i < count; i += 1) {
    const near = Math.min(Math.round(i / stride) * stride, stride * (first.size - 1));
    if (i !== near && (first.get(near) as number) - travel(i, near) < least) least = Math.min(least, gapAt(i));
  }
  return least;
}

/** The least gap over all heights. */
function leastAlong({ side, x, z, pitch }: Moving, gapTo: (outline: Outline) => number): number {
  const reach = farthest(side, side);
  const at = (values: Float64Array, i: number): number => values[values.length === 1 ? 0 : i] as number;
  const apart = (values: Float64Array, i: number, k: number): number => Math.abs(at(values, i) - at(values, k));
  return leastOf(
    Math.max(x.length, z.length, pitch.length),
    (i) => gapTo(moved(turned(side, at(pitch, i)), [at(x, i), at(z, i)])),
    (i, k) => apart(x, i, k) + apart(z, i, k) + reach * apart(pitch, i, k),
  );
}

function extentOf(rear: Outline, by: number): readonly [number, number] {
  const ys = rear.map(([y]) => y + by);
  return [Math.min(...ys), Math.max(...ys)];
}

/** How far apart two parts are sideways once one is pushed over by the side play; none where one of them is not drawn so. */
function besideOf(
  part: readonly [number, number] | null,
  other: readonly [number, number] | null,
  sway: number,
): number {
  if (part === null || other === null) return -Infinity;
  return Math.max(other[0] - part[1], part[0] - other[1]) - sway;
}

function drawnObstacles(sources: Sources): Obstacle[] {
  return (sources.question.joint.setup.tractor.outlines ?? []).flatMap(({ side, rear, plusMinusMm }) => {
    if (side === undefined) return [];
    const [y, x, z] = shiftOf(sources, plusMinusMm);
    return [
      {
        gapTo: (truth: Reading, outline: Outline) => gapBetween(outline, moved(side, [x(truth), z(truth)])),
        across: (truth: Reading) => [rear === undefined ? null : extentOf(rear, y(truth))],
      },
    ];
  });
}

/** Tyres as discs that stand on the ground below the axle. */
function tyres({ question, figures }: Sources): Obstacle[] {
  if (!['tyreRadius', 'tyreInnerSpan'].every((key) => question.ledger.given(`tractor.${key}`))) return [];
  const [radius, span] = ['tyreRadius', 'tyreInnerSpan'].map((key) => lazily(() => figures.of(`tractor.${key}`))) as [
    TrueFigure,
    TrueFigure,
  ];
  const gapTo = (truth: Reading, outline: Outline): number => {
    const size = radius(truth);
    return gapToDisc(outline, [0, size], size);
  };
  const across = (truth: Reading): readonly (readonly [number, number])[] => [
    [span(truth) / 2, Infinity],
    [-Infinity, -span(truth) / 2],
  ];
  return [{ gapTo, across }];
}
