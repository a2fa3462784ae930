import { describe, expect, test } from 'vitest';
import { readSetup, withEdits } from '../../src/records/index.ts';
import { answer, example, finding } from '../asked.ts';
import { askOf } from '../../src/words/index.ts';

describe('cures that must not be offered', () => {
  test('an upper bushing whose bore is too small for the pin', () => {
    const document = example('kinds/bareBalls-fits', [
      { path: 'tractor.upperBallBore', value: 25.5 },
      { path: 'implement.upperPinDiameter', value: 22 },
      { path: 'parts', value: [{ kind: 'upperBushing', name: 'top bushing', inside: 19.1, outside: 25.3 }] },
    ]);
    expect(answer(document).outcomes.hooksUp).toBe('willNot');
    expect(answer(document).cures).toEqual([]);
  });
  test('pins turned round on a span that was read between ball centres', () => {
    const document = example('kinds/bareBalls-fits', [
      { path: 'implement.shoulderSpan', value: { value: 790, from: 'ballCentre' } },
      { path: 'implement.plateThickness', value: 20 },
      { path: 'implement.pinFixing', value: 'bolted' },
      { path: 'parts', value: [] },
    ]);
    expect(answer(document).cures.filter(({ kind }) => kind === 'reversePins')).toEqual([]);
  });
  test('a bushing cut to more than its length', () => {
    const document = example('kinds/bareBalls-fits', [
      { path: 'tractor.lowerBallBore', value: 28.7 },
      { path: 'implement.standOut', value: 70 },
      { path: 'implement.shoulderToHole', value: 60 },
      {
        path: 'parts',
        value: [{ kind: 'lowerBushings', name: 'pair of bushings', inside: 22.3, outside: 28.55, length: 35 }],
      },
    ]);
    const { cures } = answer(document);
    expect(cures.map(({ kind }) => kind)).toEqual(['part']);
  });
});

describe('what is asked for', () => {
  test('hook ends do not ask for a shoulder span that they have not', () => {
    const document = example('kinds/hookEnds-fits', [{ path: 'coupler.category', value: undefined }]);
    expect(finding(document, 'front.topLink').drivers.map(({ path }) => path)).not.toContain(
      'coupler.front.shoulderSpan',
    );
  });
  test('nothing asks for the mast of an implement that has no upper pin', () => {
    const drivers = answer(example('auger-on-coupler')).findings.flatMap((one) => one.drivers.map(({ path }) => path));
    expect(drivers.filter((path) => path.startsWith('implement.mast'))).toEqual([]);
  });
  test('a threshold never reads from more to less', () => {
    const document = {
      hitchwright: 1,
      tractor: { category: '1' },
      coupler: { kind: 'uFrame', category: '1' },
      implement: { category: '1', mounting: 'threePoint' },
    };
    let ranges = 0;
    for (const system of ['us', 'metric'] as const) {
      for (const one of answer(document, { full: true }).findings) {
        const [, low = '', high = ''] = /between (.+?) \(.+? and (.+?) \(/.exec(askOf(one, system) ?? '') ?? [];
        if (low === '') continue;
        ranges += 1;
        expect(low, askOf(one, system) ?? '').not.toBe(high);
      }
    }
    expect(ranges).toBeGreaterThan(6);
  });
});

describe('two pin rows', () => {
  const ripper = example('ripper-two-pin-rows');
  test('a check that passes with one of two rows is shown at that row, never with a negative margin', () => {
    const open = withEdits(ripper, [{ path: 'tractor', value: {} }]);
    for (const one of answer(open).findings.filter(({ status }) => status === 'pass')) {
      if (one.margin?.low != null) expect(one.margin.low, one.id).toBeGreaterThanOrEqual(-1e-9);
    }
  });
  test('rows, slot and tape tolerances together are settled', () => {
    const taped = withEdits(ripper, [
      { path: 'implement.mastHeight', value: { value: 610, plusMinus: 1.5 } },
      { path: 'implement.secondRow.rise', value: { value: 150, plusMinus: 1 } },
    ]);
    expect(
      answer(taped)
        .findings.filter(({ unresolved }) => unresolved)
        .map(({ id }) => id),
    ).toEqual([]);
  });
});

describe('the reader loses nothing and lets nothing pass by', () => {
  const cases: readonly (readonly [string, Record<string, unknown>, string])[] = [
    [
      'a tolerance beside a range',
      { implement: { mastHeight: { between: [440, 460], plusMinus: 5 } } },
      'unknown-key implement.mastHeight.plusMinus',
    ],
    [
      'a default beside a figure',
      { implement: { mastHeight: { value: 457, default: 'class' } } },
      'unknown-key implement.mastHeight.default',
    ],
    [
      'an unknown key in an adjuster',
      { tractor: { topLinkLength: { adjustable: { between: [500, 700], hole: 2 } } } },
      'unknown-key tractor.topLinkLength.adjustable.hole',
    ],
    [
      'holes and a range at once',
      { implement: { mastHeight: { adjustable: { at: [457], between: [440, 460] } } } },
      'unknown-key implement.mastHeight.adjustable.between',
    ],
    [
      'a tolerance as large as the figure',
      { implement: { mastHeight: { value: 457, plusMinus: 499 } } },
      'out-of-range implement.mastHeight.plusMinus',
    ],
    [
      'an adjuster on the front of a coupler',
      { coupler: { kind: 'uFrame', front: { lowerPinDiameter: { adjustable: { at: [22] } } } } },
      'contradiction coupler.front.lowerPinDiameter',
    ],
    [
      'an adjuster in a second row',
      { implement: { secondRow: { standOut: { adjustable: { at: [60] } } } } },
      'contradiction implement.secondRow.standOut',
    ],
    [
      'an adjuster in a part',
      { parts: [{ kind: 'upperBushing', name: 'x', inside: { adjustable: { at: [19] } }, outside: 25 }] },
      'contradiction parts.0.inside',
    ],
  ];
  for (const [title, part, expected] of cases) {
    test(`${title} is refused`, () => {
      const reading = readSetup({ hitchwright: 1, tractor: {}, implement: {}, ...part });
      expect(reading.ok ? [] : reading.errors.map(({ code, path }) => `${code} ${path}`)).toContain(expected);
    });
  }
});
