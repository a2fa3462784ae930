import { describe, expect } from 'vitest';
import { shaftCandidates } from '../../src/engine/assess/shaftCandidates.ts';
import { withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { judgedDrive } from '../properties/shaftDrive.ts';
import { published } from './register.ts';

const inch = 25.4;

/** Links that run parallel and level: the shaft is shortest where both its ends are level with one another. */
const shaftEndBehindAxle = 294;
const pinsBehindAxle = 120 + 760;

interface Shaft {
  /** Between the points read at stub and input shaft, at the shortest. */
  readonly gap: number;
  readonly from: 'shaftEnd' | 'groove';
  readonly rules: string;
  readonly shaft: Record<string, unknown>;
}

function setup({ gap, from, rules, shaft }: Shaft): SetupDocument {
  const pins = { lowerPinDiameter: 22.2, shoulderSpan: 683, standOut: 62, shoulderToHole: 46, washer: 2 };
  const inputBehind = gap - (pinsBehindAxle - shaftEndBehindAxle);
  return {
    hitchwright: 1,
    tractor: {
      ...{ lowerBallBore: 22.4, lowerBallWidth: 35, upperBallBore: 19.3, upperBallWidth: 42, sidePlay: 4 },
      ...{ lowerLinkLength: 760, lowerLinkPivotSpan: 718, lowerLinkPivotBehindAxle: 120, lowerLinkPivotHeight: 500 },
      ...{ topLinkPivotBehindAxle: 120, topLinkPivotHeight: 960, ballHeightLow: 490, ballHeightHigh: 510 },
      ballSpan: { adjustable: { between: [640, 760] } },
      topLinkLength: { adjustable: { between: [650, 850] } },
      stubBehindAxle: { value: shaftEndBehindAxle, from },
      ...{ stubHeight: 500, stubAside: 0, stubGrooveToEnd: 38, ptoType: 1 },
    },
    implement: {
      ...{ mounting: 'threePoint', ...pins, upperPinDiameter: 19, clevisGap: 46, clevisOuterWidth: 70 },
      ...{ mastHeight: 460, mastSetback: 0, workPinHeight: 500, carryHeight: 505, parkedPinHeight: 490 },
      ...{ driven: true, inputType: 1, inputSpeed: 540, inputAbove: 0, inputAside: 0, inputAngle: 0 },
      inputBehind: { value: inputBehind, from },
      inputGrooveToEnd: 38,
    },
    shaft: { tractorType: 1, implementType: 1, closedOverlap: 600, profileLength: 640, bindAngle: 75, ...shaft },
    rules: { driveShaft: rules },
  };
}

/** What is cut off both halves, in whole millimetres. */
function cutOffered(document: SetupDocument): number | null {
  const { setup: read, findings } = judgedDrive(document);
  const failing = findings.filter(({ status }) => status === 'fail');
  const candidates = shaftCandidates({ document, setup: read, failing, sweep: null });
  return candidates.find(({ kind }) => kind === 'cutShaft')?.amount ?? null;
}

describe('shortest gap 27 in from shaft end to shaft end, closed shaft 32 in', () => {
  const source = 'manual-trimmer-mower';
  const locator = 'p. 9, its worked figures';
  published(
    { source, locator, kind: 'reads', title: 'its own sum: 27 + 2 = 29, and 32 − 29 = 3 in off each half' },
    () => {
      expect(32 - (27 + 2)).toBe(3);
    },
  );
  // The manual holds the yokes' outer ends against the shaft ends; how much of the shaft a yoke takes it leaves out.
  const reach = 57;
  const taken = 2 * inch;
  const document = setup({
    gap: 27 * inch,
    from: 'shaftEnd',
    rules: 'usual',
    shaft: {
      closedLength: { value: 32 * inch, from: 'yokeEnds' },
      yokeReachFront: { value: reach, from: 'shaftEnd' },
      yokeReachRear: { value: reach, from: 'shaftEnd' },
      yokeOverCross: reach + taken,
    },
  });
  const title = 'with yokes that take 2 in of each shaft, and 50 mm for its 2 in, both halves are cut by 76 mm: 3 in';
  published({ source, locator, kind: 'computes', title }, () => {
    const bottoming = judgedDrive(document).of('shaft.bottoming');
    expect(bottoming.status).toBe('fail');
    // 27 − 2·reach against 32 − 2·(reach + 2): an inch short of bottoming, and 50 mm wanted.
    expect(bottoming.margin?.low).toBeCloseTo(-inch - 50, 0);
    expect(cutOffered(document)).toBe(Math.round(3 * inch));
  });
  published(
    {
      source,
      locator,
      kind: 'computes',
      title: 'cut by 3 in it keeps the 2 in, and by a quarter inch less it does not',
    },
    () => {
      const cutBy = (inches: number): Edit[] => [
        { path: 'shaft.closedLength', value: { value: (32 - inches) * inch, from: 'yokeEnds' } },
        { path: 'shaft.closedOverlap', value: 600 - inches * inch },
      ];
      const left = (inches: number) => judgedDrive(withEdits(document, cutBy(inches))).of('shaft.bottoming');
      expect(left(3).status).toBe('pass');
      expect(left(3).quantity?.low).toBeCloseTo(2 * inch, 0);
      expect(left(2.75).status).not.toBe('pass');
    },
  );
});

describe('groove to groove: A at the machine, B at the closed shaft, cut B − A + 25 mm', () => {
  for (const [a, b] of [
    [600, 639.5],
    [700, 689.5],
    [655, 670.5],
  ] as const) {
    published(
      {
        source: 'manual-groove-to-groove',
        locator: 'chipper p. 21, the rule; lengths ours',
        kind: 'computes',
        title: `A ${a} mm, B ${b} mm: ${b - a + 25} mm off both halves, up to a whole one, whatever the yokes measure`,
      },
      () => {
        for (const reach of [52, 75]) {
          const shaft = {
            closedLength: { value: b, from: 'pinToPin' },
            yokeReachFront: { value: reach, from: 'shaftEnd' },
            yokeReachRear: { value: reach + 9, from: 'groove' },
          };
          const offered = cutOffered(setup({ gap: a, from: 'groove', rules: 'oneInch', shaft }));
          expect(offered).toBe(Math.ceil(b - a + 25));
        }
      },
    );
  }
});
