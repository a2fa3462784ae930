import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeLines, openQuestion, type CheckId, type Finding } from '../../src/engine/findings/index.ts';
import { openLedger } from '../../src/engine/inputs/index.ts';
import { openJoint } from '../../src/engine/joint/index.ts';
import { openLift } from '../../src/engine/lift/index.ts';
import { draft, draftRows, drawbarPower, workLines, type Work } from '../../src/engine/power/index.ts';
import { openShaft, shaftLines } from '../../src/engine/shaft/index.ts';
import { readSetup, type SetupDocument } from '../../src/records/index.ts';
import { soils, type DraftRow } from '../../src/tables/index.ts';
import { even } from '../even.ts';

/** One check judged by itself. */
function finding(document: SetupDocument, id: CheckId): Finding {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const ledger = openLedger(reading.setup);
  const joint = openJoint(reading.setup, ledger);
  const all = [...workLines(joint), ...shaftLines(openShaft(openLift(joint)))];
  const lines = all.filter((line) => line.id === id);
  const [found] = judgeLines(openQuestion(ledger, lines), { thresholds: false }).findings;
  if (found === undefined) throw new Error(`no finding ${id}`);
  return found;
}

const driven = ['brushCutter', 'finishMower', 'flailMower', 'discMower', 'cutterBarMower', 'rotaryTiller'] as const;
const drawn = [
  'landPlane',
  'plough',
  'subsoiler',
  'chisel',
  'cultivator',
  'discHarrow',
  'springToothHarrow',
  'spikeToothHarrow',
  'tineHarrow',
  'packer',
  'drill',
  'rowPlanter',
] as const satisfies readonly Work[];

/** A ground tool behind a tractor, each figure as it is said. */
interface Ground {
  readonly work: (typeof drawn)[number];
  readonly power: number;
  readonly width: unknown;
  readonly speed: unknown;
  readonly depth: unknown;
  readonly tools: number;
}

function found({ work, power, width, speed, depth, tools }: Ground, id: CheckId = 'limit.draft'): Finding {
  return finding(
    {
      hitchwright: 1,
      units: 'metric',
      tractor: { ptoPower: power },
      implement: { driven: false, work, workWidth: width, workSpeed: speed, workDepth: depth, tools },
    },
    id,
  );
}

const grounds = fc.record({
  work: fc.constantFrom(...drawn),
  power: even(8, 120),
  width: even(900, 4000),
  speed: even(2, 14),
  depth: even(40, 400),
  tools: fc.integer({ min: 1, max: 20 }),
});

const least = ({ margin }: Finding): number => margin?.low ?? NaN;
const ranks: Readonly<Record<string, number>> = { fail: 0, undecided: 1, pass: 2 };
const rank = ({ status }: Finding): number => ranks[status] ?? NaN;

describe('pull at work', () => {
  test('wider, faster, deeper or with more tools never wants less; a stronger tractor never gives less', () => {
    fc.assert(
      fc.property(grounds, even(1, 1.8), fc.nat(5), (one, times, more) => {
        const base = found(one);
        for (const harder of [
          { ...one, width: one.width * times },
          { ...one, speed: one.speed * times },
          { ...one, depth: one.depth * times },
          { ...one, tools: one.tools + more },
        ]) {
          expect(least(found(harder))).toBeLessThanOrEqual(least(base) + 1e-9);
          expect(rank(found(harder))).toBeLessThanOrEqual(rank(base));
        }
        expect(rank(found({ ...one, power: one.power * times }))).toBeGreaterThanOrEqual(rank(base));
      }),
      { numRuns: 120 },
    );
  });
  test('a figure that is less sure never makes the answer surer', () => {
    fc.assert(
      fc.property(grounds, fc.constantFrom('width', 'speed', 'depth'), even(0, 0.4), (one, key, share) => {
        const value = one[key as 'width'];
        const open = found({ ...one, [key]: { value, plusMinus: share * value } });
        if (open.status !== 'undecided') expect(open.status).toBe(found(one).status);
      }),
      { numRuns: 120 },
    );
  });
  test('no build, soil or drive of the tables lies outside: 120 setups, four truths each', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(grounds, even(0, 1), fc.nat(), fc.nat(), (one, spread, build, texture) => {
        const { status, margin } = found(one);
        seen.add(status);
        const rows = draftRows(one.work);
        const row = rows[build % rows.length] as DraftRow;
        const factor = row.soil[soils[texture % soils.length] as (typeof soils)[number]].value;
        const terms = { a: row.a.value, b: row.b.value, c: row.c.value };
        const counted = row.per === 'metre' ? one.width / 1000 : one.tools;
        const pull = draft(terms, factor, one.speed, counted, row.byDepth ? one.depth / 10 : 1);
        for (const share of [0.72, 0.77]) {
          for (const off of [-1, 1]) {
            const wanted = drawbarPower(pull * (1 + off * spread * row.spread.value), one.speed);
            const truth = share * one.power - wanted;
            expect(truth).toBeGreaterThanOrEqual((margin?.low ?? NaN) - 1e-9);
            expect(truth).toBeLessThanOrEqual((margin?.high ?? NaN) + 1e-9);
            if (status === 'pass') expect(truth).toBeGreaterThanOrEqual(-1e-9);
            if (status === 'fail') expect(truth).toBeLessThan(0);
          }
        }
      }),
      { numRuns: 120 },
    );
    expect(seen).toEqual(new Set(['pass', 'fail', 'undecided']));
  });
});

/** A machine driven by its shaft whose power nobody read. */
function powerFinding(work: string, width: unknown, power: number): Finding {
  const implement = { driven: true, work, workWidth: width };
  return finding({ hitchwright: 1, units: 'metric', tractor: { ptoPower: power }, implement }, 'shaft.power');
}

describe('power by the width', () => {
  test('wider never wants less power, and a stronger tractor is never the worse', () => {
    fc.assert(
      fc.property(fc.constantFrom(...driven), even(600, 3000), even(5, 90), even(1, 2), (work, width, power, times) => {
        const base = powerFinding(work, width, power);
        const wider = powerFinding(work, width * times, power);
        expect(least(wider)).toBeLessThanOrEqual(least(base) + 1e-9);
        expect(rank(wider)).toBeLessThanOrEqual(rank(base));
        expect(rank(powerFinding(work, width, power * times))).toBeGreaterThanOrEqual(rank(base));
      }),
      { numRuns: 150 },
    );
  });
  test('in feet or in millimetres it is the same width', () => {
    fc.assert(
      fc.property(fc.constantFrom(...driven), fc.integer({ min: 3, max: 10 }), even(5, 90), (work, feet, power) => {
        const inMillimetres = powerFinding(work, feet * 304.8, power);
        expect(least(powerFinding(work, `${feet} ft`, power))).toBeCloseTo(least(inMillimetres), 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('oil', () => {
  const flow = (given: unknown, wanted: unknown): Finding =>
    finding(
      { hitchwright: 1, units: 'metric', tractor: { remoteFlow: given }, implement: { flowWanted: wanted } },
      'limit.flow',
    );
  test('two figures and their tolerances decide as their ends do; less sure is never surer', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(even(5, 60), even(0, 4), even(5, 60), even(0, 4), (given, off, wanted, slack) => {
        const found = flow({ value: given, plusMinus: off }, { value: wanted, plusMinus: slack }).status;
        seen.add(found);
        const surely = given - off >= wanted + slack ? 'pass' : 'fail';
        const isSure = given - off >= wanted + slack || given + off < wanted - slack;
        expect(found).toBe(isSure ? surely : 'undecided');
      }),
      { numRuns: 150 },
    );
    expect(seen.size).toBe(3);
  });
});
