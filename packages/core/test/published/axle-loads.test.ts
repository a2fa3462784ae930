import { describe, expect } from 'vitest';
import { axleShareFigures, rearRules } from '../../src/tables/index.ts';
import {
  actualFront,
  actualRear,
  leastCounterweight,
  leastFront,
  leastRear,
  type Printed,
  type PrintedLoader,
} from '../references/axles.ts';
import { axlesBy, counterweightBy, type Standing } from '../references/axleEngine.ts';
import { published } from './register.ts';
import { valuesOf } from './rows.ts';

/** Invented tractors and implements, light and heavy, with and without something in front. */
const invented: readonly Printed[] = [
  { tv: 480, th: 720, gv: 0, gh: 350, a: 0.5, b: 1.6, cd: 1.35 },
  { tv: 480, th: 720, gv: 300, gh: 0, a: 0.9, b: 1.6, cd: 1.35 },
  { tv: 1150, th: 1700, gv: 220, gh: 640, a: 0.75, b: 2.05, cd: 1.62 },
  { tv: 2400, th: 3650, gv: 900, gh: 1850, a: 1.31, b: 2.64, cd: 2.43 },
];

const millimetres = (metres: number): number => 1000 * metres;
const alone = ({ tv, th, b }: Printed): Standing => ({ wheelbase: millimetres(b), front: tv, rear: th });
const behind = ({ gh, cd }: Printed): Pick<Standing, 'behind'> => ({ behind: { mass: gh, at: millimetres(cd) } });
const ahead = ({ gv, a }: Printed): Pick<Standing, 'weights'> => ({ weights: { mass: gv, ahead: millimetres(a) } });

/** Where front weights would hang, none of them on: the engine says how much is wanted there. */
const hangingAt = (metres: number): Pick<Standing, 'weights'> => ({ weights: { mass: 0, ahead: millimetres(metres) } });

describe('the lines that implement manuals print', () => {
  const source = 'manual-ballast-formula';
  published(
    {
      source,
      locator: 'actual front and rear axle load, and total',
      kind: 'computes',
      title: 'front [G_V·(a + b) + T_V·b − G_H·(c + d)]/b, the rest of the total on the rear',
    },
    () => {
      for (const one of invented) {
        const { front, rear, total } = axlesBy({ ...alone(one), ...behind(one), ...ahead(one) });
        expect(front).toBeCloseTo(actualFront(one), 9);
        expect(rear).toBeCloseTo(actualRear(one), 9);
        expect(total).toBeCloseTo(one.tv + one.th + one.gv + one.gh, 9);
      }
    },
  );
  published(
    {
      source,
      locator: 'increase of the rear axle load',
      kind: 'computes',
      title: 'a rear implement puts G_H + G_H·(c + d)/b on the rear axle',
    },
    () => {
      for (const one of invented) {
        const more = axlesBy({ ...alone(one), ...behind(one) }).rear - axlesBy(alone(one)).rear;
        expect(more).toBeCloseTo(one.gh + (one.gh * one.cd) / one.b, 9);
      }
    },
  );
  published(
    {
      source,
      locator: 'least front ballast, tillage manual p. 26',
      kind: 'computes',
      title: 'G_V,min = [G_H·(c + d) − T_V·b + 0.2·T_L·b]/(a + b)',
    },
    () => {
      for (const one of invented) {
        const standing = { ...alone(one), ...behind(one) };
        const { ballast } = axlesBy({ ...standing, ...hangingAt(one.a) });
        expect(ballast).toBeCloseTo(leastFront(one), 9);
        const { front, wanted } = axlesBy({ ...standing, ...ahead({ ...one, gv: leastFront(one) }) });
        expect(front).toBeCloseTo(0.2 * (one.tv + one.th), 9);
        expect(front).toBeCloseTo(wanted, 9);
      }
    },
  );
  published(
    {
      source,
      locator: 'least rear ballast',
      kind: 'computes',
      title: 'G_H,min = [G_V·a − T_H·b + 0.45·T_L·b]/(b + c + d) leaves 45 % of the tractor on the rear axle',
    },
    () => {
      for (const one of invented) {
        const { rear } = axlesBy({ ...alone(one), ...ahead(one), ...behind({ ...one, gh: leastRear(one) }) });
        expect(rear).toBeCloseTo(rearRules('rearOfTractor').share.value * (one.tv + one.th), 9);
      }
    },
  );
  published(
    {
      source: 'en-iso-4254-10',
      locator: 'annex B, as quoted in mower manuals',
      kind: 'computes',
      title: 'with a front linkage, [I_R·(c + d) − T_F·b + 0.2·T_E·b]/(a + b + e): both front distances in one',
    },
    () => {
      const e = 0.4;
      for (const one of invented) {
        const { tv, th, gh, a, b, cd } = one;
        const { ballast } = axlesBy({ ...alone(one), ...behind(one), ...hangingAt(a + e) });
        expect(ballast).toBeCloseTo((gh * cd - tv * b + 0.2 * (tv + th) * b) / (a + b + e), 9);
      }
    },
  );
  published(
    {
      source: 'manual-mower-ballast-sign',
      locator: 'the line for the actual front axle load, printed twice',
      kind: 'computes',
      title: 'its −T_V·b is not followed: nothing mounted leaves the front axle its own share',
    },
    () => {
      const asPrinted = ({ tv, gv, gh, a, b, cd }: Printed): number => (gv * (a + b) - tv * b - gh * cd) / b;
      for (const one of invented) {
        const { front } = axlesBy({ ...alone(one), ...behind(one), ...ahead(one) });
        expect(front - asPrinted(one)).toBeCloseTo(2 * one.tv, 9);
        expect(axlesBy(alone(one)).front).toBe(one.tv);
      }
    },
  );
  published(
    {
      source: 'manual-tiller-italian',
      locator: 'manuals pp. 19 and 24',
      kind: 'computes',
      title:
        'Z = [M·s − 0.2·T·i]/(d + i) is the long form for a tractor with 40 % in front, too little for one with 35 %',
    },
    () => {
      const [total, s, i, d, mass] = [2000, 1.4, 1.9, 0.6, 560];
      const short = (mass * s - 0.2 * total * i) / (d + i);
      const long = (frontShare: number): number =>
        axlesBy({
          wheelbase: millimetres(i),
          front: frontShare * total,
          rear: (1 - frontShare) * total,
          behind: { mass, at: millimetres(s) },
          ...hangingAt(d),
        }).ballast;
      expect(long(0.4)).toBeCloseTo(short, 9);
      expect(long(0.35) - short).toBeCloseTo((0.05 * total * i) / (d + i), 9);
    },
  );
});

describe('the counterweight of the loader standard', () => {
  const source = 'en-12525';
  const locator = 'as quoted in three loader manuals';
  const loaders: readonly PrintedLoader[] = [
    { n: 1600, bl: 1.55, i2: 2.2, i1: 1.15, g: 1500, g1: 1700 },
    { n: 600, bl: 1.2, i2: 1.6, i1: 0.8, g: 640, g1: 760 },
    { n: 100, bl: 1.2, i2: 1.6, i1: 0.8, g: 900, g1: 600 },
  ];
  const standing = ({ n, bl, i2, g, g1 }: PrintedLoader): Standing => ({
    wheelbase: millimetres(i2),
    front: g1,
    rear: g,
    load: { mass: n, ahead: millimetres(bl) },
  });
  const wanted = (one: PrintedLoader): number =>
    counterweightBy(standing(one), millimetres(one.i1), rearRules('rearOfTotal').share.value);
  published({ source, locator, kind: 'computes', title: 'M = [5·N·b_L + I2·(P + N − 5·G)]/[5·(I1 + I2) − I2]' }, () => {
    for (const one of loaders) expect(wanted(one)).toBeCloseTo(leastCounterweight(one), 9);
    expect(loaders.map((one) => Math.sign(wanted(one)))).toEqual([1, 1, -1]);
  });
  published({ source, locator, kind: 'computes', title: 'with it the rear axle carries 20 % of everything' }, () => {
    for (const one of loaders) {
      const hung = { mass: leastCounterweight(one), at: millimetres(one.i1) };
      const { rear, total, rearSpare } = axlesBy({ ...standing(one), behind: hung });
      expect(rear / total).toBeCloseTo(0.2, 12);
      expect(rearSpare).toBeCloseTo(0, 9);
    }
  });
  published(
    {
      source,
      locator: 'one of the three loader manuals',
      kind: 'computes',
      title: 'the print that lost the minus of its denominator, 5·(I1 + I2)·I2, is not followed',
    },
    () => {
      const slipped = ({ n, bl, i2, i1, g, g1 }: PrintedLoader): number =>
        (5 * n * bl + i2 * (g + g1 + n - 5 * g)) / (5 * (i1 + i2) * i2);
      for (const one of loaders) expect(Math.abs(wanted(one) / slipped(one) - 1)).toBeGreaterThan(0.1);
    },
  );
});

describe('printed figures', () => {
  published(
    {
      source: 'manual-row-crop-ballast',
      locator: 'table of rear axle increase, its rows without front weights',
      kind: 'computes',
      title: '1786, 1819 and 1914 kg behind put 3015, 3070 and 3230 kg on the rear axle: one place, 1.688 times',
    },
    () => {
      const increase = (mass: number): number => {
        const bare = { wheelbase: 1000, front: 0, rear: 0 };
        return axlesBy({ ...bare, behind: { mass, at: 688 } }).rear;
      };
      for (const [hung, printed] of [
        [1786, 3015],
        [1819, 3070],
        [1914, 3230],
      ] as const) {
        expect(Math.abs(increase(hung) - printed)).toBeLessThanOrEqual(1);
        expect(Math.abs(printed / hung - increase(1))).toBeLessThanOrEqual(0.001);
      }
    },
  );
  published(
    {
      source: 'exam-page-reaction',
      locator: 'item 156518, first of its four answers',
      kind: 'computes',
      title: '6 kN pulled 0.39 m high shift 1.30 kN to the rear axle on a wheelbase of 1.8 m',
    },
    () => {
      // A pull at a height turns like a couple: the same force up over the axle and down so far behind it.
      const rear = (18 * (1.8 - 0.6)) / 1.8;
      const standing = { wheelbase: 1800, front: 18 - rear, rear };
      const pulling = axlesBy({ ...standing, behind: { mass: 6, at: 390 }, over: -6 });
      expect(pulling.rear - rear).toBeCloseTo(1.3, 9);
      expect(standing.front - pulling.front).toBeCloseTo(1.3, 9);
    },
  );
  published(
    {
      source: 'body-builder-guide',
      locator: 'pp. 345 and 159, worked example',
      kind: 'computes',
      title: '260 kg put 1600 mm behind the front axle of a 4500 mm wheelbase: 92 kg rear, 168 kg front',
    },
    () => {
      const { front, rear } = axlesBy({ wheelbase: 4500, front: 0, rear: 0, weights: { mass: 260, ahead: -1600 } });
      expect([rear.toFixed(0), front.toFixed(0)]).toEqual(['92', '168']);
    },
  );
  const plates = [
    { tyres: '4.5-10 and 7-16', front: 410, rear: 970, printed: [25, 68] },
    { tyres: '5-12 and 8-16', front: 440, rear: 950, printed: [27, 66] },
    { tyres: '6-12 and 9.5-16', front: 580, rear: 1040, printed: [20, 55] },
    { tyres: '20x8-10 and 212-80-15', front: 700, rear: 870, printed: [33, 46] },
  ] as const;
  for (const { tyres, front, rear, printed } of plates) {
    published(
      {
        source: 'manual-axle-plate',
        locator: 'p. 86, masses on public roads',
        kind: 'computes',
        title: `tyres ${tyres}: 1300 kg with one axle at its limit leave the other ${printed.join(' and ')} %`,
      },
      () => {
        // All of it at the place where one axle carries its most; the wheelbase does not matter.
        const standing = (share: number) =>
          axlesBy({ wheelbase: 1500, front: 0, rear: 0, weights: { mass: 1300, ahead: 1500 * (share - 1) } });
        const onRear = standing(1 - rear / 1300);
        const onFront = standing(front / 1300);
        expect(onRear.rear).toBeCloseTo(rear, 9);
        expect(onFront.front).toBeCloseTo(front, 9);
        const shares = [onRear.front / 13, onFront.rear / 13] as const;
        expect(Math.abs(shares[0] - printed[0])).toBeLessThanOrEqual(1);
        expect(Math.abs(shares[1] - printed[1])).toBeLessThanOrEqual(1);
      },
    );
  }
});

describe('shares that sources ask for', () => {
  const rows = [
    ['german-steering-sheet', 'ofTractor', 0.2],
    ['austrian-road-article', 'ofTractor', 0.2],
    ['en-iso-4254-10', 'ofTractor', 0.2],
    ['manual-compact-reaction', 'ofTractor', 0.2],
    ['manual-tiller-italian', 'ofTractor', 0.2],
    ['italian-ballast-articles', 'ofTotal', 0.2],
    ['manual-mower-polish', 'ofTotal', 0.2],
    ['manual-loader-ballast', 'ofTotal', 0.2],
    ['manual-row-crop-ballast', 'halfOfFront', 0.5],
    ['en-12525', 'rearOfTotal', 0.2],
    ['manual-loader-ballast', 'rearOfTotal', 0.2],
    ['en-iso-4254-10', 'rearOfTractor', 0.45],
    ['manual-ballast-formula', 'rearOfTractor', 0.45],
  ] as const;
  for (const [source, rule, share] of rows) {
    const locator = axleShareFigures(rule).find((row) => row.source === source)?.locator ?? '';
    published({ source, locator, kind: 'reads', title: `${rule}: ${share * 100} %` }, () => {
      expect(valuesOf(axleShareFigures(rule), source)).toEqual([share]);
    });
  }
});
