import { centre, edge, inside, level, not, over, upright, type TapeRow, type TapeRows } from '../row.ts';
import {
  couplerBehind,
  hookFace,
  hookFacePoints as face,
  points as behind,
  topFacePoints as topFace,
  topHookFace,
} from '../sketches/couplerBehind.ts';
import {
  claw,
  clawPoints,
  couplerSide,
  hookPoints as hook,
  lowerHook,
  points as side,
  topHook,
  topPoints as top,
} from '../sketches/couplerSide.ts';

const ball = centre(side.ball, 'the centre of a lower-link ball', 'ball centre');
const seat = centre(side.lowerSeat, 'the centre of a pin in a lower hook', 'lower seat');

/** The frame from the side. */
const sideRows: Readonly<Record<string, TapeRow>> = {
  hookBehind: {
    sketch: couplerSide(),
    parts: ['hooks', 'balls'],
    measured: level(ball, seat, -66, { side: -1 }),
    not: [not('the back of the hook', side.hookBack), not('the tip of the hook', side.lowerTip)],
    show: { left: -150, right: 270, bottom: -110, top: 170 },
  },
  hookRise: {
    sketch: couplerSide(),
    parts: ['hooks', 'balls'],
    measured: upright(ball, seat, 218),
    not: [not('the tip of the hook', side.lowerTip)],
    show: { left: -100, right: 350, bottom: -110, top: 170 },
  },
  topHookHeight: {
    sketch: couplerSide(),
    parts: ['hooks'],
    measured: upright(seat, centre(side.topSeat, 'the centre of a pin in the top hook', 'pin in top hook'), 240),
    not: [not('the tip of the hook', side.topTip), not('from the balls', side.ball)],
  },
  topHookBehind: {
    sketch: couplerSide(),
    parts: ['hooks'],
    measured: level(
      seat,
      centre(side.topSeat, 'a plumb line from the centre of a pin in the top hook', 'pin in top hook'),
      -24,
      { side: -1 },
    ),
    not: [not('from the balls', side.ball)],
  },
  windowBehind: {
    sketch: couplerSide(),
    parts: ['frame', 'balls'],
    measured: level(
      ball,
      centre(side.postMiddle, 'the middle of the frame round the opening', 'middle of the frame'),
      -92,
      { side: -1 },
    ),
    not: [not('the hooks', side.lowerSeat)],
    show: { left: -190, right: 270, bottom: -140, top: 190 },
  },
  centreBehind: {
    sketch: couplerSide({ mark: true }),
    parts: ['gravity', 'balls'],
    measured: level(ball, centre(side.gravity, 'a plumb line from where the coupler balances', 'balance'), -66, {
      side: -1,
    }),
    not: [not('the hooks', side.lowerSeat)],
    hint: 'hang it or lay it over a pipe',
  },
  centreAbove: {
    sketch: couplerSide({ mark: true }),
    parts: ['gravity', 'balls'],
    measured: upright(ball, centre(side.gravity, 'where the coupler balances, laid flat', 'balance'), 220),
    not: [not('half its height', side.frameMiddle)],
    hint: 'lay it flat over a pipe',
  },
  hungBehind: {
    sketch: couplerSide({ weights: true }),
    parts: ['weights', 'balls'],
    measured: level(ball, centre(side.weights, 'a plumb line from the middle of the hung weights', 'middle'), -66, {
      side: -1,
    }),
    not: [not('their front face', side.weightsFace)],
  },
  hungAbove: {
    sketch: couplerSide({ weights: true }),
    parts: ['weights', 'balls'],
    measured: upright(ball, centre(side.weights, 'the middle of the hung weights', 'middle'), 200),
    not: [not('their top', side.weightsTop)],
  },
};

/** Hooks and claw, close up. */
const hookRows: Readonly<Record<string, TapeRow>> = {
  hookSeat: {
    sketch: lowerHook(false),
    parts: ['hook'],
    measured: level(edge(hook.seatLeft, 'one side of the seat'), edge(hook.seatRight, 'the other side'), 0, inside(44)),
    not: [not('the mouth', hook.mouth), not('over the hook', hook.outside)],
  },
  seatDepth: {
    sketch: lowerHook(false),
    parts: ['hook'],
    measured: upright(
      edge(hook.bottom, 'the bottom of the seat', 'seat'),
      edge(hook.tip, 'the tip of the hook', 'tip'),
      52,
    ),
    not: [not('the underside', hook.under)],
  },
  hookWidth: {
    sketch: hookFace(),
    parts: ['hook'],
    measured: level(edge(face.left, 'one side of the hook'), edge(face.right, 'the other side'), 0, over(42)),
    not: [not('the plate it stands on', face.plate)],
  },
  roomNeededLower: {
    sketch: lowerHook(true),
    parts: ['hook', 'latch'],
    measured: level(
      edge(hook.blockLow, 'one edge of the square block that hook and latch sweep', 'block'),
      edge(hook.blockRight, 'its opposite edge'),
      hook.blockLow[1],
      { side: -1 },
    ),
    not: [not('the hook alone', hook.outside)],
    hint: 'open and shut the latch',
  },
  topHookThroat: {
    sketch: topHook('throat'),
    parts: ['hook'],
    measured: level(
      edge(top.throatLeft, 'one side of the opening'),
      edge(top.throatRight, 'the other side'),
      top.throatLeft[1],
      inside(36),
    ),
    not: [not('over the hook', top.outside)],
  },
  topHookPlay: {
    sketch: topHook('play'),
    parts: ['hook', 'latch', 'pin'],
    measured: upright(
      edge(top.pinDown, 'the top of a seated pin, pushed down', 'pushed down'),
      edge(top.pinUp, 'the same, pulled up against the latch', 'pulled up'),
      46,
    ),
    not: [not('the opening', top.throatRight)],
  },
  topHookThickness: {
    sketch: topHookFace(false),
    parts: ['hook'],
    measured: level(
      edge(topFace.left, 'one side of the hook, where it enters the mast clevis'),
      edge(topFace.right, 'the other side'),
      topFace.left[1],
      over(38),
    ),
    not: [not('its foot', topFace.base)],
  },
  topHookCheekGap: {
    sketch: topHookFace(true),
    parts: ['hook'],
    measured: level(
      edge(topFace.cheekLeft, 'the inner face of one cheek', 'inner face'),
      edge(topFace.cheekRight, 'the inner face of the other', 'inner face'),
      topFace.cheekLeft[1],
      { isBetween: true },
    ),
    not: [not('over the cheeks', topFace.cheekOut)],
  },
  roomNeededUpper: {
    sketch: topHook('room'),
    parts: ['hook', 'latch'],
    measured: level(
      edge(top.blockLow, 'one edge of the square block that hook and latch sweep', 'block'),
      edge(top.blockRight, 'its opposite edge'),
      top.blockLow[1],
      { side: -1 },
    ),
    not: [not('the hook alone', top.outside)],
    hint: 'open and shut the latch',
  },
  clawSize: {
    isRound: true,
    sketch: claw(),
    parts: ['claw'],
    measured: level(
      edge(clawPoints.left, 'one inner side of the claw, at its widest', 'inside'),
      edge(clawPoints.right, 'the other inner side', 'inside'),
      0,
      { isBetween: true },
    ),
    not: [not('the mouth', clawPoints.mouth), not('over the claw', clawPoints.outside)],
  },
};

/** The frame from behind. */
const behindRows: Readonly<Record<string, TapeRows>> = {
  hookSpan: {
    sketch: couplerBehind(),
    parts: ['hooks'],
    measured: level(
      centre(behind.leftHook, 'the middle of one lower hook', 'middle'),
      centre(behind.rightHook, 'the middle of the other', 'middle'),
      130,
    ),
    not: [not('over the hooks', behind.rightHookOut), not('the posts', behind.leftPostIn)],
    enlarged: { on: [behind.rightHook[0], behind.rightHook[1]], reach: 44 },
  },
  windowWidth: {
    sketch: couplerBehind(),
    parts: ['frame'],
    measured: level(
      edge(behind.leftPostIn, 'the inner face of one post', 'inner face'),
      edge(behind.rightPostIn, 'the inner face of the other', 'inner face'),
      behind.leftPostIn[1],
      { isBetween: true },
    ),
    not: [not('over the posts', behind.rightPostOut)],
  },
  windowTop: {
    sketch: couplerBehind(),
    parts: ['frame', 'crossing'],
    measured: upright(
      centre(behind.ball, 'the height of the ball centres', 'ball centre'),
      edge(behind.braceUnder, 'the underside of the lowest bar or brace above', 'lowest above'),
      0,
    ),
    not: [not('a higher bar', behind.beamUnder)],
  },
  windowBottom: {
    sketch: couplerBehind(),
    parts: ['frame', 'crossing'],
    measured: upright(
      centre(behind.ball, 'the height of the ball centres', 'ball centre'),
      edge(behind.lowTop, 'the top of what crosses below', 'top of it'),
      -110,
    ),
    not: [not('its underside', behind.lowUnder)],
  },
};

/** A coupler with hooks. */
export const couplerRows: Readonly<Record<string, TapeRows>> = { ...sideRows, ...hookRows, ...behindRows };
