import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/engine/assess/index.ts';
import type { BalanceStation } from '../../src/engine/balance/index.ts';
import type { Edit, SetupDocument } from '../../src/records/index.ts';
import { answer as asked, finding } from '../asked.ts';
import { setup } from './yard.ts';

/** The stories of the axle loads ask nothing of the drive. */
const undriven: readonly Edit[] = [
  { path: 'shaft', value: undefined },
  { path: 'implement.driven', value: false },
];
const noParts: Edit = { path: 'parts', value: [] };
const noLoader: Edit = { path: 'tractor.loaderMass', value: undefined };
const noDriver: Edit = { path: 'tractor.driverMass', value: undefined };
const byTotal: Edit = { path: 'rules.steeringShare', value: 'ofTotal' };

/** The whole answer, sweeps and rules among it. */
function answer(document: SetupDocument): Answer {
  return asked(document, { full: true });
}

function nearest(document: SetupDocument, height: number): BalanceStation {
  const { balance } = answer(document);
  if (balance === null) throw new Error('the story is weighed');
  const away = ({ ballHeight }: BalanceStation): number => Math.abs(ballHeight - height);
  return balance.stations.reduce((a, b) => (away(b) < away(a) ? b : a));
}

function shareOfTotal(tractor: string, coupler: string | null, implement: string): number {
  const height = tractor === '35' ? 650 : 700;
  const { front, total } = nearest(setup(tractor, coupler, implement, [...undriven, noDriver]), height);
  return (100 * front) / total;
}

function status(of: Answer | SetupDocument): string {
  return finding(of, 'balance.frontShare').status;
}

describe('scenario A: what two tractors keep on their front wheels, of everything, at carrying height', () => {
  const coupler = 'U-28';
  // Per cent as the story prints them: directly and with the coupler; null where it is not hooked up.
  const rows: readonly (readonly [string, string, number | null, number | null])[] = [
    ['35', 'rotary cutter', 17, 14],
    ['35', '60-in tiller', 23, 21],
    ['35', 'box blade', 28, null],
    ['35', 'landscape rake', 29, null],
    ['35', 'bale spear', 7, 4],
    ['35', 'post auger', 27, null],
    ['35', 'finish mower', 23, 21],
    ['55', 'rotary cutter', 24, 23],
    ['55', '60-in tiller', 28, 26],
    ['55', 'box blade', 31, null],
    ['55', 'landscape rake', 32, null],
    ['55', 'bale spear', 17, 15],
    ['55', 'rear blade', 25, null],
    ['55', 'post auger', 31, null],
    ['55', 'finish mower', 28, 27],
  ];
  test.each(rows)('Ostrey %s with the %s: %d %%, with the coupler %d %%', (tractor, implement, direct, coupled) => {
    // The story rounds to whole per cents and leaves heights of centres out.
    expect(Math.abs(shareOfTotal(tractor, null, implement) - (direct ?? NaN))).toBeLessThan(0.9);
    if (coupled !== null) expect(Math.abs(shareOfTotal(tractor, coupler, implement) - coupled)).toBeLessThan(0.9);
  });
  test('by the rule it was written with, a fifth of everything, the cutter fails on the compact and its 53 kg lie within what is told', () => {
    const result = answer(setup('35', null, 'rotary cutter', [...undriven, byTotal, noParts, noLoader]));
    expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'balance.frontShare']);
    expect(result.balance?.ballast?.least).toBeLessThan(53);
    expect(result.balance?.ballast?.enough).toBeGreaterThan(53);
  });
  test('the bale spear fails by either rule, and by how much is shown under each', () => {
    for (const rule of [byTotal, { path: 'rules.steeringShare', value: 'ofTractor' }]) {
      const result = answer(setup('35', null, 'bale spear', [...undriven, rule, noParts, noLoader]));
      expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'balance.frontShare']);
    }
    const { steeringRules } = answer(setup('35', null, 'bale spear', [...undriven, noParts]));
    expect(steeringRules.map(({ rule, chosen, finding: { status: was } }) => [rule, chosen, was])).toEqual([
      ['ofTractor', true, 'fail'],
      ['ofTotal', false, 'fail'],
      ['halfOfFront', false, 'fail'],
    ]);
  });
  test('a fifth of the tractor lets the cutter pass with a driver on, and shows that a fifth of everything does not', () => {
    const result = answer(setup('35', null, 'rotary cutter', undriven));
    expect(status(result)).toBe('pass');
    expect(finding(result, 'limit.frontOfTotal').status).toBe('fail');
    expect(result.steeringRules.find(({ rule }) => rule === 'ofTotal')?.finding.status).toBe('fail');
    expect(result.verdict).toBe('works');
  });
  test('on the utility tractor only the spear fails by a fifth of everything, with about the ballast of the story', () => {
    for (const implement of ['rotary cutter', '60-in tiller', 'rear blade', 'finish mower'])
      expect(status(setup('55', null, implement, [...undriven, byTotal]))).toBe('pass');
    const spear = answer(setup('55', null, 'bale spear', [...undriven, byTotal, noParts, noLoader]));
    expect(status(spear)).toBe('fail');
    expect(spear.balance?.ballast?.least).toBeLessThan(81);
    expect(spear.balance?.ballast?.enough).toBeGreaterThan(81);
  });
});

describe('scenario B: the subcompact and the heavy cutter', () => {
  test('even if it were lifted, the front wheels would leave the ground', () => {
    const result = answer(setup('24', null, 'heavy cutter', [...undriven, noParts]));
    expect([result.verdict, result.lead?.id]).toEqual(['willNot', 'lift.force']);
    expect(status(result)).toBe('fail');
    expect(result.balance?.wheelsLift).toBe(true);
    expect(result.cautions).toContain('frontMayLift');
    // The story has -16 kg, by whatever arms its writer took: the sign is what decides.
    expect(result.balance?.worst.front.high).toBeLessThan(0);
  });
  test('a cutter of 170 kg at 559 mm keeps a fifth of the tractor on the front, just', () => {
    const light: readonly Edit[] = [
      { path: 'implement.mass', value: 170 },
      { path: 'implement.centreBehind', value: 559 },
      { path: 'implement.centreAbove', value: 0 },
    ];
    const story = setup('24', null, 'heavy cutter', [...undriven, ...light]);
    expect(status(story)).toBe('pass');
    const { front, total } = nearest(story, 450);
    expect(Math.abs((100 * front) / total - 20.6)).toBeLessThan(1.2);
  });
});

describe('scenario C: a bale of 450 kg carried at 500 mm', () => {
  const story: readonly Edit[] = [...undriven, noParts];
  test('6 % of 2,287 kg stay on the front axle, and a fifth of what it carries without the bale', () => {
    const { front, total } = nearest(setup('35', null, 'bale spear', story), 500);
    expect(total).toBeCloseTo(2287, 6);
    expect(Math.abs(front - 141)).toBeLessThan(20);
    const { balance } = answer(setup('35', null, 'bale spear', story));
    expect(balance?.frontFree).toBeCloseTo(694, 0);
    expect(Math.abs((balance?.worst.front.low ?? NaN) / (balance?.frontFree ?? NaN) - 0.2)).toBeLessThan(0.03);
  });
  test('half of the front axle is not kept either, and that rule can be the one that decides', () => {
    const result = answer(
      setup('35', null, 'bale spear', [...story, noLoader, { path: 'rules.steeringShare', value: 'halfOfFront' }]),
    );
    expect(result.balance?.rule).toBe('halfOfFront');
    expect([result.verdict, status(result)]).toEqual(['willNot', 'fail']);
    expect(result.balance?.worst.wanted).toBeCloseTo(0.5 * (result.balance?.frontFree ?? NaN), 9);
  });
  test('the loader alone brings it to 27 % by the arms of the story, and it is offered', () => {
    const withLoader = setup('35', null, 'bale spear', [...story, { path: 'tractor.loader', value: 'empty' }]);
    const { front, total } = nearest(withLoader, 500);
    expect(Math.abs((100 * front) / total - 27)).toBeLessThan(1);
    expect(status(withLoader)).toBe('pass');
    const { cures, verdict } = answer(setup('35', null, 'bale spear', story));
    expect(verdict).toBe('withParts');
    expect(cures.filter(({ inSmallestSet }) => inSmallestSet).map(({ kind }) => kind)).toEqual(['loaderOn']);
  });
  test('a bale of 360 kg is still too heavy', () => {
    const lighter = setup('35', null, 'bale spear', [
      ...story,
      { path: 'implement.carriedMass', value: 360 },
      noLoader,
    ]);
    const { front, total } = nearest(lighter, 500);
    expect(Math.abs((100 * front) / total - 10.7)).toBeLessThan(1);
    expect(answer(lighter).verdict).toBe('willNot');
  });
});

describe('scenario I: a machine for 1000 rpm on a tractor that turns 540', () => {
  test('the pins fit, the axles hold, and still it will not run', () => {
    const result = answer(setup('55', null, 'stone burier'));
    expect([result.verdict, result.outcomes.staysUpright]).toEqual(['willNot', 'works']);
    expect(finding(result, 'shaft.speed').status).toBe('fail');
  });
});
