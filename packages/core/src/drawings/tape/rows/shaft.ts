import type { Point } from '../../scene.ts';
import { angle, centre, edge, level, not, upright, type TapeRow, type TapeRows } from '../row.ts';
import { across, turnedRound } from '../sketch.ts';
import {
  bentJoint,
  bentPoints,
  closedShaft,
  guardedShaft,
  halfShaft,
  jointOnShaft,
  points as at,
  shieldOver,
  shieldPoints,
} from '../sketches/shaft.ts';

const together = 'pushed right together';

/** Lengths along the shaft. */
const lengthRows: Readonly<Record<string, TapeRows>> = {
  closedLength: {
    crossCentre: {
      sketch: closedShaft(),
      parts: ['crosses', 'yokes'],
      measured: level(
        centre(at.frontCross, 'the centre of the cross of one joint', 'cross centre'),
        centre(at.rearCross, 'the centre of the cross of the other', 'cross centre'),
        66,
      ),
      not: [not('the ends of the yokes', at.frontYoke, at.rearYoke), not('over the guard')],
      enlarged: { on: [-8, 0], reach: 46 },
      hint: together,
    },
    pinToPin: {
      sketch: closedShaft(),
      parts: ['yokes'],
      measured: level(
        centre(at.frontLock, 'the lock pin of one yoke', 'lock pin'),
        centre(at.rearLock, 'the lock pin of the other', 'lock pin'),
        84,
      ),
      not: [not('the crosses', at.frontCross, at.rearCross)],
      hint: together,
    },
    yokeEnds: {
      sketch: closedShaft(),
      parts: ['yokes'],
      measured: level(
        edge(at.frontYoke, 'the outer end of one yoke', 'yoke end'),
        edge(at.rearYoke, 'the outer end of the other', 'yoke end'),
        66,
      ),
      not: [not('the crosses', at.frontCross, at.rearCross)],
      hint: together,
    },
  },
  closedOverlap: {
    sketch: closedShaft(),
    parts: ['outer', 'inner'],
    measured: level(
      edge(at.innerEnd, 'the end of the inner tube, inside the outer one', 'end of inner tube'),
      edge(at.outerEnd, 'the end of the outer tube', 'end of outer tube'),
      -62,
      { side: -1 },
    ),
    not: [not('the yoke', [30, 24])],
    hint: 'mark it closed, pull it apart, measure mark to end',
  },
  profileLength: {
    sketch: halfShaft(),
    parts: ['tube'],
    measured: level(
      edge(at.outerEnd, 'the end of the profile tube', 'end'),
      edge(at.outerStart, 'the yoke or the guard bearing', 'yoke'),
      62,
    ),
    not: [not('the cross', at.frontCross)],
  },
  yokeOverCross: {
    sketch: halfShaft(),
    parts: ['yokes', 'crosses'],
    measured: level(
      centre(at.frontCross, 'the centre of the cross', 'cross centre'),
      edge(at.frontYoke, 'the outer end of the yoke that slides on the splines', 'yoke end'),
      56,
    ),
    not: [not('the lock pin', at.frontLock)],
    show: { left: -190, right: 130, bottom: -80, top: 100 },
  },
  yokeReachFront: reachRow('PTO stub'),
  yokeReachRear: reachRow('input shaft'),
  bindAngle: {
    sketch: bentJoint(),
    parts: ['yokes', 'tube'],
    measured: angle(
      bentPoints.corner,
      edge(bentPoints.straight, 'straight on', 'straight on'),
      edge(bentPoints.bent, 'the bent half, its yokes touching', 'bent'),
      175,
    ),
    not: [not('between the yokes', bentPoints.yoke)],
  },
};

/** From a splined shaft to the cross of the joint on it; the tractor is on the left, the implement on the right. */
function reachRow(shaft: 'PTO stub' | 'input shaft'): Readonly<Record<string, TapeRow>> {
  const isRear = shaft === 'input shaft';
  const drawn = jointOnShaft(shaft);
  const row = { sketch: isRear ? turnedRound(drawn) : drawn, parts: ['yokes', 'crosses'] } as const;
  const placed = (point: Point): Point => (isRear ? across(point) : point);
  const cross = centre(at.frontCross, 'the centre of the cross', 'cross centre');
  const [stubEnd, groove, yokeEnd] = [at.stubEnd, at.groove, at.yokeFace].map(placed) as [Point, Point, Point];
  return {
    shaftEnd: {
      ...row,
      measured: level(edge(stubEnd, `the end of the ${shaft}, yoke latched on it`, 'end of the shaft'), cross, 52),
      not: [not('the end of the yoke', yokeEnd), not('the groove', groove)],
    },
    groove: {
      ...row,
      measured: level(centre(groove, `the groove round the ${shaft}, yoke latched on it`, 'groove'), cross, 52),
      not: [not('the end of the yoke', yokeEnd), not('the end of the shaft', stubEnd)],
    },
  };
}

/** The guard. */
const guardRows: Readonly<Record<string, TapeRow>> = {
  guardTubeDiameter: {
    isRound: true,
    sketch: guardedShaft(),
    parts: ['guard'],
    measured: upright(
      edge(at.tubeBottom, 'one side of the guard tube', 'guard tube'),
      edge(at.tubeTop, 'the other side'),
      at.tubeTop[0],
    ),
    not: [not('the steel tube', at.steelTube)],
    show: { left: 170, right: 430, bottom: -72, top: 84 },
  },
  guardConeDiameter: {
    isRound: true,
    sketch: guardedShaft(),
    parts: ['guard'],
    measured: upright(
      edge(at.coneBottom, 'one side of the cone, at its widest', 'widest'),
      edge(at.coneTop, 'the other side', 'widest'),
      0,
    ),
    not: [not('where it ends in the tube', at.coneEnd)],
  },
  guardConeLength: {
    sketch: guardedShaft(),
    parts: ['guard'],
    measured: level(
      centre(at.frontCross, 'the centre of the cross', 'cross centre'),
      edge(at.coneEnd, 'where the cone ends in the tube', 'end of the cone'),
      -100,
      { side: -1 },
    ),
    not: [not('the end of the yoke', at.frontYoke)],
  },
  shieldOverlapFront: shieldRow('tractor'),
  shieldOverlapRear: shieldRow('implement'),
};

function shieldRow(machine: 'tractor' | 'implement'): TapeRow {
  const isRear = machine === 'implement';
  const drawn = shieldOver(machine);
  const placed = (point: Point): Point => (isRear ? across(point) : point);
  return {
    sketch: isRear ? turnedRound(drawn) : drawn,
    parts: ['shield', 'guard', 'guardBehind'],
    measured: level(
      edge(placed(shieldPoints.coneEdge), 'the edge of the guard’s cone, under the shield', 'edge of cone'),
      edge(placed(shieldPoints.shieldEdge), `the edge of the ${machine}’s shield`, 'edge of shield'),
      -128,
      { side: -1 },
    ),
    not: [not('the whole shield', placed(shieldPoints.housing))],
  };
}

/** A drive shaft by itself and on its two machines. */
export const shaftRows: Readonly<Record<string, TapeRows>> = { ...lengthRows, ...guardRows };
