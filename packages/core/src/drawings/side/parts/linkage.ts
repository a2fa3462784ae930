import type { Station } from '../../../engine/lift/index.ts';
import type { Circle, Item, LineRole, Point, PointName } from '../../scene.ts';
import { lineOf, shown } from '../../shown.ts';
import { line, run } from '../../strokes.ts';
import { isReached, type HeightMark } from '../heights.ts';
import { placed, poseAlong } from '../pose.ts';
import type { SideStage } from '../sideStage.ts';
import { barBetween, disc, plank, solidPin } from './bars.ts';

/** Thickness of the parts of a linkage, for place only [mm]. */
const sizes = {
  lowerLink: { half: 17, eyes: [30, 30] },
  topLink: { half: 11, eyes: [20, 20] },
  arm: { half: 23, eyes: [44, 24] },
  rod: { half: 9, eyes: [17, 17] },
} as const;
const sleeve = 19;
const ball = 22;

/** How the lines of the linkage are drawn: dashed where its figures stand in for measurements. */
function linkageRole({ answer }: SideStage, ...keys: readonly string[]): LineRole {
  return lineOf('thin', ...keys.map((key) => shown(answer, `tractor.${key}`, 0)));
}

/** Lift arm and lift rod, where they are known; the rod in the accent where it is what can't close. */
export function armAndRod(stage: SideStage, station: Station): Item[] {
  const { armPivot } = stage.sweep;
  const { armEnd, rodFoot, closes } = station;
  if (armPivot === null || armEnd === null || rodFoot === null) return [];
  const role = linkageRole(stage, 'liftArmLength', 'liftRodLength', 'liftRodAlong');
  const isRod = !closes && topLinkReaches(stage, station);
  return [
    ...barBetween(isRod ? 'misfit' : role, armEnd, rodFoot, sizes.rod),
    ...barBetween(role, armPivot, armEnd, sizes.arm),
    disc(role, armPivot, 17),
    at('armEnd', solidPin(role, armEnd, 9)),
    at('rodFoot', solidPin(role, rodFoot, 9)),
  ];
}

/** A length is as it was set to within this [mm]. */
const sameLength = 0.5;

/** Whether the top link, as long as it is set, joins its two ends at a height. */
function topLinkReaches({ sweep }: SideStage, { topEnd }: Station): boolean {
  const [x, z] = sweep.topPivot;
  return Math.abs(Math.hypot(topEnd[0] - x, topEnd[1] - z) - sweep.topLink) < sameLength;
}

/** The top link with its sleeve; in the accent where it is what can't close. */
export function topLink(stage: SideStage, station: Station): Item[] {
  const { topPivot } = stage.sweep;
  const { topEnd } = station;
  const isBinding = !station.closes && !topLinkReaches(stage, station);
  const role = isBinding ? 'misfit' : linkageRole(stage, 'topLinkPivotHeight', 'topLinkPivotBehindAxle');
  const pose = poseAlong(topPivot, topEnd);
  const length = Math.hypot(topEnd[0] - topPivot[0], topEnd[1] - topPivot[1]);
  const along = (share: number): Point => placed(pose, [length * share, 0]);
  return [
    ...barBetween(role, topPivot, topEnd, sizes.topLink),
    plank(role, along(0.24), along(0.76), sleeve),
    solidPin(role, topPivot, 9),
    at('topEnd', solidPin(role, topEnd, 9)),
  ];
}

/** The lower link from its pivot to the ball, with the pin that the ball sits on. */
export function lowerLink(stage: SideStage, station: Station): Item[] {
  const { lowerPivot } = stage.sweep;
  const role = linkageRole(stage, 'lowerLinkLength', 'lowerLinkPivotHeight', 'lowerLinkPivotBehindAxle');
  return [
    ...barBetween(role, lowerPivot, station.ball, sizes.lowerLink),
    solidPin(role, lowerPivot, 12),
    disc(role, station.ball, ball),
    at('ball', solidPin(role, station.ball, Math.min(ball - 6, stage.frontPin.value / 2))),
  ];
}

/** The path of the balls through the lift. */
export function ballPath({ sweep }: SideStage): Item {
  return run(
    'centre',
    sweep.stations.map((station) => station.ball),
  );
}

/** Axes of both links at the heights that are asked of the lift. */
export function otherPositions(stage: SideStage, marks: readonly HeightMark[]): Item[] {
  const asked = marks.filter((mark) => mark.name !== 'full lift' && isReached(stage.sweep, mark));
  return [...new Set(asked.map(({ station }) => station))].flatMap((i) => {
    const { ball: end, topEnd } = stage.sweep.stations[i] as Station;
    return [
      line('centre', stage.sweep.lowerPivot, end),
      line('centre', stage.sweep.topPivot, topEnd),
      line('centre', end, topEnd),
    ];
  });
}

/** The circle, marked as standing on a computed point. */
export function at(point: PointName, circle: Circle): Circle {
  return { ...circle, point };
}
