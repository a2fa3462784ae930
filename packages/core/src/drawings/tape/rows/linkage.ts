import { angle, centre, edge, level, not, straight, upright, type End, type TapeRow, type TapeRows } from '../row.ts';
import { fixed, linkage, linkageAt } from '../sketches/linkage.ts';
import { grooveToEnd } from './implement.ts';
import { linkEndRows } from './linkEnds.ts';

const rearAxle = centre(fixed.axle, 'a plumb line from the centre of the rear axle', 'rear axle centre');
const middle = linkageAt('middle');
/** Where the tape lies under the plumb lines [mm above the ground]. */
const onGround = 95;
const nearAxle = { left: -250, right: 520, bottom: -20, top: 700 } as const;
const upperRear = { left: -330, right: 620, bottom: -20, top: 1130 } as const;

function ground(x: number): End {
  return edge([x, 0], 'the ground', 'ground');
}

/** From the rear axle back to a point, the tape on the ground between two plumb lines. */
function behindAxle(part: string, to: End, more: Partial<TapeRow> = {}): TapeRow {
  return {
    sketch: linkage(),
    parts: ['axle', part],
    measured: level(rearAxle, to, onGround),
    not: [not('from the back of the tyre', fixed.tyreBack)],
    show: nearAxle,
    ...more,
  };
}

/** From the ground up to a point. */
function aboveGround(part: string, to: End, place: number, more: Partial<TapeRow> = {}): TapeRow {
  return {
    sketch: linkage(),
    parts: [part],
    measured: upright(ground(to.at[0]), to, place),
    not: [],
    ...more,
  };
}

const lowerPivot = centre(fixed.lowerPivot, 'the centre of the front pivot of the lower link', 'pivot centre');
const topPivot = centre(fixed.topPivot, 'the centre of the top-link hole in use', 'hole in use');
const armShaft = centre(fixed.arm, 'the centre of the shaft that the lift arms turn on', 'arm shaft');

/** Links and their front pivots. */
const linkRows: Readonly<Record<string, TapeRow>> = {
  lowerLinkLength: {
    sketch: linkage(),
    parts: ['lowerLink', 'ball'],
    measured: straight(lowerPivot, centre(middle.ball, 'the centre of the ball', 'ball centre'), 0, { side: -1 }),
    not: [
      not('the end of the link', [middle.ball[0] + 34, middle.ball[1]]),
      not('the hole of the lift rod', middle.rodHole),
    ],
    show: { left: 20, right: 960, bottom: 180, top: 720 },
  },
  lowerLinkPivotBehindAxle: behindAxle('lowerLink', lowerPivot),
  lowerLinkPivotHeight: aboveGround('lowerLink', lowerPivot, fixed.lowerPivot[0] - 90, {
    not: [not('the top of the link', [fixed.lowerPivot[0], fixed.lowerPivot[1] + 34])],
    show: nearAxle,
  }),
  topLinkLength: {
    sketch: linkage(),
    parts: ['topLink', 'topPivot'],
    measured: straight(
      centre(fixed.topPivot, 'the centre of the pin at one end', 'pin centre'),
      centre(middle.topEnd, 'the centre of the pin at the other', 'pin centre'),
      0,
    ),
    not: [not('the end of the eye', [middle.topEnd[0] + 22, middle.topEnd[1]])],
    hint: 'twice: screwed right in, and as far out as its threads allow',
    show: { left: 150, right: 1000, bottom: 560, top: 1080 },
  },
  topLinkPivotBehindAxle: behindAxle('topPivot', topPivot, {
    show: { left: -330, right: 560, bottom: -20, top: 900 },
    not: [not('another hole', fixed.otherHole), not('from the back of the tyre', fixed.tyreBack)],
  }),
  topLinkPivotHeight: aboveGround('topPivot', topPivot, fixed.topPivot[0] + 150, {
    not: [not('another hole', fixed.otherHole)],
    show: upperRear,
  }),
};

function ballHeight(which: 'low' | 'high', word: string, hint: string): TapeRow {
  const { ball } = linkageAt(which);
  return {
    sketch: linkage(which),
    parts: ['lowerLink', 'ball'],
    measured: upright(ground(ball[0]), centre(ball, 'the centre of a lower-link ball', 'ball centre'), ball[0] + 75, {
      side: 1,
    }),
    not: [not('the end of the link', [ball[0] + 34, ball[1]]), not(word, [ball[0], ball[1] - 24])],
    hint,
    show:
      which === 'low'
        ? { left: 240, right: 1230, bottom: -20, top: 600 }
        : { left: -60, right: 1190, bottom: -20, top: 940 },
  };
}

/** Heights of the balls. */
const heightRows: Readonly<Record<string, TapeRow>> = {
  ballHeightLow: ballHeight('low', 'the bottom of the ball', 'lift right down, nothing hung on'),
  ballHeightHigh: ballHeight('high', 'the bottom of the ball', 'lift right up'),
  liftStopHeight: ballHeight('high', 'the bottom of the ball', 'lift at its stop'),
};

const at = { low: linkageAt('low'), high: linkageAt('high') } as const;
const arms = { left: -40, right: 720, bottom: 560, top: 1240 } as const;

/** Lift arms, lift rods and the lift cylinder, from the side. */
const armRows: Readonly<Record<string, TapeRow>> = {
  liftArmPivotBehindAxle: behindAxle('arm', armShaft, { show: upperRear }),
  liftArmPivotHeight: aboveGround('arm', armShaft, fixed.arm[0] - 120, {
    show: upperRear,
    not: [not('the top of the arm', [fixed.arm[0], fixed.arm[1] + 52])],
  }),
  liftArmLength: {
    sketch: linkage(),
    parts: ['arm'],
    measured: straight(armShaft, centre(middle.armEnd, 'the centre of the upper pin of the lift rod', 'rod pin'), 0),
    not: [not('the end of the arm', [middle.armEnd[0] + 28, middle.armEnd[1]])],
    show: arms,
  },
  liftArmLowest: armAngle('low', 'lift right down'),
  liftArmHighest: armAngle('high', 'lift right up'),
  liftRodLength: {
    sketch: linkage(),
    parts: ['rod'],
    measured: straight(
      centre(middle.armEnd, 'the centre of its upper pin', 'upper pin'),
      centre(middle.rodHole, 'the centre of its lower pin', 'lower pin'),
      0,
    ),
    not: [not('the ends of the rod', [middle.armEnd[0], middle.armEnd[1] + 20])],
    show: { left: 60, right: 900, bottom: 340, top: 1080 },
  },
  liftRodAlong: {
    sketch: linkage(),
    parts: ['lowerLink', 'rod'],
    measured: straight(lowerPivot, centre(middle.onLink, 'below the hole of the lift rod in use', 'rod hole'), 0, {
      side: -1,
    }),
    not: [not('the ball', middle.ball), not('slanting to the hole', [middle.rodHole[0], middle.rodHole[1]])],
    show: { left: 20, right: 960, bottom: 180, top: 720 },
  },
  liftRodAbove: {
    sketch: linkage(),
    parts: ['lowerLink', 'rod'],
    measured: straight(
      centre(middle.onLink, 'the line from pivot to ball', 'line to the ball'),
      centre(middle.rodHole, 'the centre of the hole of the lift rod', 'rod hole'),
      60,
    ),
    not: [not('the top of the link', [middle.onLink[0] - 60, middle.onLink[1] + 21])],
    show: { left: 400, right: 660, bottom: 320, top: 520 },
  },
  cylinderPivotBehindAxle: behindAxle(
    'cylinder',
    centre(fixed.cylinderFoot, 'a plumb line from the fixed end of the lift cylinder', 'fixed end'),
    {
      sketch: linkage('middle', ['cylinder']),
      tool: 'plumbLine',
      show: { left: -330, right: 560, bottom: -20, top: 900 },
    },
  ),
  cylinderPivotHeight: aboveGround(
    'cylinder',
    centre(fixed.cylinderFoot, 'the centre of the fixed end of the lift cylinder', 'fixed end'),
    fixed.cylinderFoot[0] - 110,
    {
      sketch: linkage('middle', ['cylinder']),
      tool: 'tape',
      show: upperRear,
      not: [not('its moving end', middle.crankPin)],
    },
  ),
  cylinderCrank: {
    sketch: linkage('middle', ['cylinder']),
    parts: ['cylinder', 'arm'],
    tool: 'tape',
    measured: straight(
      armShaft,
      centre(middle.crankPin, 'the centre of the pin where the cylinder pushes', 'cylinder pin'),
      0,
    ),
    not: [not('the pin of the lift rod', middle.armEnd)],
    show: arms,
  },
  cylinderCrankAngle: {
    sketch: linkage('middle', ['cylinder']),
    parts: ['cylinder', 'arm'],
    tool: 'protractor',
    measured: angle(
      fixed.arm,
      edge(middle.armEnd, 'the lift arm', 'lift arm'),
      edge(middle.crankPin, 'the crank that the cylinder pushes', 'crank'),
      230,
    ),
    not: [not('from level', fixed.armLevel)],
    show: arms,
  },
};

function armAngle(height: 'low' | 'high', hint: string): TapeRow {
  return {
    sketch: linkage(height),
    parts: ['arm'],
    measured: angle(
      fixed.arm,
      edge(fixed.armLevel, 'level rearward', 'level'),
      edge(at[height].armEnd, 'the lift arm, shaft to rod pin', 'lift arm'),
      330,
    ),
    not: [
      not('the rod', [
        (at[height].armEnd[0] + at[height].rodHole[0]) / 2,
        (at[height].armEnd[1] + at[height].rodHole[1]) / 2,
      ]),
    ],
    hint,
    show: { ...arms, top: height === 'high' ? 1330 : arms.top },
  };
}

/** The PTO stub from the side. */
const stubRows: Readonly<Record<string, TapeRows>> = {
  stubBehindAxle: {
    groove: behindAxle('stub', centre(fixed.groove, 'the middle of the groove round the PTO stub', 'groove'), {
      not: [not('the end of the stub', fixed.stubEnd)],
      enlarged: { on: [fixed.groove[0] + 14, fixed.groove[1]], reach: 46 },
    }),
    shaftEnd: behindAxle('stub', edge(fixed.stubEnd, 'the end of the PTO stub', 'end'), {
      not: [not('the groove', fixed.groove)],
      enlarged: { on: [fixed.groove[0] + 18, fixed.groove[1]], reach: 46 },
    }),
    crossCentre: behindAxle(
      'joint',
      centre(fixed.stubCross, 'the centre of the cross of the joint on it', 'cross centre'),
      {
        sketch: linkage('middle', ['joint']),
        not: [not('the end of the yoke', fixed.yokeEnd)],
        enlarged: { on: [fixed.stubCross[0] - 14, fixed.stubCross[1]], reach: 52 },
      },
    ),
  },
  stubHeight: aboveGround(
    'stub',
    centre(fixed.stubEnd, 'the centre of the PTO stub', 'stub centre'),
    fixed.stubEnd[0] + 60,
    { not: [not('its top', fixed.stubTop)], show: nearAxle },
  ),
  stubGrooveToEnd: grooveToEnd('PTO stub'),
};

/** The tractor’s end of the linkage, from the side and close up. */
export const linkageRows: Readonly<Record<string, TapeRows>> = {
  ...linkRows,
  ...heightRows,
  ...armRows,
  ...stubRows,
  ...linkEndRows,
};

/** The link ends above the ground with an implement carried. */
export const carryRow: TapeRow = ballHeight('high', 'the bottom of the ball', 'as high as it is carried or unloaded');
