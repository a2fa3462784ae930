import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readingOf, toolsFor } from '../../src/engine/advice/index.ts';
import {
  agreementOf,
  allowedApart,
  doubtsAbout,
  editFor,
  mergeOf,
  partsOf,
  takenAs,
  wayQuestion,
  type Taking,
  type Typed,
} from '../../src/engine/readings/index.ts';
import { atPath, fieldRules, readSetup, readValue, withEdits, type SetupDocument } from '../../src/records/index.ts';
import { canonicalUnit, readQuantity } from '../../src/units/index.ts';
import { category, classRoom, documentOf, eitherWay, share, shownBy, truthOf, type Truth } from './readingTruth.ts';

const ruleOf = (path: string) => {
  const rule = fieldRules.get(path.split('.adjustable.')[0] ?? path);
  if (rule === undefined) throw new Error(path);
  return rule;
};

/** A text as the pages read it; null where the field refuses it. */
function typedAs(path: string, text: string): Typed | null {
  const rule = ruleOf(path);
  const reading = readQuantity(text, { dimension: rule.dimension, range: rule, assume: 'us' });
  return reading.ok ? { text, value: reading.value } : null;
}

/** A figure to 1/1000 in its canonical unit. */
function plainly(path: string, value: number): Typed {
  const typed = typedAs(path, `${Math.round(value * 1000) / 1000} ${canonicalUnit[ruleOf(path).dimension]}`);
  if (typed === null) throw new Error(`${path} refuses ${value}`);
  return typed;
}

/** Ways to write a length: millimetres, sixteenths of an inch, thousandths of an inch. */
function writings(path: string, value: number): Typed[] {
  const unit = canonicalUnit[ruleOf(path).dimension];
  const plain = [`${value.toFixed(1)} ${unit}`, `${value.toFixed(3)} ${unit}`];
  const inches = Math.abs(value) / 25.4;
  const minus = value < 0 ? '-' : '';
  const sixteenths = Math.round(inches * 16);
  const fraction = `${minus}${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16 in`;
  const texts = unit === 'mm' ? [...plain, fraction, `${minus}${inches.toFixed(3)} in`] : plain;
  return texts.flatMap((text) => typedAs(path, text) ?? []);
}

const inRange = (path: string, value: number): boolean => value >= ruleOf(path).min && value <= ruleOf(path).max;
const all = () => true;

describe('a true machine, read no worse than its tools read', () => {
  const count = { readings: 0, fields: new Set<string>() };
  test('raises no doubt: every category, every field, every tool, however much of it is known', () => {
    fc.assert(
      fc.property(
        category.chain((of) => fc.tuple(fc.constant(of), truthOf(of))),
        share,
        eitherWay,
        fc.nat(),
        ([of, truth], knownShare, off, salt) => {
          const known = (path: string): boolean => (hash(path, salt) % 1000) / 1000 < knownShare;
          const document = documentOf(of, truth, known, off / 2);
          for (const [path, value] of truth)
            for (const tool of toolsFor(path)) {
              const shown = shownBy(path, value, off, tool);
              for (const typed of writings(path, shown)) {
                if (Math.abs(typed.value - value) > readingOf(path, typed.value, tool).accuracy) continue;
                expect(doubtsAbout(document, path, typed, undefined, tool), `${path} ${typed.text}`).toEqual([]);
                count.readings += 1;
                count.fields.add(path);
              }
            }
        },
      ),
      { numRuns: 120 },
    );
    expect(count.fields.size).toBe(fieldRules.size);
    expect(count.readings).toBeGreaterThan(60_000);
  });
  test('the two ends of the links’ spread raise none either', () => {
    for (const [of, narrow, wide] of [
      ['1', 640, 760],
      ['2', 700, 900],
    ] as const) {
      const document = documentOf(of, new Map(), all);
      for (const [end, value] of [narrow, wide].entries())
        expect(
          doubtsAbout(document, `tractor.ballSpan.adjustable.between.${end}`, plainly('tractor.ballSpan', value)),
        ).toEqual([]);
    }
  });
});

/** A number from a text and a salt: which fields are known changes from run to run. */
function hash(text: string, salt: number): number {
  return [...text].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0) + salt) % 1_000_003, salt % 1_000_003);
}

/** What a tape shows that is laid between other points, by field and way; `a` and `b` are what nobody knows, from 0 to 1. */
type Shown = (truth: Truth, a: number, b: number) => number;
const at = (truth: Truth, path: string): number => truth.get(path) as number;

const shownOnPins = (machine: string, sign: 1 | -1): Record<string, Record<string, Shown>> => {
  const of = (truth: Truth, field: string): number => at(truth, `${machine}.${field}`);
  const collar = (a: number): number => 12 * a;
  const halves = (truth: Truth) => [of(truth, 'lowerPinDiameter') / 2, of(truth, 'upperPinDiameter') / 2] as const;
  const inward = sign === -1;
  return {
    shoulderSpan: {
      pinTips: (truth) => of(truth, 'shoulderSpan') + 2 * sign * of(truth, 'standOut'),
      insidePlates: (truth, a) =>
        of(truth, 'shoulderSpan') + (inward ? 2 * collar(a) : -2 * collar(a) - 2 * of(truth, 'plateThickness')),
      outsidePlates: (truth, a) =>
        of(truth, 'shoulderSpan') + (inward ? 2 * collar(a) + 2 * of(truth, 'plateThickness') : -2 * collar(a)),
    },
    mastHeight: {
      bottoms: (truth) => of(truth, 'mastHeight') - halves(truth)[1] + halves(truth)[0],
      tops: (truth) => of(truth, 'mastHeight') + halves(truth)[1] - halves(truth)[0],
      outside: (truth) => of(truth, 'mastHeight') + halves(truth)[1] + halves(truth)[0],
      inside: (truth) => of(truth, 'mastHeight') - halves(truth)[1] - halves(truth)[0],
      alongMast: (truth) => Math.hypot(of(truth, 'mastHeight'), of(truth, 'mastSetback')),
    },
    lowerPinDiameter: {
      coated: (truth, a) => of(truth, 'lowerPinDiameter') + 0.2 + 0.6 * a,
      worn: (truth, a) => of(truth, 'lowerPinDiameter') - 2 * a,
    },
    upperPinDiameter: {
      coated: (truth, a) => of(truth, 'upperPinDiameter') + 0.2 + 0.6 * a,
      worn: (truth, a) => of(truth, 'upperPinDiameter') - 2 * a,
    },
  };
};

const shownOnHeights = (field: string): Record<string, Shown> => ({
  bottom: (truth) => at(truth, field) - at(truth, 'implement.lowerPinDiameter') / 2,
  top: (truth) => at(truth, field) + at(truth, 'implement.lowerPinDiameter') / 2,
});

const toldOf = (field: string): Record<string, Shown> => ({
  papers: (truth, a) => at(truth, field) / (0.97 + 0.18 * a),
  guess: (truth, a) => at(truth, field) / (0.75 + 0.5 * a),
});

const guessedOf = (field: string): Record<string, Shown> => ({
  guess: (truth, a) => at(truth, field) + 152.4 * (2 * a - 1),
});

function shownBetween(sign: 1 | -1): [path: string, way: string, shown: Shown][] {
  const pins = ['implement', 'implement.secondRow', 'coupler.front'].flatMap((machine) =>
    Object.entries(shownOnPins(machine, sign)).map(([field, ways]) => [`${machine}.${field}`, ways] as const),
  );
  const others: readonly (readonly [string, Record<string, Shown>])[] = [
    ['implement.parkedPinHeight', shownOnHeights('implement.parkedPinHeight')],
    ['implement.workPinHeight', shownOnHeights('implement.workPinHeight')],
    ['implement.mass', toldOf('implement.mass')],
    [
      'tractor.mass',
      { ...toldOf('tractor.mass'), driverOn: (truth) => at(truth, 'tractor.mass') + at(truth, 'tractor.driverMass') },
    ],
    ['implement.centreBehind', guessedOf('implement.centreBehind')],
    ['coupler.centreBehind', guessedOf('coupler.centreBehind')],
    [
      'coupler.hookSpan',
      {
        innerFaces: (truth) => at(truth, 'coupler.hookSpan') - at(truth, 'coupler.hookWidth'),
        outerFaces: (truth) => at(truth, 'coupler.hookSpan') + at(truth, 'coupler.hookWidth'),
      },
    ],
  ];
  return [...pins, ...others].flatMap(([path, ways]) =>
    Object.entries(ways).map(([way, shown]): [string, string, Shown] => [path, way, shown]),
  );
}

describe('a reading between other points', () => {
  test('each way that turns a reading is simulated here', () => {
    const simulated = shownBetween(1).map(([path, way]) => `${path} ${way}`);
    const known = [...fieldRules.keys()].flatMap((path) =>
      (wayQuestion(path)?.ways ?? []).filter(({ kind }) => kind === 'turned').map(({ key }) => `${path} ${key}`),
    );
    expect([...simulated].sort()).toEqual(known.sort());
  });
  test('becomes a range that holds the truth, whatever is known beside it', () => {
    let held = 0;
    fc.assert(
      fc.property(
        category.chain((of) => fc.tuple(fc.constant(of), truthOf(of))),
        fc.tuple(share, share, eitherWay, eitherWay),
        fc.constantFrom('all', 'none', 'some'),
        fc.constantFrom(1, -1) as fc.Arbitrary<1 | -1>,
        ([of, truth], [a, b, off, tolerance], beside, sign) => {
          const known = beside === 'some' ? (path: string) => hash(path, 7) % 2 === 0 : () => beside === 'all';
          const document = withEdits(documentOf(of, truth, known, tolerance / 2), pointing(sign));
          for (const [path, way, shown] of shownBetween(sign)) {
            const wrong = shown(truth, a, b);
            const read = shownBy(path, wrong, ['papers', 'guess'].includes(way) ? 0 : off);
            if (!inRange(path, read)) continue;
            const taken = takenAs(document, { path, typed: [{ text: String(read), value: read }], way });
            const figure = at(truth, path);
            expect(taken.ok, `${path} ${way} ${read}`).toBe(true);
            if (!taken.ok) continue;
            expect(taken.range.low, `${path} ${way}`).toBeLessThanOrEqual(figure + 1e-9);
            expect(taken.range.high, `${path} ${way}`).toBeGreaterThanOrEqual(figure - 1e-9);
            held += 1;
          }
        },
      ),
      { numRuns: 150 },
    );
    expect(held).toBeGreaterThan(5000);
  });
  test('and where everything beside it is known, one not much wider than the tools leave', () => {
    const truth: Truth = new Map([
      ['implement.standOut', 60],
      ['implement.lowerPinDiameter', 22.2],
      ['implement.upperPinDiameter', 19],
    ]);
    const document = documentOf('1', truth, all);
    const widthOf = (path: string, way: string, read: number): number => {
      const taken = takenAs(document, { path, typed: [plainly(path, read)], way });
      return taken.ok ? taken.range.high - taken.range.low : NaN;
    };
    expect(widthOf('implement.shoulderSpan', 'pinTips', 803)).toBeCloseTo(3 + 2 * 3, 6);
    expect(widthOf('implement.mastHeight', 'outside', 477)).toBeCloseTo(3 + 0.2, 6);
  });
});

const pointing = (sign: 1 | -1) =>
  ['implement', 'implement.secondRow', 'coupler.front'].map((machine) => ({
    path: `${machine}.pinsPoint`,
    value: sign === 1 ? 'out' : 'in',
  }));

/** What a tape shows between points that a record names, worked out here by hand. */
const named: readonly (readonly [path: string, from: string, shown: (truth: Truth, sign: 1 | -1) => number])[] = [
  [
    'implement.shoulderSpan',
    'ballCentre',
    (t, sign) => at(t, 'implement.shoulderSpan') + sign * at(t, 'tractor.lowerBallWidth'),
  ],
  ['implement.shoulderSpan', 'unsaid', (t) => at(t, 'implement.shoulderSpan')],
  [
    'implement.shoulderSpan',
    'unsaid',
    (t, sign) => at(t, 'implement.shoulderSpan') + sign * at(t, 'tractor.lowerBallWidth'),
  ],
  ['tractor.stubBehindAxle', 'shaftEnd', (t) => at(t, 'tractor.stubBehindAxle') + at(t, 'tractor.stubGrooveToEnd')],
  [
    'tractor.stubBehindAxle',
    'crossCentre',
    (t) => at(t, 'tractor.stubBehindAxle') + at(t, 'tractor.stubGrooveToEnd') + at(t, 'shaft.yokeReachFront'),
  ],
  ['implement.inputBehind', 'shaftEnd', (t) => at(t, 'implement.inputBehind') - at(t, 'implement.inputGrooveToEnd')],
  [
    'implement.inputBehind',
    'crossCentre',
    (t) => at(t, 'implement.inputBehind') - at(t, 'implement.inputGrooveToEnd') - at(t, 'shaft.yokeReachRear'),
  ],
  ['shaft.yokeReachFront', 'groove', (t) => at(t, 'shaft.yokeReachFront') + at(t, 'tractor.stubGrooveToEnd')],
  ['shaft.yokeReachRear', 'groove', (t) => at(t, 'shaft.yokeReachRear') + at(t, 'implement.inputGrooveToEnd')],
  ['shaft.closedLength', 'yokeEnds', (t) => at(t, 'shaft.closedLength') + 2 * at(t, 'shaft.yokeOverCross')],
  [
    'shaft.closedLength',
    'pinToPin',
    (t) =>
      at(t, 'shaft.closedLength') +
      at(t, 'shaft.yokeReachFront') +
      at(t, 'shaft.yokeReachRear') +
      at(t, 'tractor.stubGrooveToEnd') +
      at(t, 'implement.inputGrooveToEnd'),
  ],
];

describe('merging', () => {
  test('two right readings of one figure agree between whichever points, and a wrong one doesn’t', () => {
    let merged = 0;
    fc.assert(
      fc.property(
        category.chain((of) => fc.tuple(fc.constant(of), truthOf(of))),
        fc.tuple(eitherWay, eitherWay),
        fc.constantFrom(1, -1) as fc.Arbitrary<1 | -1>,
        ([of, truth], [off, tolerance], sign) => {
          const document = withEdits(documentOf(of, truth, all, tolerance / 2), pointing(sign));
          for (const [path, from, shown] of named) {
            const { accuracy } = readingOf(path, at(truth, path));
            const read = shown(truth, sign) + off * accuracy;
            if (!inRange(path, read)) continue;
            const value = { value: read, plusMinus: accuracy, from };
            expect(mergeOf(document, [{ path, value }])[0]?.state, `${path} ${from}`).toBe('agrees');
            const far = { ...value, value: read + 200 };
            if (from !== 'unsaid' && inRange(path, read + 200))
              expect(mergeOf(document, [{ path, value: far }])[0]?.state, `${path} ${from} far`).toBe('differs');
            merged += 1;
          }
        },
      ),
      { numRuns: 100 },
    );
    expect(merged).toBeGreaterThan(400);
  });
  test('is over after once: what was taken over is the same from then on', () => {
    fc.assert(
      fc.property(
        category.chain((of) => fc.tuple(fc.constant(of), truthOf(of), truthOf(of))),
        fc.constantFrom('us', 'metric'),
        ([of, here, there], units) => {
          const document = { ...documentOf(of, here, (path) => hash(path, 3) % 2 === 0), units };
          const readings = [...there]
            .filter(([path]) => hash(path, 5) % 3 === 0 && inRange(path, at(there, path)))
            .map(([path, value]) => ({ path, value: Math.round(value) }));
          const first = mergeOf(document, readings);
          expect(first.map(({ path }) => path)).toEqual(readings.map(({ path }) => path));
          const after = withEdits(document, readings);
          for (const { state, path } of mergeOf(after, readings)) expect(state, path).toBe('same');
        },
      ),
      { numRuns: 60 },
    );
  });
});

/** Fields and a figure that each of them takes. */
const anyField = fc.constantFrom(...fieldRules.keys());

describe('agreement', () => {
  const several = fc.array(eitherWay, { minLength: 1, maxLength: 6 });
  const anywhere = fc.tuple(anyField, share, several);
  const spreadOut = ([path, place, offs]: [string, number, number[]]) => {
    const { min, max } = ruleOf(path);
    const truth = min + (0.1 + 0.8 * place) * (max - min);
    const [first = truth, ...more] = offs.map((off) => shownBy(path, truth, off));
    return { path, truth, values: [first, ...more] as [number, ...number[]] };
  };
  const bare: SetupDocument = { hitchwright: 1, tractor: {}, implement: {} };
  test('readings within what the tool may be off agree, all of them, and hold the truth however many there are', () => {
    fc.assert(
      fc.property(anywhere, (drawn) => {
        const { path, truth, values } = spreadOut(drawn);
        for (let n = 1; n <= values.length; n += 1) {
          const some = values.slice(0, n) as [number, ...number[]];
          const agreement = agreementOf(bare, path, some);
          expect(agreement.kind).toBe(n === 1 ? 'once' : 'agrees');
          if (agreement.kind === 'agrees') expect([agreement.kept, agreement.setAside]).toEqual([n, 0]);
          expect(agreement.range.low).toBeLessThanOrEqual(truth + 1e-9);
          expect(agreement.range.high).toBeGreaterThanOrEqual(truth - 1e-9);
        }
      }),
      { numRuns: 2000 },
    );
  });
  test('the order in which they were taken does not matter', () => {
    fc.assert(
      fc.property(
        anyField,
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 2, maxLength: 5 }),
        (path, steps) => {
          const { min, max } = ruleOf(path);
          const { accuracy } = readingOf(path, max);
          const values = steps.map((step) => Math.min(max, min + (max - min) / 2 + (step * (accuracy + 0.01)) / 2));
          const orders = [values, [...values].reverse(), [...values].sort((a, b) => a - b), rotated(values)];
          const told = orders.map((order) => JSON.stringify(agreementOf(bare, path, order as [number, ...number[]])));
          expect(new Set(told).size).toBe(1);
        },
      ),
      { numRuns: 2000 },
    );
  });
  test('two that are farther apart than both may be off do not', () => {
    fc.assert(
      fc.property(anyField, share, (path, place) => {
        const { min, max } = ruleOf(path);
        const low = min + 0.3 * place * (max - min);
        const apart = Math.max(allowedApart(path, max), 0.01) * 1.01;
        const agreement = agreementOf(bare, path, [low, low + apart]);
        expect(agreement.kind).toBe('disagrees');
        expect(agreement.range.low).toBeLessThanOrEqual(low);
        expect(agreement.range.high).toBeGreaterThanOrEqual(low + apart);
      }),
    );
  });
  test('an outlier among two that agree is set aside', () => {
    expect(agreementOf(bare, 'implement.mastHeight', [457, 521, 458])).toEqual({
      kind: 'agrees',
      range: { low: 456, high: 459 },
      kept: 2,
      setAside: 1,
    });
  });
});

function rotated<T>([first, ...more]: readonly T[]): T[] {
  return first === undefined ? [] : [...more, first];
}

/** One taking of a field: where it is read, by which way, once or more often, level or not. */
const anyTaking = fc
  .tuple(anyField, share, fc.nat(), fc.array(eitherWay, { minLength: 1, maxLength: 3 }), fc.boolean())
  .map(([path, place, pick, offs, aslant]): Taking => {
    const { min, max } = ruleOf(path);
    const value = min + place * (max - min);
    const ways = [undefined, ...(wayQuestion(path)?.ways ?? []).map(({ key }) => key)];
    const way = ways[pick % ways.length];
    const [first, ...more] = offs.map((off) =>
      plainly(path, Math.min(max, Math.max(min, Math.round(value + off * 2 * readingOf(path, value).accuracy)))),
    );
    return {
      path,
      typed: [first as Typed, ...more],
      ...(way === undefined ? {} : { way }),
      ...(aslant ? { aslant } : {}),
    };
  });

const machines: SetupDocument = {
  hitchwright: 1,
  tractor: { category: '1' },
  coupler: { kind: 'uFrame', category: '1' },
  implement: { category: '1' },
  shaft: {},
};
const taker = { who: 'yard', when: '2026-11-25T08:30Z' };

/** What the document says after a change, as ranges; the change can be read. */
function boundsAfter(document: SetupDocument, path: string, value: unknown): readonly { low: number; high: number }[] {
  const after = withEdits(document, [{ path, value }]);
  const reading = readSetup(after);
  if (!reading.ok) throw new Error(`${path}: ${JSON.stringify(reading.errors)} ${JSON.stringify(value)}`);
  const { value: read } = readValue(atPath(after, path), ruleOf(path), path, 'us');
  if (read === null || read.kind === 'unknown') throw new Error(`${path} says nothing`);
  if (read.kind === 'adjustable') return [read.lowest, read.highest];
  return read.kind === 'stops' ? read.at : [read.bound];
}

/** The one holds the other, and not more than the rounding more. */
function expectAround(around: { low: number; high: number } | undefined, range: { low: number; high: number }): void {
  expect(around?.low).toBeLessThanOrEqual(range.low + 1e-6);
  expect(around?.high).toBeGreaterThanOrEqual(range.high - 1e-6);
  expect(around?.low).toBeGreaterThanOrEqual(range.low - 0.003);
  expect(around?.high).toBeLessThanOrEqual(range.high + 0.003);
}

describe('the record', () => {
  test('reads back as what was taken, rounded outward, in either unit system', () => {
    let kept = 0;
    fc.assert(
      fc.property(anyTaking, fc.constantFrom('us', 'metric'), (taking, units) => {
        const document = { ...machines, units };
        if (partsOf(document, taking.path).length > 1) return;
        const taken = takenAs(document, taking);
        const edit = editFor(document, taking.path, [taking], taker);
        expect(edit === null).toBe(!taken.ok);
        if (edit === null || !taken.ok) return;
        const [bound] = boundsAfter(document, taking.path, edit.value);
        expectAround(bound, taken.range);
        expect(edit.value).toMatchObject({ when: taker.when, who: 'yard' });
        kept += 1;
      }),
      { numRuns: 4000 },
    );
    expect(kept).toBeGreaterThan(2500);
  });
  test('of what can be set has both ends, or every hole, as each was taken', () => {
    const forms = [
      ['tractor.ballSpan', undefined, 2, 600, 900],
      ['tractor.topLinkLength', undefined, 2, 400, 900],
      ['implement.mastHeight', { adjustable: { between: [440, 520] } }, 2, 400, 600],
      ['coupler.topHookHeight', { adjustable: { at: [356, 413, 470] } }, 3, 300, 600],
      ['implement.mastHeight', { adjustable: { at: [440, 500] } }, 2, 400, 600],
    ] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...forms),
        fc.array(share, { minLength: 3, maxLength: 3 }),
        fc.array(fc.nat(), { minLength: 3, maxLength: 3 }),
        ([field, before, count, low, high], shares, picks) => {
          const document = withEdits(machines, [
            { path: field, value: before },
            { path: 'tractor.lowerBallWidth', value: 35 },
          ]);
          const parts = partsOf(document, field);
          expect(parts.length).toBe(count);
          const places = shares.slice(0, count).sort((a, b) => a - b);
          const takings = parts.map((path, i): Taking => {
            const value = Math.round(low + ((i + (places[i] as number)) / count) * (high - low));
            const ways = (wayQuestion(field)?.ways ?? []).filter(({ kind }) => kind === 'as');
            const way = ways[(picks[i] as number) % Math.max(1, ways.length)]?.key;
            return { path, typed: [plainly(path, value)], ...(way === undefined ? {} : { way }) };
          });
          const edit = editFor(document, field, takings, taker);
          const bounds = boundsAfter(document, field, edit?.value);
          const points = new Set(takings.map(({ way }) => way));
          takings.forEach((taking, i) => {
            const taken = takenAs(document, taking);
            if (!taken.ok) throw new Error(taken.hint);
            const shift = points.size < 2 ? 0 : ({ innerFaces: 35, outerFaces: -35 }[taking.way ?? ''] ?? 0);
            expectAround(bounds[i], { low: taken.range.low + shift, high: taken.range.high + shift });
          });
          expect(
            editFor(withEdits(document, [{ path: field, value: undefined }]), field, takings.slice(1), taker),
          ).toBeNull();
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe('inches and millimetres', () => {
  test('say the same: doubts, ranges and records', () => {
    fc.assert(
      fc.property(
        anyField.filter((path) => ruleOf(path).dimension === 'length'),
        share,
        fc.nat(),
        (path, place, pick) => {
          const { min, max } = ruleOf(path);
          const sixtyFourths = Math.round(((min + place * (max - min)) / 25.4) * 64);
          const value = (sixtyFourths * 25.4) / 64;
          if (!inRange(path, value)) return;
          const size = Math.abs(sixtyFourths);
          const inches = `${sixtyFourths < 0 ? '-' : ''}${Math.floor(size / 64)} ${size % 64}/64 in`;
          const [a, b] = [typedAs(path, inches), typedAs(path, `${value} mm`)];
          if (a === null || b === null) throw new Error(`${path} ${inches} ${value}`);
          expect(a.value).toBeCloseTo(b.value, 9);
          expect(doubtsAbout(machines, path, a).map(({ kind }) => kind)).toEqual(
            doubtsAbout(machines, path, b).map(({ kind }) => kind),
          );
          const ways = wayQuestion(path)?.ways ?? [];
          const way = ways.length === 0 ? {} : { way: (ways[pick % ways.length] as { key: string }).key };
          const [one, other] = [a, b].map((typed) => takenAs(machines, { path, typed: [typed], ...way }));
          expect(one?.ok).toBe(other?.ok);
          if (one?.ok !== true || other?.ok !== true) return;
          expect(one.range.low).toBeCloseTo(other.range.low, 9);
          expect(one.range.high).toBeCloseTo(other.range.high, 9);
          if (partsOf(machines, path).length > 1) return;
          const records = [a, b].map((typed) => editFor(machines, path, [{ path, typed: [typed], ...way }], taker));
          const [here, there] = records.map((edit) => boundsAfter(machines, path, edit?.value)[0]);
          expect(here?.low).toBeCloseTo(there?.low ?? NaN, 6);
          expect(here?.high).toBeCloseTo(there?.high ?? NaN, 6);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('slips of the unit', () => {
  test('between mm, cm and in are refused by the field or doubted, but where the class is so wide that both lie in it', () => {
    const slips = { mmAsCm: 10, cmAsMm: 0.1, mmAsIn: 25.4, inAsMm: 1 / 25.4, cmAsIn: 2.54, inAsCm: 1 / 2.54 };
    const told = { refused: 0, meant: 0, doubted: 0, missed: 0 };
    fc.assert(
      fc.property(
        category.chain((of) => fc.tuple(fc.constant(of), truthOf(of))),
        fc.constantFrom(...Object.entries(slips)),
        ([of, truth], [, factor]) => {
          const document = documentOf(of, new Map(), all);
          for (const path of fieldRules.keys()) {
            const room = classRoom(of, path);
            if (room === null || ruleOf(path).dimension !== 'length') continue;
            const slipped = at(truth, path) * factor;
            const doubts = doubtsAbout(document, path, { text: `${slipped} mm`, value: slipped });
            const isMeant = doubts.some((doubt) => 'meant' in doubt && Math.abs(doubt.meant - at(truth, path)) < 1e-6);
            if (!inRange(path, slipped)) told.refused += 1;
            else if (isMeant) told.meant += 1;
            else if (doubts.length > 0) told.doubted += 1;
            else {
              told.missed += 1;
              const leeway = 0.11 * Math.max(Math.abs(room.low), Math.abs(room.high)) + 5;
              expect(slipped >= room.low - leeway && slipped <= room.high + leeway, `${path} ${slipped}`).toBe(true);
            }
          }
        },
      ),
      { numRuns: 300 },
    );
    expect(told.meant).toBeGreaterThan(1000);
    expect(told.refused).toBeGreaterThan(1000);
    expect(told.missed).toBeLessThan(0.1 * (told.refused + told.meant + told.doubted));
  });
});
