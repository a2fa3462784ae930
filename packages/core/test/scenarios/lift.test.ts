import { describe, expect, test } from 'vitest';
import { assess, type Answer } from '../../src/engine/assess/index.ts';
import type { Edit, SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';
import { setup } from './yard.ts';

/** The story leaves the top link out: the lift then stands on its ratings alone. */
const noTopLink: readonly Edit[] = [
  { path: 'tractor.topLinkPivotBehindAxle', value: null },
  { path: 'tractor.topLinkPivotHeight', value: null },
];
const asRated: Edit = { path: 'rules', value: { liftAllowance: 'asRated' } };

function low(of: Answer | SetupDocument, id: Parameters<typeof finding>[1]): number {
  return finding(of, id).margin?.low ?? NaN;
}

describe('scenario B: the subcompact and a heavy cutter, 385 kg at 762 mm', () => {
  const story = [
    ...noTopLink,
    asRated,
    { path: 'implement.mass', value: 385 },
    { path: 'implement.centreBehind', value: 762 },
  ];
  test('by its ratings alone it will not lift: 277 kg at most at 30 in, as the story has it', () => {
    const result = answer(setup('24', null, 'heavy cutter', story));
    expect(result.liftBasis).toBe('ratings');
    expect(result.verdict).toBe('willNot');
    expect(result.lead?.id).toBe('lift.force');
    // 1/F on the line through 520 kg at the balls and 306 kg at 610 mm.
    const line = 1 / (1 / 520 + (762 / 610) * (1 / 306 - 1 / 520));
    expect(Math.floor(line)).toBe(277);
    expect(finding(result, 'lift.force').margin?.high).toBeCloseTo(line - 385, 6);
    expect(finding(result, 'lift.force').margin?.low).toBeCloseTo((306 * 610) / 762 - 385, 6);
  });
  test('with the linkage of the yard it fails for the same reason', () => {
    const result = answer(setup('24', null, 'heavy cutter'));
    expect(result.liftBasis).toBe('linkage');
    expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'lift.force']);
  });
  test('a cutter of 170 kg at 559 mm is lifted', () => {
    const light = [
      { path: 'implement.mass', value: 170 },
      { path: 'implement.centreBehind', value: 559 },
    ];
    expect(finding(setup('24', null, 'heavy cutter', light), 'lift.force').status).toBe('pass');
  });
});

describe('scenario C: the compact tractor and a bale of 450 kg on its spear', () => {
  test('with the linkage it lifts: 532 kg, and to spare', () => {
    const result = answer(setup('35', null, 'bale spear'));
    expect([result.outcomes.lifts, finding(result, 'lift.force').status]).toEqual(['works', 'pass']);
  });
  test('by its ratings alone 10 % off leaves it open, and as rated it passes: the story’s 755 kg is the most, 581 kg the least', () => {
    const atStory = [
      { path: 'implement.mass', value: 532 },
      { path: 'implement.centreBehind', value: 914 },
      { path: 'implement.carriedMass', value: null },
      { path: 'implement.carriedBehind', value: null },
      { path: 'implement.carriedAbove', value: null },
    ];
    const open = finding(setup('35', null, 'bale spear', [...noTopLink, ...atStory]), 'lift.force');
    const least = (870 * 610) / 914;
    const most = 1 / (1 / 1250 + (914 / 610) * (1 / 870 - 1 / 1250));
    expect(Math.floor(most)).toBe(755);
    expect(open.status).toBe('undecided');
    expect(open.margin?.low).toBeCloseTo(0.9 * least - 532, 6);
    expect(open.margin?.high).toBeCloseTo(0.9 * most - 532, 6);
    expect(finding(setup('35', null, 'bale spear', [...noTopLink, ...atStory, asRated]), 'lift.force').status).toBe(
      'pass',
    );
  });
});

describe('the auger of scenario A', () => {
  test('wants its pins at 838 mm and the lift ends at 810: 28 mm short', () => {
    const result = answer(setup('35', null, 'post auger'));
    expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'lift.height']);
    expect(low(result, 'lift.height')).toBeCloseTo(-28, 6);
  });
  test('the utility tractor carries it high enough', () => {
    expect(low(setup('55', null, 'post auger'), 'lift.height')).toBeCloseTo(900 - 838, 6);
  });
});

describe('scenario G: a narrow lane, links spread to 749 mm between tyres 660 mm apart', () => {
  /** Pins that make the balls stand apart as wanted. */
  const spread = (centres: number, play: unknown): Edit[] => [
    { path: 'tractor.tyreInnerSpan', value: 660 },
    { path: 'tractor.tyreRadius', value: 400 },
    { path: 'tractor.lowerLinkThickness', value: 20 },
    { path: 'tractor.sidePlay', value: play },
    { path: 'implement.shoulderSpan', value: centres - 35 },
  ];
  /** The gap at one height, worked out point by point along the link. */
  function gapAt(centres: number, height: number, play: number): number {
    const splay = (centres - 380) / 2;
    const length = Math.sqrt(560 ** 2 - splay ** 2);
    const angle = Math.asin((height - 330) / length);
    let farthest = 0;
    for (let s = 0; s <= length; s += 0.01) {
      const [x, z] = [60 + s * Math.cos(angle), 330 + s * Math.sin(angle)];
      if (x ** 2 + (z - 400) ** 2 <= 400 ** 2) farthest = s;
    }
    return 330 - (190 + (splay * farthest) / length + 10 + play);
  }
  test('the outer face touches the tyre: contact, as the story has it', () => {
    const result = answer(setup('24', null, 'chipper', spread(749, { between: [12, 25] })));
    expect(finding(result, 'contact.tyre').status).toBe('fail');
    expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'contact.tyre']);
  });
  test('at 690 mm it is clear by the least play; point by point along the link the gap is the same to a hundredth', () => {
    const result = finding(setup('24', null, 'chipper', spread(690, 12)), 'contact.tyre');
    expect(result.status).toBe('pass');
    const heights = Array.from({ length: 91 }, (_, i) => 170 + 5 * i);
    const least = Math.min(...heights.map((height) => gapAt(690, height, 12)));
    expect(result.quantity?.low).toBeCloseTo(least, 1);
    // The story’s 36 mm less play hold with the links level; right up, where the link leaves the tyre later, less is left.
    expect(gapAt(690, 330, 0)).toBeGreaterThan(33);
    expect(gapAt(690, 620, 0)).toBeLessThan(23);
  });
});

describe('what the answer says of the lift', () => {
  test('an answer in full carries the sweep, and its stations close', () => {
    const assessment = assess(setup('35', 'U-28', '60-in tiller'));
    if (!assessment.ok) throw new Error('can’t be read');
    const { sweep } = assessment.answer;
    expect(sweep?.stations.length).toBe(61);
    expect(sweep?.unreachable).toBeNull();
    expect(sweep?.stations[0]?.ballHeight).toBeCloseTo(200, 9);
    expect(sweep?.stations.at(-1)?.ballHeight).toBeCloseTo(810, 9);
    for (const { topEnd } of sweep?.stations ?? []) {
      const [x, z] = topEnd;
      expect(Math.hypot(x - 270, z - 800)).toBeCloseTo(sweep?.topLink ?? NaN, 6);
    }
  });
  test('a lift stop ends the lift there', () => {
    const stopped = setup('35', null, '60-in tiller', [{ path: 'tractor.liftStopHeight', value: 590 }]);
    expect(low(stopped, 'lift.height')).toBeCloseTo(-10, 6);
  });
  test('outlines that come near the cab are found at the height where they do', () => {
    const box = (x: number, z: number, wide: number, tall: number) => [
      [x, z],
      [x + wide, z],
      [x + wide, z + tall],
      [x, z + tall],
    ];
    const cab = (behind: number): Edit[] => [
      { path: 'tractor.outlines', value: [{ name: 'cab', part: 'cab', side: box(behind - 400, 1000, 400, 900) }] },
      { path: 'implement.outlines', value: [{ name: 'hood', part: 'guard', side: box(0, -350, 900, 800) }] },
    ];
    expect(finding(setup('35', null, '60-in tiller', cab(200)), 'contact.machines').status).toBe('pass');
    expect(finding(setup('35', null, '60-in tiller', cab(760)), 'contact.machines').status).toBe('fail');
  });
});
