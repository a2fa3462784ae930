import { cropped } from '../../parts/crop.ts';
import type { Bounds, Item, LineRole, Point, Stroke } from '../../scene.ts';
import { wheelBallast } from '../../balance/wheelBallast.ts';
import { outline, run } from '../../strokes.ts';
import type { SideStage } from '../sideStage.ts';
import { barBetween } from './bars.ts';

/**
 * The tractor behind its linkage, cropped to the picture: outlines where they were given, else a wheel of its true radius
 * and a housing for place only. A wheel that nobody measured is dashed. `jog` is the size of the break line's jog [mm].
 */
export function tractorBehind(stage: SideStage, box: Bounds, jog: number): Item[] {
  const given = (stage.setup.tractor.outlines ?? []).flatMap(({ side }) =>
    side === undefined ? [] : [outline('ghost', side)],
  );
  const has = (part: string): boolean =>
    (stage.setup.tractor.outlines ?? []).some((one) => one.part === part && one.side !== undefined);
  const strokes = [
    ...(has('tyre') ? [] : wheel(stage)),
    ...(has('fender') || has('tyre') ? [] : [fender(stage)]),
    ...(has('body') ? [] : [housing(stage, box)]),
    ...given,
    ...wheelBallast(stage.setup, stage.answer, [0, stage.tyre.value], stage.tyre.value),
  ];
  return [...strokes.flatMap((stroke) => cropped(stroke, box)), ...pivots(stage, box), breakOff(stage, box, jog)];
}

function wheel({ tyre }: SideStage): Stroke[] {
  return wheelAt(tyre.standing === 'measured' ? 'ghost' : 'hidden', [0, tyre.value], tyre.value);
}

/** A rear wheel from the side: tread, rim and hub; only its radius is a true one. */
export function wheelAt(role: LineRole, centre: Point, radius: number): Stroke[] {
  return [1, 0.62, 0.56, 0.17].map((share) => ring(role, centre, radius * share));
}

function fender({ tyre }: SideStage): Stroke {
  const radius = tyre.value * 1.08;
  const points = Array.from({ length: 30 }, (_, i): Point => {
    const angle = ((38 + i * 4) * Math.PI) / 180;
    return [radius * Math.cos(angle), tyre.value + radius * Math.sin(angle)];
  });
  return run('ghost', points);
}

function ring(role: LineRole, [x, z]: Point, radius: number): Stroke {
  const points = Array.from({ length: 72 }, (_, i): Point => {
    const angle = (i * Math.PI) / 36;
    return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)];
  });
  return outline(role, points);
}

/** Top, bottom and rear face of the housing that the links hang on. */
function housingOf({ sweep: { topPivot, lowerPivot, armPivot } }: SideStage): Bounds {
  return {
    left: -1e4,
    right: topPivot[0] - 42,
    top: Math.max(topPivot[1], armPivot?.[1] ?? 0) + 74,
    bottom: lowerPivot[1] - 78,
  };
}

function housing(stage: SideStage, box: Bounds): Stroke {
  const { right, top, bottom } = housingOf(stage);
  return run('ghost', [
    [box.left, top],
    [right - 46, top],
    [right, top - 46],
    [right, bottom + 60],
    [right - 60, bottom],
    [box.left, bottom],
  ]);
}

/** Lugs that carry pivots which stand behind the housing. */
function pivots(stage: SideStage, box: Bounds): Item[] {
  const { right } = housingOf(stage);
  const { topPivot, lowerPivot } = stage.sweep;
  return [topPivot, lowerPivot]
    .filter(([x]) => x > right && right > box.left)
    .flatMap((pivot) => barBetween('ghost', [right, pivot[1]], pivot, { half: 24, eyes: [24, 32] }).slice(0, 1));
}

/** The tractor breaks off at the left edge of the picture: a line with a jog in the middle. */
function breakOff(stage: SideStage, { left, top: edge }: Bounds, jog: number): Stroke {
  const { top, bottom } = housingOf(stage);
  const isWheelCut = stage.tyre.value > -left;
  const [low, high] = isWheelCut ? [0, Math.min(edge, Math.max(top, stage.tyre.value * 2))] : [bottom, top];
  const middle = (low + high) / 2;
  return run('ghost', [
    [left, low],
    [left, middle - 2 * jog],
    [left - jog, middle - jog],
    [left + jog, middle + jog],
    [left, middle + 2 * jog],
    [left, high],
  ]);
}
