import { angle, edge, level, not, over, type TapeRow } from '../row.ts';
import { barBehind, jawSide, points as bar } from '../sketches/barAndJaw.ts';
import { cylinder, points as rod } from '../sketches/cylinder.ts';
import { ringSketch } from '../sketches/rings.ts';
import { triangle, trianglePoints } from '../sketches/triangle.ts';

const receiver = trianglePoints('receiver');
const frame = trianglePoints('frame');

/** The counterparts on an implement of a triangular frame and of a bar, and its own cylinder. */
export const counterpartRows: Readonly<Record<string, TapeRow>> = {
  receiverWidth: {
    sketch: triangle('receiver'),
    parts: ['legs'],
    measured: level(
      edge(receiver.left, 'the inner face of one leg, at its foot', 'inner face'),
      edge(receiver.right, 'the inner face of the other', 'inner face'),
      -14,
      { side: -1, isBetween: true },
    ),
    not: [not('the outer faces', receiver.other), not('higher up', receiver.higher)],
  },
  receiverAngle: {
    sketch: triangle('receiver'),
    parts: ['legs'],
    measured: angle(
      receiver.corner,
      edge(receiver.leftLeg, 'the inner face of one leg', 'inner face'),
      edge(receiver.rightLeg, 'the inner face of the other', 'inner face'),
      330,
    ),
    not: [not('one leg from upright', [0, 190])],
  },
  jawOpening: {
    sketch: jawSide(),
    parts: ['jaw'],
    measured: level(
      edge(bar.jawLeft, 'one side of the jaw'),
      edge(bar.jawRight, 'the other side'),
      bar.jawLeft[1] - 12,
      { side: -1, isBetween: true },
    ),
    not: [not('the flared mouth', bar.mouth)],
  },
  jawSpan: {
    sketch: barBehind(),
    parts: ['jaws'],
    measured: level(
      edge(bar.jawOutLeft, 'the outer face of one jaw', 'outer face'),
      edge(bar.jawOutRight, 'the outer face of the other', 'outer face'),
      62,
    ),
    not: [not('the inner faces', bar.jawInRight), not('the bar', bar.barEndLeft)],
  },
  cylinderRod: {
    isRound: true,
    sketch: ringSketch({ view: 'Rod of the cylinder, along itself', bore: 16, outside: 36, pin: 16 }),
    parts: ['pin'],
    tool: 'caliper',
    measured: level(edge([-16, 0], 'one side of the rod'), edge([16, 0], 'the other side'), 0, over(47)),
    not: [not('the barrel', [25, -25])],
  },
  cylinderStroke: {
    sketch: cylinder(),
    parts: ['rod', 'eye'],
    tool: 'tape',
    measured: level(
      edge(rod.eyeIn, 'the end of the eye with the rod right in', 'right in'),
      edge(rod.eyeOut, 'the same end with the rod right out', 'right out'),
      56,
    ),
    not: [not('the end of the barrel', rod.barrelEnd)],
  },
};

/** Frame and bar of a coupler. */
export const frameRows: Readonly<Record<string, TapeRow>> = {
  frameWidth: {
    sketch: triangle('frame'),
    parts: ['legs'],
    measured: level(
      edge(frame.left, 'the outer face of one leg, at its foot', 'outer face'),
      edge(frame.right, 'the outer face of the other', 'outer face'),
      -14,
      { side: -1 },
    ),
    not: [not('the inner faces', frame.other), not('higher up', frame.higher)],
  },
  frameAngle: {
    sketch: triangle('frame'),
    parts: ['legs'],
    measured: angle(
      frame.corner,
      edge(frame.leftLeg, 'the outer face of one leg', 'outer face'),
      edge(frame.rightLeg, 'the outer face of the other', 'outer face'),
      330,
    ),
    not: [not('one leg from upright', [0, 190])],
  },
  barDiameter: {
    isRound: true,
    sketch: jawSide(true),
    parts: ['bar'],
    measured: level(edge(bar.barLeft, 'one side of the bar'), edge(bar.barRight, 'the other side'), 0, over(58)),
    not: [not('the link end', [50, -40])],
    hint: 'where the jaws sit',
  },
  barLength: {
    sketch: barBehind(),
    parts: ['bar'],
    measured: level(
      edge(bar.barEndLeft, 'the inner face of one link end', 'link end'),
      edge(bar.barEndRight, 'the inner face of the other', 'link end'),
      -64,
      { side: -1, isBetween: true },
    ),
    not: [not('over the link ends', bar.linkOutRight)],
  },
};
