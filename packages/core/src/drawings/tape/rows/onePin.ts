import { edge, inside, level, not, over, upright, type TapeRow } from '../row.ts';
import { blockPoints, freeRoom, type BlockPlace } from '../sketches/freeRoom.ts';
import { pinClose, points as pin } from '../sketches/pinClose.ts';
import { ringPoints, ringSketch, type Ring } from '../sketches/rings.ts';

const step = edge(pin.step, 'the step of the pin', 'step');

/** One lower pin, its plate, and what sits on it. */
export const lowerPinRows: Readonly<Record<string, TapeRow>> = {
  lowerPinDiameter: {
    isRound: true,
    sketch: pinClose(),
    parts: ['pin'],
    measured: upright(
      edge(pin.bodyBottom, 'one side of the bare pin'),
      edge(pin.bodyTop, 'the other side'),
      pin.bodyTop[0],
      over(62),
    ),
    not: [not('the collar', pin.collarTop), not('the tip', pin.chamfer), not('paint, rust or a bushing')],
    hint: 'twice, a quarter turn on: keep the smaller',
  },
  standOut: {
    sketch: pinClose(),
    parts: ['pin', 'collar'],
    measured: level(step, edge(pin.tip, 'the tip of the pin', 'tip'), 28),
    not: [not('the plate', pin.collarFace), not('the hole', pin.holeMiddle)],
  },
  shoulderToHole: {
    sketch: pinClose(),
    parts: ['pin', 'collar'],
    measured: level(step, edge(pin.holeNear, 'the near edge of the retaining-pin hole', 'near edge'), 28),
    not: [
      not('the middle of the hole', pin.holeMiddle),
      not('its far edge', pin.holeFar),
      not('the plate', pin.collarFace),
    ],
    enlarged: { on: pin.holeNear, reach: 11 },
  },
  washer: {
    sketch: pinClose('washer'),
    parts: ['washer'],
    measured: level(edge(pin.washerNear, 'one face of the washer'), edge(pin.washerFar, 'the other face'), 30, {
      side: 1,
    }),
    not: [not('the collar', pin.collarTop)],
  },
  plateThickness: {
    sketch: pinClose(),
    parts: ['plate'],
    measured: level(
      edge(pin.plateInside, 'one face of the plate'),
      edge(pin.plateOutside, 'its other face'),
      38,
      over(34),
    ),
    not: [not('the collar with it', pin.collarTop)],
    show: { left: -92, right: 70, bottom: -40, top: 84 },
  },
  lowerBushingLength: {
    sketch: pinClose('bushing'),
    parts: ['bushing'],
    measured: level(
      edge(pin.bushingStart, 'one end of the bushing', 'end'),
      edge(pin.bushingEnd, 'its other end', 'end'),
      30,
    ),
    not: [not('the tip of the pin', pin.tip)],
  },
};

const looseBall: Ring = { view: 'Loose ball of the lower pin, along the pin', bore: 11.2, outside: 28 };
const ballRing = ringPoints(looseBall);

/** The loose ball on a pin. */
const ballRows: Readonly<Record<string, TapeRow>> = {
  pinBallDiameter: {
    isRound: true,
    sketch: pinClose('ball'),
    parts: ['ball'],
    measured: upright(
      edge(pin.ballBottom, 'one side of the ball'),
      edge(pin.ballTop, 'the other side'),
      pin.ballTop[0],
      over(58),
    ),
    not: [not('beside its middle', pin.ballShoulder)],
    hint: 'at its thickest',
  },
  pinBallWidth: {
    sketch: pinClose('ball'),
    parts: ['ball'],
    measured: level(
      edge(pin.ballNear, 'one flat face of the ball', 'face'),
      edge(pin.ballFar, 'its other face', 'face'),
      38,
    ),
    not: [not('across the ball', pin.ballBottom)],
  },
  pinBallBore: {
    isRound: true,
    sketch: ringSketch(looseBall),
    parts: ['ring'],
    measured: level(
      edge(ballRing.boreLeft, 'one side of the bore'),
      edge(ballRing.boreRight, 'the other side'),
      0,
      inside(looseBall.outside * 1.25),
    ),
    not: [not('the pin', [0, -looseBall.bore * 0.5])],
    hint: 'twice, a quarter turn on: keep the smaller',
  },
};

/** The largest block that passes at a pin. */
function roomRow(place: BlockPlace): TapeRow {
  const { left, right } = blockPoints(place);
  return {
    sketch: freeRoom(place),
    parts: ['steel'],
    measured: level(
      edge(left, 'one edge of the largest square block that passes', 'block'),
      edge(right, 'its opposite edge'),
      left[1],
      { side: -1 },
    ),
    not: [not('the gap in one direction only', [right[0], 20])],
    hint: 'try blocks of wood or card',
  };
}

/** What only an implement has at its pins. */
export const implementPinRows: Readonly<Record<string, TapeRow>> = {
  doublePlateGap: {
    sketch: pinClose('secondPlate'),
    parts: ['plate', 'secondPlate'],
    measured: level(
      edge(pin.step, 'the inner face of one plate', 'inner face'),
      edge(pin.secondPlate, 'the inner face of the other', 'inner face'),
      30,
      { isBetween: true },
    ),
    not: [not('over the plates', pin.secondPlateFar)],
  },
  freeRoomLower: roomRow('lower'),
  freeRoomUpper: roomRow('upper'),
  ...ballRows,
};
