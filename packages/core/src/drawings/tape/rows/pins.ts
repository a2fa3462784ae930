import { centre, edge, inside, level, not, over, upright, type TapeRow, type TapeRows } from '../row.ts';
import { couplerSide, points as coupler } from '../sketches/couplerSide.ts';
import { implementSide, points as side } from '../sketches/implementSide.ts';
import { clevisBehind, mastTopSide, points as clevis } from '../sketches/mastTop.ts';
import { pinsBehind, points as behind, sizes, type PinOwner } from '../sketches/pinsBehind.ts';
import { ringPoints, ringSketch, type Ring } from '../sketches/rings.ts';
import { lowerPinRows } from './onePin.ts';

/** How the pins of a machine are measured. */
export function pinRows(owner: PinOwner): Readonly<Record<string, TapeRows>> {
  return {
    ...placeRows(owner),
    mastSetback: owner === 'coupler' ? frontSetback : implementSetback,
    ...lowerPinRows,
    ...bushingRows('lower', { view: 'Bushing of the lower pin, along the pin', bore: 11.3, outside: 18.2 }),
    ...bushingRows('upper', { view: 'Bushing of the upper pin, along the pin', bore: 9.8, outside: 15.9 }),
    ...clevisRows(),
  };
}

/** Where the pins stand to each other. */
function placeRows(owner: PinOwner): Readonly<Record<string, TapeRows>> {
  const sketch = pinsBehind(owner);
  const step = {
    sketch,
    parts: ['pins', 'plates'],
    measured: level(
      edge(behind.leftStep, 'the step on one pin', 'step'),
      edge(behind.rightStep, 'the step on the other', 'step'),
      0,
    ),
    not: [
      not('the tips', behind.leftTip, behind.rightTip),
      not('the plates', behind.leftPlateOutside),
      not('inside the plates', behind.rightPlateInside),
    ],
    enlarged: { on: [-sizes.step - 4, 0], reach: 42 },
  } as const satisfies TapeRow;
  return {
    shoulderSpan: {
      shoulder: step,
      ballCentre: {
        sketch: pinsBehind(owner, 'balls'),
        parts: ['pins', 'balls'],
        measured: level(
          centre(behind.leftBall, 'the centre of a ball pushed against one step', 'ball centre'),
          centre(behind.rightBall, 'the centre of a ball pushed against the other', 'ball centre'),
          0,
        ),
        not: [not('the steps', behind.leftStep), not('the tips', behind.rightTip)],
        hint: 'both balls pushed against the steps',
      },
    },
    mastHeight: {
      sketch: pinsBehind(owner, 'bar'),
      parts: ['pins', 'mast'],
      measured: upright(
        centre(behind.middle, 'the centre line of the lower pins', 'pin centres'),
        centre(behind.upper, 'the centre of the upper pin hole', 'hole centre'),
        0,
      ),
      not: [
        not('the bar', behind.barTop),
        not('the bottom of a pin', behind.pinBottom),
        not('along a leg', behind.leg),
        not('the top of a plate', behind.plateTop),
      ],
      enlarged: { on: behind.upper, reach: 44 },
    },
  };
}

const implementSetback: TapeRow = {
  sketch: implementSide(),
  parts: ['mast', 'pins', 'upperPin'],
  measured: level(
    centre(side.pin, 'the centre of the lower pins', 'lower pin centre'),
    centre(side.upper, 'a plumb line from the centre of the upper pin', 'upper pin centre'),
    -24,
    { side: -1 },
  ),
  not: [not('along the mast', side.alongMast), not('the edge of the plate', side.plateFront)],
  show: { left: -270, right: 400, bottom: -120, top: 490 },
};

const frontSetback: TapeRow = {
  sketch: couplerSide({ isFree: true }),
  parts: ['frame', 'balls'],
  measured: level(
    centre(coupler.ball, 'the centre of its lower front pins', 'lower front pin'),
    centre(coupler.frontTop, 'a plumb line from the centre of its upper front pin', 'upper front pin'),
    -56,
    { side: -1 },
  ),
  not: [not('the hooks', coupler.lowerSeat), not('the edge of the plate', coupler.frontLug)],
};

/** A bushing along its axis. */
function bushingRows(place: 'lower' | 'upper', ring: Ring): Readonly<Record<string, TapeRow>> {
  const at = ringPoints(ring);
  return {
    [`${place}BushingInside`]: {
      isRound: true,
      sketch: ringSketch(ring),
      parts: ['ring'],
      measured: level(
        edge(at.boreLeft, 'one side of the bore'),
        edge(at.boreRight, 'the other side'),
        0,
        inside(ring.outside * 1.3),
      ),
      not: [not('the outside', at.rim)],
      hint: 'twice, a quarter turn on: keep the smaller',
    },
    [`${place}BushingOutside`]: {
      isRound: true,
      sketch: ringSketch({ ...ring, pin: ring.bore * 0.97 }),
      parts: ['ring'],
      measured: level(
        edge(at.left, 'one side of the bushing'),
        edge(at.right, 'the other side'),
        0,
        over(ring.outside * 1.3),
      ),
      not: [not('the pin in it', [ring.bore * 0.5, -ring.bore * 0.5])],
    },
  };
}

/** The upper pin and the plates that hold it. */
function clevisRows(): Readonly<Record<string, TapeRow>> {
  return {
    upperPinDiameter: {
      isRound: true,
      sketch: mastTopSide(),
      parts: ['pin'],
      measured: level(
        edge(clevis.pinLeft, 'one side of the bare pin'),
        edge(clevis.pinRight, 'the other side'),
        0,
        over(36),
      ),
      not: [not('paint, rust or a bushing')],
      hint: 'or open the jaws in the bare hole',
    },
    clevisGap: {
      sketch: clevisBehind(),
      parts: ['plates'],
      measured: level(
        edge(clevis.innerLeft, 'the inner face of one mast plate', 'inner face'),
        edge(clevis.innerRight, 'the inner face of the other', 'inner face'),
        clevis.innerLeft[1],
        { side: -1, isBetween: true },
      ),
      not: [not('over the plates', clevis.outerRightLow)],
    },
    clevisOuterWidth: {
      sketch: clevisBehind(),
      parts: ['plates'],
      measured: level(
        edge(clevis.outerLeft, 'the outer face of one mast plate', 'outer face'),
        edge(clevis.outerRight, 'the outer face of the other', 'outer face'),
        clevis.outerLeft[1],
        { side: -1 },
      ),
      not: [not('over the pin', clevis.headLeft, clevis.pinEnd), not('between the plates', clevis.innerRightLow)],
    },
  };
}
