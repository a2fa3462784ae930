import { angle, centre, edge, level, not, upright, type TapeRow, type TapeRows } from '../row.ts';
import { implementAbove, inputTurned, points as above, yawPoints } from '../sketches/implementAbove.ts';
import {
  carrierSide,
  grounds,
  implementSide,
  inputTilted,
  points as side,
  rowPoints,
  tiltPoints,
  twoRows,
} from '../sketches/implementSide.ts';
import { points as end, splineClose } from '../sketches/splines.ts';

const lowerPin = centre(side.pin, 'the centre of the lower pins', 'pin centre');
const fromGround = (z: number): ReturnType<typeof edge> => edge([side.pin[0], z], 'the ground', 'ground');

/** Where the rest of an implement stands beside its lower pins, from the side. */
const sideRows: Readonly<Record<string, TapeRow>> = {
  centreBehind: {
    sketch: implementSide({ ground: 'parked', mark: true }),
    parts: ['gravity', 'pins'],
    measured: level(lowerPin, centre(side.gravity, 'where it balances', 'balance'), grounds.parked + 95, { side: 1 }),
    not: [not('the middle of the machine', side.middle)],
    hint: 'lay it over a pipe until it balances',
  },
  centreAbove: {
    sketch: implementSide({ mark: true }),
    parts: ['gravity', 'pins'],
    measured: upright(lowerPin, centre(side.gravity, 'the centre of gravity', 'centre of gravity'), 640),
    not: [not('the middle of the machine', side.middle)],
    hint: 'standing level',
    show: { left: -170, right: 1040, bottom: -400, top: 500 },
  },
  carriedBehind: {
    sketch: carrierSide(true),
    parts: ['load', 'pins'],
    measured: level(lowerPin, centre(side.load, 'the middle of what it carries', 'middle'), side.loadEdge[1] + 40),
    not: [not('its rear end', side.loadRear)],
  },
  carriedAbove: {
    sketch: carrierSide(false),
    parts: ['load', 'pins'],
    measured: upright(lowerPin, centre(side.load, 'the middle of what it carries', 'middle'), side.load[0] + 120),
    not: [not('its top', side.loadTop)],
    hint: 'standing level',
  },
  parkedPinHeight: heightRow('parked', 'parked as it will be picked up'),
  workPinHeight: heightRow('work', 'standing level at work'),
  lowestBehind: {
    sketch: implementSide({ ground: 'carried' }),
    parts: ['rotor', 'pins'],
    measured: level(lowerPin, centre(side.lowest, 'the part that hangs lowest', 'lowest'), grounds.carried + 95),
    not: [not('its rear end', side.rear)],
  },
  lowestBelow: {
    sketch: implementSide(),
    parts: ['rotor', 'pins'],
    measured: upright(edge(side.lowest, 'the part that hangs lowest', 'lowest'), lowerPin, -60, { side: -1 }),
    not: [not('the frame', [140, -30]), not('the bottom of a pin', side.pinBottom)],
    hint: 'standing level',
  },
  clearanceWanted: {
    sketch: implementSide({ ground: 'carried' }),
    parts: ['rotor'],
    tool: 'tape',
    measured: upright(
      edge([side.lowest[0], grounds.carried], 'the ground', 'ground'),
      edge(side.lowest, 'the lowest part, carried', 'lowest'),
      side.lowest[0],
    ),
    not: [not('the pins', side.pin)],
  },
  workDepth: {
    sketch: implementSide({ ground: 'work' }),
    parts: ['rotor'],
    tool: 'tape',
    measured: upright(
      edge([side.lowest[0], grounds.work], 'the ground', 'ground'),
      edge(side.lowest, 'the deepest that the tools reach', 'deepest'),
      side.lowest[0] + 260,
    ),
    not: [not('the axle of the rotor', side.rotor)],
    show: { left: -100, right: 1000, bottom: -440, top: 420 },
  },
};

function heightRow(ground: 'parked' | 'work', how: string): TapeRow {
  return {
    sketch: implementSide({ ground }),
    parts: ['pins', 'mast'],
    measured: upright(fromGround(grounds[ground]), lowerPin, -75, { side: -1 }),
    not: [not('the bottom of the pin', side.pinBottom), not('its top', side.pinTop)],
    enlarged: { on: side.pin, reach: 52 },
    hint: how,
  };
}

const inputShaft = { sketch: implementSide(), parts: ['shaft', 'pins'] } as const;
const nearInput = { left: -260, right: 560, bottom: -130, top: 460 } as const;

/** The input shaft, from the side, from above and close up. */
const inputRows: Readonly<Record<string, TapeRows>> = {
  inputBehind: {
    groove: {
      ...inputShaft,
      measured: level(lowerPin, centre(side.groove, 'the middle of the groove round the input shaft', 'groove'), -30, {
        side: -1,
      }),
      not: [not('the end of the shaft', side.inputEnd)],
      enlarged: { on: [side.groove[0] - 14, side.groove[1]], reach: 46 },
      show: nearInput,
    },
    shaftEnd: {
      ...inputShaft,
      measured: level(lowerPin, edge(side.inputEnd, 'the end of the input shaft', 'end'), -30, { side: -1 }),
      not: [not('the groove', side.groove)],
      enlarged: { on: [side.groove[0] - 20, side.groove[1]], reach: 46 },
      show: nearInput,
    },
    crossCentre: {
      sketch: implementSide({ joint: true }),
      parts: ['joint', 'pins'],
      measured: level(
        lowerPin,
        centre(side.inputCross, 'the centre of the cross of the joint on it', 'cross centre'),
        -30,
        { side: -1 },
      ),
      not: [not('the end of the yoke', side.yokeEnd)],
      enlarged: { on: [side.inputCross[0] + 14, side.inputCross[1]], reach: 52 },
      show: nearInput,
    },
  },
  inputAbove: {
    ...inputShaft,
    measured: upright(lowerPin, centre(side.inputFace, 'the centre of the input shaft', 'shaft centre'), 130),
    not: [not('its top', side.inputTop), not('the top of a pin', side.pinTop)],
    show: nearInput,
    hint: 'standing level',
  },
  inputAside: {
    sketch: implementAbove('input'),
    parts: ['shaft', 'pins'],
    measured: level(
      centre(above.middle, 'the middle between the pins', 'middle'),
      centre(above.inputEnd, 'the centre of the input shaft', 'shaft centre'),
      60,
    ),
    not: [not('the side of the gearbox', above.gearboxSide), not('a pin', above.leftPin)],
    show: { left: -430, right: 430, bottom: -410, top: 150 },
  },
  inputAngle: {
    sketch: inputTilted(),
    parts: ['shaft'],
    measured: angle(
      tiltPoints.corner,
      edge(tiltPoints.level, 'level', 'level'),
      edge(tiltPoints.axis, 'the axis of the input shaft', 'shaft'),
      165,
    ),
    not: [not('the gearbox', [250, 128])],
    hint: 'implement standing level',
  },
  inputYaw: {
    sketch: inputTurned(),
    parts: ['shaft'],
    measured: angle(
      yawPoints.corner,
      edge(yawPoints.ahead, 'straight ahead', 'ahead'),
      edge(yawPoints.axis, 'the axis of the input shaft', 'shaft'),
      165,
    ),
    not: [not('the side of the gearbox', [70, -30])],
  },
  inputGrooveToEnd: grooveToEnd('Input shaft'),
};

/** From the groove of a splined shaft to its end. */
export function grooveToEnd(shaft: string): TapeRow {
  return {
    sketch: splineClose(`${shaft}, from the side`),
    parts: ['shaft'],
    measured: level(
      centre(end.groove, 'the middle of the groove', 'middle of the groove'),
      edge(end.end, 'the end of the shaft', 'end'),
      32,
    ),
    not: [not('the edge of the groove', end.grooveFar), not('the housing', end.face)],
  };
}

/** Sideways, from above. */
const aboveRows: Readonly<Record<string, TapeRow>> = {
  centreAside: {
    sketch: implementAbove('gravity'),
    parts: ['gravity', 'pins'],
    measured: level(
      centre(above.middle, 'the middle between the pins', 'middle'),
      centre(above.gravity, 'the centre of gravity', 'centre of gravity'),
      -200,
    ),
    not: [not('a pin', above.leftPin)],
  },
  shiftLeft: {
    sketch: implementAbove('left'),
    parts: ['deck'],
    measured: level(
      edge(above.leftEdge, 'its left edge, not shifted', 'not shifted'),
      edge(above.leftShifted, 'the same edge, shifted all the way', 'shifted'),
      above.leftEdge[1],
    ),
    not: [not('the middle', above.deckMiddle)],
  },
  shiftRight: {
    sketch: implementAbove('right'),
    parts: ['deck'],
    measured: level(
      edge(above.rightEdge, 'its right edge, not shifted', 'not shifted'),
      edge(above.rightShifted, 'the same edge, shifted all the way', 'shifted'),
      above.rightEdge[1],
    ),
    not: [not('the middle', above.deckMiddle)],
  },
  workWidth: {
    sketch: implementAbove('width'),
    parts: ['tools'],
    measured: level(
      edge(above.leftWork, 'the outermost that cuts or tills on one side', 'outermost tool'),
      edge(above.rightWork, 'the same on the other', 'outermost tool'),
      above.leftWork[1] - 60,
      { side: -1 },
    ),
    not: [not('over the side plates', above.leftDeck)],
  },
};

/** What only an implement has, besides its pins and its kind of coupling. */
export const implementRows: Readonly<Record<string, TapeRows>> = { ...sideRows, ...inputRows, ...aboveRows };

/** The second row of pins beside the first. */
export const secondRowRows: Readonly<Record<string, TapeRow>> = {
  rise: {
    sketch: twoRows(),
    parts: ['pins', 'plate'],
    measured: upright(
      centre(rowPoints.first, 'the centre of the first row', 'first row'),
      centre(rowPoints.second, 'the centre of the second row', 'second row'),
      -70,
      { side: -1 },
    ),
    not: [not('the top of a pin', rowPoints.secondTop), not('along the plate', [24, 78])],
  },
  behind: {
    sketch: twoRows(),
    parts: ['pins', 'plate'],
    measured: level(
      centre(rowPoints.first, 'the centre of the first row', 'first row'),
      centre(rowPoints.second, 'the centre of the second row', 'second row'),
      -72,
      { side: -1 },
    ),
    not: [not('along the plate', [24, 78])],
  },
};
