import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root, run } from './spawned.ts';

const setups = join(root, 'examples/setups');
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-balance-'));

interface Written {
  readonly outcomes: { readonly staysUpright: string };
  readonly verdict: string;
  readonly leadFinding: string | null;
  readonly balance: {
    readonly stations: readonly { readonly front: number; readonly rear: number; readonly total: number }[];
    readonly worst: { readonly wanted: number };
    readonly ballast: { readonly enough: number } | null;
  } | null;
  readonly steeringRules: readonly {
    readonly rule: string;
    readonly chosen: boolean;
    readonly status: string;
    readonly text: string;
  }[];
  readonly cures: readonly { readonly kind: string; readonly count: number; readonly text: string }[];
  readonly setPrice: string | null;
  readonly everySetTried: boolean;
  readonly remarks: readonly string[];
}

type Setup = Record<'tractor' | 'implement', Record<string, unknown>> & Record<string, unknown>;

/** The box blade without a coupler, three times as heavy: too much for the steering, not for the lift. */
function heavy(tractor: Readonly<Record<string, unknown>> = {}, more: Readonly<Record<string, unknown>> = {}): string {
  const setup = JSON.parse(readFileSync(join(setups, 'box-blade-direct.json'), 'utf8')) as Setup;
  const implement = { ...setup.implement, mass: 470, centreBehind: 700 };
  return JSON.stringify({ ...setup, implement, tractor: { ...setup.tractor, ...tractor }, ...more });
}

const weights = {
  kind: 'frontWeights',
  name: 'cast weight',
  mass: 20,
  count: 10,
  price: { amount: 50, currency: 'EUR' },
};

function answerOf(text: string): Written {
  return JSON.parse(run(['check', '-', '--json'], text).stdout) as Written;
}

describe('the axle loads on the command line', () => {
  test('too little in front is told with what is left, what is wanted, the weights it takes and what they cost', () => {
    const { status, stdout: set } = run(['check', '-', '--units', 'metric'], heavy({}, { parts: [weights] }));
    const stdout = set.replace(/\s+/g, ' ');
    expect(status).toBe(3);
    expect(stdout).toContain('WORKS WITH PARTS With the implement raised the front axle carries');
    expect(stdout).toContain('Stays upright not as it stands');
    expect(stdout).toMatch(/Axle loads - With the balls \d+ mm \(.*?\) above the ground the front axle has least/);
    expect(stdout).toContain('The rule wants 336 kg (741 lb), 20 % of the tractor.');
    expect(stdout).toContain('Liquid in the rear tyres does not load the front axle.');
    expect(stdout).toContain('With nothing hung behind the front axle carries');
    const [, count = ''] = /Hang (\d+) × cast weight on the front/.exec(stdout) ?? [];
    const cost = (50 * Number(count)).toFixed(2);
    expect(stdout).toContain(`EUR ${cost}`);
    expect(stdout).toContain(`What is counted on costs EUR ${cost}.`);
  });
  test('as many front weights as are enough meet the rule, and none is left over', () => {
    const { cures, balance, verdict, setPrice, everySetTried } = answerOf(heavy({}, { parts: [weights] }));
    expect(verdict).toBe('withParts');
    const count = cures.find(({ kind }) => kind === 'frontWeights')?.count ?? 0;
    expect(count).toBeGreaterThan(0);
    expect((balance?.ballast?.enough ?? Infinity) / 20).toBeLessThanOrEqual(count);
    expect(setPrice).toBe(`What is counted on costs EUR ${(50 * count).toFixed(2)}.`);
    expect(everySetTried).toBe(true);
    expect(answerOf(heavy({ frontWeightMass: 20 * count })).outcomes.staysUpright).toBe('works');
    expect(answerOf(heavy({ frontWeightMass: 20 * (count - 1) })).outcomes.staysUpright).not.toBe('works');
  });
  test('where the bracket holds too little no front weight on the list can', () => {
    const { status, stdout } = run(
      ['check', '-'],
      heavy({ frontBracketLimit: 25, loaderMass: undefined }, { parts: [weights] }),
    );
    expect(status).toBe(5);
    expect(stdout).toContain('WILL NOT STAY UPRIGHT');
    expect(stdout).toMatch(/No front weight on the list can\s+meet it/);
  });
  test('front and rear axle add up to everything at every height', () => {
    const { balance } = answerOf(heavy());
    expect(balance?.stations).toHaveLength(61);
    for (const { front, rear, total } of balance?.stations ?? []) expect(front + rear).toBeCloseTo(total, 6);
  });
  test('the steering is told by each rule, and another rule chosen gives another answer', () => {
    const { stdout } = run(['check', join(setups, 'tiller-driven-on-coupler.json')]);
    expect(stdout).toContain(
      'The steering by each rule\n  - 20 % of the tractor, used here: kept, 184 lb (83 kg) to spare.',
    );
    expect(stdout).toContain('- 20 % of everything: not known yet, at worst');
    expect(stdout).toContain('- Half of the front axle: kept,');
    const bare = answerOf(heavy());
    const chosen = answerOf(heavy({}, { rules: { steeringShare: 'halfOfFront' } }));
    expect(bare.steeringRules.filter((rule) => rule.chosen).map(({ rule }) => rule)).toEqual(['ofTractor']);
    expect(chosen.steeringRules.filter((rule) => rule.chosen).map(({ rule }) => rule)).toEqual(['halfOfFront']);
    expect(chosen.balance?.worst.wanted).not.toBe(bare.balance?.worst.wanted);
  });
  test('a loader that is taken along moves the answer, and a loaded one asks the rear axle too', () => {
    const front = (state: string): number =>
      Math.min(
        ...(answerOf(heavy({ loader: state, loaderLoad: 300 })).balance?.stations ?? []).map((one) => one.front),
      );
    expect(front('empty')).toBeGreaterThan(front('absent'));
    expect(front('loaded')).toBeGreaterThan(front('empty'));
  });
  test('a tractor that nobody weighed is to be measured first, and the report says what', () => {
    const { status, stdout } = run(
      ['check', '-'],
      heavy({ mass: undefined, frontAxleMass: undefined, wheelbase: undefined }),
    );
    expect(status).toBe(4);
    expect(stdout).toContain('Stays upright   not known yet');
    expect(stdout).not.toContain('The steering by each rule');
    expect(stdout).not.toMatch(/^Axle loads$/m);
    expect(stdout).toMatch(/Find out the wheelbase of the tractor/);
  });
  test('--balance and --slope draw, and say what is missing where they can’t', () => {
    const [balance, slope] = [join(folder, 'balance.svg'), join(folder, 'slope.svg')];
    const { status, stderr } = run(
      ['check', '-', '--balance', balance, '--slope', slope],
      heavy({}, { parts: [weights] }),
    );
    expect(stderr).toBe('');
    expect(status).toBe(3);
    for (const [file, title] of [
      [balance, 'Axle loads as a see-saw'],
      [slope, 'Ideal tipping limits at rest'],
    ] as const) {
      const drawn = readFileSync(file, 'utf8');
      expect(drawn, title).toMatch(/^<svg[^>]+viewBox/);
      expect(drawn).toContain(title);
      expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
    }
    const unweighed = run(['check', '-', '--balance', balance], heavy({ mass: undefined }));
    expect(unweighed.status).toBe(2);
    expect(unweighed.stderr).toContain('the mass of the tractor');
    const low = run(['check', '-', '--slope', slope], heavy({ centreHeight: undefined }));
    expect(low.status).toBe(2);
    expect(low.stderr).toContain('height of the centre of gravity');
  });
  test('the see-saw is drawn where the front axle has least to spare', () => {
    const out = join(folder, 'worst.svg');
    const { stdout } = run(['check', '-', '--units', 'metric', '--balance', out], heavy({}, { parts: [weights] }));
    const [, height = 'none'] = /With the balls (\d+) mm/.exec(stdout) ?? [];
    expect(readFileSync(out, 'utf8')).toContain(`${height} mm`);
  });
});
