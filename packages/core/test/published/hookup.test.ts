import { describe, expect } from 'vitest';
import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import { judgeSetup } from '../../src/engine/assess/index.ts';
import { readSetup, type SetupDocument } from '../../src/records/index.ts';
import { published } from './register.ts';

function finding(document: SetupDocument, id: CheckId): Finding {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const found = judgeSetup(reading.setup, { thresholds: false }).findings.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no finding ${id}`);
  return found;
}

/** Published figures of one side put into the checks against the other; nothing else is known. */
function direct(tractor: SetupDocument, implement: SetupDocument): SetupDocument {
  return { hitchwright: 1, units: 'metric', tractor, implement };
}

describe('published pins against published bores, through the checks', () => {
  // Pins: seed drill manual, page 21 (category 2, 3, 4), compact tractor manual, category 1. Bores: specialist tractor manual, page 46.
  const pairs = [
    { category: '1', pin: 22.2, bore: 22.4, play: 0.2 },
    { category: '2', pin: 28, bore: 28.7, play: 0.7 },
    { category: '3', pin: 36.6, bore: 37.4, play: 0.8 },
  ];
  for (const { category, pin, bore, play } of pairs) {
    published(
      {
        source: 'manual-specialist-tractor',
        locator: 'page 46, with the pins of hitch figures 1 and 9',
        kind: 'computes',
        title: `category ${category}: pin ${pin} in bore ${bore} fits with ${play} mm of play`,
      },
      () => {
        const result = finding(direct({ lowerBallBore: bore }, { lowerPinDiameter: pin }), 'front.lowerPin');
        expect(result.status).toBe('pass');
        expect(result.quantity?.low).toBeCloseTo(play, 9);
      },
    );
  }
  published(
    {
      source: 'manual-specialist-tractor',
      locator: 'page 46',
      kind: 'computes',
      title: 'a category 2 pin (28) does not go into a category 1 bore (22.4): 5.6 mm too thick',
    },
    () => {
      const result = finding(direct({ lowerBallBore: 22.4 }, { lowerPinDiameter: 28 }), 'front.lowerPin');
      expect(result.status).toBe('fail');
      expect(result.margin?.high).toBeCloseTo(-5.6, 9);
    },
  );
  published(
    {
      source: 'manual-specialist-tractor',
      locator: 'page 46',
      kind: 'computes',
      title: 'a category 1 pin (22.2) in a category 2 bore (28.7) is loose by 6.5 mm of play',
    },
    () => {
      const result = finding(direct({ lowerBallBore: 28.7 }, { lowerPinDiameter: 22.2 }), 'front.lowerPin');
      expect(result.status).toBe('fail');
      expect(result.side).toBe('high');
      expect(result.quantity?.low).toBeCloseTo(6.5, 9);
    },
  );
});

describe('published spans, through the checks', () => {
  const centres = [
    { category: '2', shoulders: 825, ball: 45, between: 870 },
    { category: '3', shoulders: 965, ball: 45, between: 1010 },
  ];
  for (const { category, shoulders, ball, between } of centres) {
    published(
      {
        source: 'din-iso-730-1-shop-summary',
        locator: 'ball-centre span, with hitch figures 2, 5 and 6',
        kind: 'computes',
        title: `category ${category}: shoulders ${shoulders} with balls ${ball} wide want ball centres ${between}`,
      },
      () => {
        const tractor = { lowerBallWidth: ball, ballSpan: { adjustable: { between: [between - 1, between + 1] } } };
        const result = finding(direct(tractor, { shoulderSpan: shoulders }), 'front.span');
        expect(result.status).toBe('pass');
        expect(result.quantity?.low).toBeCloseTo(between, 9);
      },
    );
  }
  published(
    {
      source: 'manual-utility-category-2-later',
      locator: 'page 5-67',
      kind: 'computes',
      title: 'category 2 span 825 ±1.5 keeps its tolerance: the balls want 868.5 to 871.5',
    },
    () => {
      const tractor = { lowerBallWidth: 45, ballSpan: { adjustable: { between: [868.5, 871.5] } } };
      const result = finding(direct(tractor, { shoulderSpan: { value: 825, plusMinus: 1.5 } }), 'front.span');
      expect(result.status).toBe('pass');
      expect(result.quantity).toEqual({ low: 868.5, high: 871.5 });
      const tighter = { lowerBallWidth: 45, ballSpan: { adjustable: { between: [869, 871.5] } } };
      expect(finding(direct(tighter, { shoulderSpan: { value: 825, plusMinus: 1.5 } }), 'front.span').status).toBe(
        'undecided',
      );
    },
  );
  published(
    {
      source: 'iso-730-2009',
      locator: 'clause 3.1.5',
      kind: 'computes',
      title: 'a 3N implement (36.6 pins on 825) goes on category 3 balls set to a category 2 spread',
    },
    () => {
      const tractor = { lowerBallBore: 37.4, lowerBallWidth: 45, ballSpan: { adjustable: { between: [860, 880] } } };
      const implement = { lowerPinDiameter: 36.6, shoulderSpan: 825 };
      expect(finding(direct(tractor, implement), 'front.span').status).toBe('pass');
      expect(finding(direct(tractor, implement), 'front.lowerPin').status).toBe('pass');
    },
  );
});

describe('category 1 implement dimensions of a printed table, through the checks', () => {
  // Gap 44.5, mast hole 19.1, lower pin 22.2, shoulder span 682.6, mast 457 (18 in), step to hole 38.9.
  const implement = {
    mounting: 'threePoint',
    lowerPinDiameter: 22.2,
    shoulderSpan: 682.6,
    shoulderToHole: 38.9,
    mastHeight: 457,
    upperPinDiameter: 19,
    clevisGap: 44.5,
  };
  published(
    {
      source: 'manual-compact-category-1',
      locator: 'implement identification dimensions A to D',
      kind: 'computes',
      title: 'wants ball centres 717.6 with 35 mm balls, inside the printed 718 of the tractor side within 0.5 mm',
    },
    () => {
      const result = finding(
        direct({ lowerBallWidth: 35, ballSpan: { adjustable: { between: [700, 760] } } }, implement),
        'front.span',
      );
      expect(Math.abs((result.quantity?.low ?? 0) - 718)).toBeLessThanOrEqual(0.5);
    },
  );
  published(
    {
      source: 'manual-compact-category-1',
      locator: 'implement identification dimensions A to D',
      kind: 'computes',
      title: 'its clevis takes a 44 mm ball with 0.5 mm to spare',
    },
    () => {
      expect(finding(direct({ upperBallWidth: 44 }, implement), 'front.clevis').margin?.low).toBeCloseTo(0.5, 9);
    },
  );
  published(
    {
      source: 'manual-utility-category-1-2',
      locator: 'page 16, row “hitch pin”',
      kind: 'computes',
      title: 'its retaining hole stands 38.9 mm out: a 35 mm ball and a 3 mm washer leave 0.9 mm',
    },
    () => {
      const result = finding(direct({ lowerBallWidth: 35 }, { ...implement, washer: 3 }), 'front.retention');
      expect(result.margin?.low).toBeCloseTo(0.9, 9);
    },
  );
});

describe('both mast generations, through the mast check', () => {
  const hook = (height: number) => ({
    kind: 'uFrame',
    topHookHeight: height,
    topHookBehind: 0,
    topHookThroat: 27,
    topHookPlay: 2,
  });
  const mast = (mastHeight: number, topHook: number): Finding =>
    finding(
      {
        hitchwright: 1,
        units: 'metric',
        tractor: {},
        coupler: hook(topHook),
        implement: { mounting: 'threePoint', mastHeight, mastSetback: 0, upperPinDiameter: 25.4 },
      },
      'rear.mast',
    );
  published(
    {
      source: 'hitch-width-pages',
      locator: 'category 2 mast 610',
      kind: 'computes',
      title: 'a category 2 mast of 610 meets a hook at 610 and misses one at 483 by 125 mm',
    },
    () => {
      expect(mast(610, 610).status).toBe('pass');
      expect(mast(610, 483).status).toBe('fail');
      expect(mast(610, 483).margin?.low).toBeCloseTo(2 - 127, 9);
    },
  );
  published(
    {
      source: 'manual-utility-category-1-2',
      locator: 'page 16, category II mast 19 in',
      kind: 'computes',
      title: 'a category 2 mast of the older family (483) meets a hook at 483 and not one at 610',
    },
    () => {
      expect(mast(483, 483).status).toBe('pass');
      expect(mast(483, 610).side).toBe('low');
    },
  );
});
