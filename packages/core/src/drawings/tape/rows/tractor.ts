import { centre, edge, level, not, upright, type TapeRow, type TapeRows } from '../row.ts';
import { linksAbove, planPoints as plan, points as behind, tractorBehind } from '../sketches/tractorBehind.ts';
import { frontAxle, frontPoints, points as side, tractorSide } from '../sketches/tractorSide.ts';

const rearAxle = centre(side.rearAxle, 'the centre of the rear axle', 'rear axle');
const frontAxleEnd = centre(side.frontAxle, 'a plumb line from the centre of the front axle', 'front axle');
/** Where the tape lies under the plumb lines [mm above the ground]. */
const onGround = 270;

/** The whole tractor from the side. */
const sideRows: Readonly<Record<string, TapeRow>> = {
  wheelbase: {
    sketch: tractorSide(),
    parts: ['rearWheel', 'frontWheel'],
    measured: level(centre(side.frontAxle, 'the centre of the front axle', 'front axle'), rearAxle, 130),
    not: [not('over the tyres', side.frontTyreAhead, side.rearTyreBack)],
  },
  driverAhead: {
    sketch: tractorSide(),
    parts: ['seat', 'rearWheel'],
    measured: level(
      centre(side.rearAxle, 'a plumb line from the centre of the rear axle', 'rear axle'),
      centre(side.seat, 'a plumb line from the middle of the seat', 'middle of the seat'),
      onGround - 60,
    ),
    not: [not('the back of the seat', side.seatBack)],
    show: { left: -1100, right: 620, bottom: -20, top: 1440 },
  },
  frontWeightAhead: {
    sketch: tractorSide({ ahead: 'weights' }),
    parts: ['weights', 'frontWheel'],
    measured: level(frontAxleEnd, centre(side.weights, 'the middle of the front weights', 'middle'), onGround - 90),
    not: [not('their front face', side.weightsFace)],
    show: { left: -2480, right: -900, bottom: -20, top: 1180 },
  },
  loaderAhead: {
    sketch: tractorSide({ ahead: 'loader' }),
    parts: ['loader', 'gravity', 'frontWheel'],
    measured: level(frontAxleEnd, centre(side.loader, 'where the loader balances, arms low', 'balance'), onGround - 60),
    not: [not('the pin of the bucket', side.bucketPin)],
    show: { left: -2980, right: -560, bottom: -20, top: 1400 },
  },
  loaderLoadAhead: {
    sketch: tractorSide({ ahead: 'load' }),
    parts: ['load', 'frontWheel'],
    measured: level(
      frontAxleEnd,
      centre(side.load, 'the middle of the load, arms as they carry it', 'middle of the load'),
      onGround - 100,
    ),
    not: [not('the edge of the bucket', side.bucketEdge)],
    show: { left: -3050, right: -560, bottom: -20, top: 1400 },
  },
  tyreRadius: {
    sketch: tractorSide(),
    parts: ['rearWheel'],
    measured: upright(edge(side.rearGround, 'the ground', 'ground'), rearAxle, 0, { side: 1 }),
    not: [not('the rim', [0, side.rearAxle[1] - 347])],
    hint: 'or half of the tyre’s whole height',
    show: { left: -900, right: 800, bottom: -20, top: 1180 },
  },
  frontPivotHeight: {
    sketch: frontAxle(),
    parts: ['axle', 'pivot'],
    measured: upright(
      edge(frontPoints.ground, 'the ground', 'ground'),
      centre(frontPoints.pivot, 'the centre of the pin that the front axle swings on', 'pivot pin'),
      0,
    ),
    not: [not('the bottom of the axle', [-230, 317]), not('the centre of a wheel', frontPoints.wheel)],
  },
};

/** From behind and from above. */
const behindRows: Readonly<Record<string, TapeRows>> = {
  ballSpan: {
    ballCentre: spanRow('the centre of one ball', 'the centre of the other', [behind.leftBall, behind.rightBall]),
    innerFaces: spanRow('the inner face of one ball', 'the inner face of the other', [
      behind.leftInner,
      behind.rightInner,
    ]),
    outerFaces: spanRow('the outer face of one ball', 'the outer face of the other', [
      behind.leftOuter,
      behind.rightOuter,
    ]),
  },
  lowerLinkPivotSpan: {
    sketch: linksAbove(false),
    parts: ['links'],
    measured: level(
      centre(plan.leftPivot, 'the centre of one front pivot', 'pivot'),
      centre(plan.rightPivot, 'the centre of the other', 'pivot'),
      -90,
      { side: -1 },
    ),
    not: [not('the balls', plan.leftBall), not('over the link ends', plan.pivotOutside)],
    show: { left: -520, right: 520, bottom: -790, top: 60 },
  },
  sidePlay: {
    sketch: linksAbove(true),
    parts: ['links'],
    measured: level(
      centre(plan.rightBall, 'where a ball stands with the links straight', 'straight'),
      centre(plan.rightSwayed, 'where the same ball stands, pushed to one side', 'pushed over'),
      -620,
    ),
    not: [not('from stop to stop', plan.leftSwayed)],
    show: { left: -520, right: 560, bottom: -800, top: 20 },
  },
  tyreInnerSpan: {
    sketch: tractorBehind('tyres'),
    parts: ['tyres'],
    measured: level(
      edge(behind.tyreInLeft, 'the inner wall of one rear tyre', 'inner wall'),
      edge(behind.tyreInRight, 'the inner wall of the other', 'inner wall'),
      760,
      { isBetween: true },
    ),
    not: [not('the rims', behind.rim)],
  },
  rearTrack: {
    sketch: tractorBehind('tyres'),
    parts: ['tyres'],
    measured: level(
      centre(behind.tyreMidLeft, 'the middle of one rear tyre, on the ground', 'middle'),
      centre(behind.tyreMidRight, 'the middle of the other', 'middle'),
      50,
    ),
    not: [not('over the tyres', behind.tyreOutLeft), not('between them', behind.tyreInRight)],
  },
  outerWidth: {
    sketch: tractorBehind('tyres'),
    parts: ['tyres'],
    measured: level(
      edge(behind.tyreOutLeft, 'the outer wall of one rear tyre', 'outer wall'),
      edge(behind.tyreOutRight, 'the outer wall of the other', 'outer wall'),
      240,
    ),
    not: [not('the middles of the tyres', behind.tyreMidLeft, behind.tyreMidRight)],
  },
  stubAside: {
    sketch: tractorBehind('links'),
    parts: ['stub'],
    measured: level(
      centre(behind.middle, 'a plumb line from the middle of the tractor', 'middle'),
      centre(behind.stub, 'a plumb line from the centre of the PTO stub', 'stub centre'),
      420,
      { side: -1 },
    ),
    not: [not('the side of the stub', behind.stubSide)],
    show: { left: -330, right: 330, bottom: 300, top: 760 },
  },
  liftRodAside: {
    sketch: tractorBehind('links'),
    parts: ['rods'],
    measured: level(
      centre(behind.rodFoot, 'a plumb line from the lower pin of a lift rod', 'lower pin'),
      centre(behind.rodTop, 'a plumb line from its upper pin', 'upper pin'),
      330,
      { side: -1 },
    ),
    not: [not('along the rod', behind.rodSide)],
    show: { left: -80, right: 620, bottom: 190, top: 1030 },
  },
};

function spanRow(
  from: string,
  to: string,
  [left, right]: readonly [readonly [number, number], readonly [number, number]],
): TapeRow {
  const isCentre = from.includes('centre');
  const name = isCentre ? 'ball centre' : from.includes('inner') ? 'inner face' : 'outer face';
  const end = isCentre ? centre : edge;
  return {
    sketch: tractorBehind('links'),
    parts: ['balls', 'links'],
    measured: level(end(left, from, name), end(right, to, name), 330, { side: 1 }),
    not: isCentre
      ? [not('the faces of the balls', behind.rightOuter), not('the links', behind.leftLink)]
      : [not('the centres of the balls', behind.leftBall)],
    enlarged: { on: [behind.leftBall[0], behind.leftBall[1]], reach: 48 },
    hint: 'twice: stabilisers narrowest, then widest',
    show: { left: -460, right: 460, bottom: 260, top: 800 },
  };
}

/** The whole tractor. */
export const tractorRows: Readonly<Record<string, TapeRows>> = { ...sideRows, ...behindRows };
