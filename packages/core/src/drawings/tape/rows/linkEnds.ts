import { edge, centre, inside, level, not, over, upright, type TapeRow } from '../row.ts';
import { endPoints, linkEnd, linkPiece, linkSection, topLinkPoints, topLinkSleeve } from '../sketches/linkEnds.ts';
import { ringPoints, ringSketch, type Ring } from '../sketches/rings.ts';

/** Balls and links close up. */
export const linkEndRows: Readonly<Record<string, TapeRow>> = {
  ...boreRow('lower', { view: 'Ball of a lower link, along its bore', bore: 11.2, outside: 22, eye: [36, 22] }),
  ...boreRow('upper', { view: 'Ball of the top link, along its bore', bore: 9.8, outside: 19, eye: [30, 13] }),
  lowerLinkThickness: {
    sketch: linkPiece(),
    parts: ['link'],
    measured: level(
      edge(linkSection.left, 'one side of the link'),
      edge(linkSection.right, 'what stands out farthest on the other side', 'stands out'),
      0,
      over(40),
    ),
    not: [not('the bar alone', linkSection.barRight)],
  },
  topLinkRadius: {
    sketch: topLinkSleeve(),
    parts: ['sleeve'],
    measured: upright(
      centre(topLinkPoints.axis, 'the middle of the top link', 'middle'),
      edge(topLinkPoints.outside, 'the outside of its thickest part', 'outside'),
      -40,
      { side: -1 },
    ),
    not: [not('the thin part', topLinkPoints.bar)],
    hint: 'half of it: measure over it and halve',
  },
};

function boreRow(which: 'lower' | 'upper', ring: Ring): Readonly<Record<string, TapeRow>> {
  const rim = ringPoints(ring);
  const faces = endPoints(which);
  return {
    [`${which}BallBore`]: {
      isRound: true,
      sketch: ringSketch(ring),
      parts: ['ring'],
      measured: level(
        edge(rim.boreLeft, 'one side of the bore'),
        edge(rim.boreRight, 'the other side'),
        0,
        inside((ring.eye?.[0] ?? 0) * 1.15),
      ),
      not: [not('the outside of the ball', rim.rim)],
      hint: 'twice, a quarter turn on: keep the smaller',
    },
    [`${which}BallWidth`]: {
      sketch: linkEnd(which),
      parts: ['ball'],
      measured: level(
        edge(faces.left, 'one face of the ball', 'face'),
        edge(faces.right, 'its other face', 'face'),
        which === 'upper' ? 40 : 35,
      ),
      not: [not('the link around it', faces.eyeRight)],
    },
  };
}
