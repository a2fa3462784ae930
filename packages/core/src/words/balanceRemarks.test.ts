import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { assess, type Answer, type Cure } from '../engine/assess/index.ts';
import { withEdits, type Edit, type SetupDocument } from '../records/index.ts';
import { axleShareFigures, steeringRuleNames, steeringRules } from '../tables/index.ts';
import { balanceRemarks } from './balanceRemarks.ts';
import { steeredText, steeredWords, steeringRuleText, steeringRuleWords } from './rules.ts';
import { setPriceText } from './setPrice.ts';

const file = new URL('../../../../examples/setups/box-blade-direct.json', import.meta.url);
const blade = JSON.parse(readFileSync(file, 'utf8')) as SetupDocument;
const weights = {
  kind: 'frontWeights',
  name: 'cast weight',
  mass: 20,
  count: 14,
  price: { amount: 50, currency: 'EUR' },
};

/** The box blade without a coupler, so heavy; changed as asked. */
function answerFor(mass: number, ...edits: readonly Edit[]): Answer {
  const heavy = [
    { path: 'implement.mass', value: mass },
    { path: 'implement.centreBehind', value: 700 },
    { path: 'tractor.loaderMass', value: undefined },
  ];
  const assessment = assess(withEdits(blade, [...heavy, ...edits]));
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return assessment.answer;
}

function said(mass: number, ...edits: readonly Edit[]): string {
  return balanceRemarks(answerFor(mass, ...edits), 'metric').join(' ');
}

describe('the axle loads in sentences', () => {
  test('what is left on the front axle is rounded down, what is wanted up, and the height is that of the worst place', () => {
    const answer = answerFor(470);
    const { worst } = answer.balance ?? { worst: { ballHeight: NaN, front: { low: NaN }, wanted: NaN } };
    const [first] = balanceRemarks(answer, 'metric');
    expect(first).toContain(`With the balls ${Math.round(worst.ballHeight)} mm`);
    expect(first).toContain(`at least ${Math.floor(worst.front.low)} kg (`);
    expect(first).toContain(`The rule wants ${Math.ceil(worst.wanted)} kg (741 lb), 20 % of the tractor.`);
    expect(balanceRemarks(answer, 'us')[0]).toContain('The rule wants 741 lb (336 kg), 20 % of the tractor.');
  });
  test('front weights are asked for where the front axle is short, and none where it is not', () => {
    const answer = answerFor(470);
    const enough = Math.ceil(answer.balance?.ballast?.enough ?? NaN);
    expect(said(470)).toMatch(new RegExp(`It needs front weights: ${enough} kg \\(.*?\\) altogether, hung 700 mm`));
    expect(said(200)).toContain('It needs no front weights.');
    expect(said(200)).not.toContain('Liquid');
  });
  test('liquid in the rear tyres is said to be of no use where the front axle is short', () => {
    expect(said(470)).toContain('Liquid in the rear tyres does not load the front axle.');
    expect(said(470, { path: 'tractor.frontWeightMass', value: 200 })).not.toContain('Liquid');
  });
  test('wheels that leave the ground are said to', () => {
    expect(said(900)).toContain('it takes the front wheels off the ground');
    expect(said(900)).toContain('nothing may be left on it');
    expect(said(470)).not.toContain('off the ground');
  });
  test('no weight on the list is said to do only where none does', () => {
    const none = 'No front weight on the list can meet it';
    const list = { path: 'parts', value: [weights] };
    expect(said(470, { path: 'parts', value: [] })).toContain(none);
    expect(said(470, list)).not.toContain(none);
    expect(said(470, list, { path: 'tractor.frontBracketLimit', value: 25 })).toContain(none);
    expect(said(200, { path: 'parts', value: [] })).not.toContain(none);
  });
  test('a loader that tips it forward is said to need a counterweight behind, rounded up', () => {
    const loaded = [
      { path: 'tractor.loader', value: 'loaded' },
      { path: 'tractor.loaderMass', value: 430 },
      { path: 'tractor.loaderLoad', value: 1100 },
      { path: 'tractor.loaderLoadAhead', value: 1500 },
    ];
    const answer = answerFor(200, ...loaded);
    const wanted = Math.ceil(answer.balance?.counterweight ?? NaN);
    expect(balanceRemarks(answer, 'metric').join(' ')).toContain(`about ${wanted} kg (`);
    expect(answer.outcomes.staysUpright).toBe('willNot');
    expect(said(200)).not.toContain('lower links');
  });
  test('nothing is said of a tractor that nobody weighed', () => {
    expect(said(470, { path: 'tractor.mass', value: undefined })).toBe('');
  });
});

describe('the rules for the front axle in words', () => {
  test('the share in their names is that of the table', () => {
    for (const name of steeringRuleNames) {
      const share = steeringRules(name).share.value;
      expect(steeringRuleWords[name]).toMatch(share === 0.5 ? /^Half/ : new RegExp(`^${share * 100} %`));
    }
  });
  test('each says what it takes its share of and who asks for it', () => {
    expect(steeringRuleText('ofTractor')).toMatch(/the tractor itself.*mowers.*road traffic ask/);
    expect(steeringRuleText('ofTotal')).toMatch(/all that stands on the wheels.*farm press ask/);
    expect(steeringRuleText('halfOfFront')).toMatch(/on the ground.*row-crop tractor asks/);
    const sources = (name: (typeof steeringRuleNames)[number]): string[] =>
      axleShareFigures(name).map(({ source }) => source);
    expect(sources('ofTractor')).toContain('en-iso-4254-10');
    expect(sources('ofTotal')).toEqual(['italian-ballast-articles', 'manual-loader-ballast', 'manual-mower-polish']);
    expect(sources('halfOfFront')).toEqual(['manual-row-crop-ballast']);
  });
  test('what each comes to is told with what there is to spare or what is short', () => {
    const [ofTractor] = answerFor(200).steeringRules;
    const [short] = answerFor(470).steeringRules;
    if (ofTractor === undefined || short === undefined) throw new Error('no rules');
    expect(steeredWords(ofTractor, 'metric')).toMatch(/^kept, \d+ kg \(\d+ lb\) to spare$/);
    expect(steeredWords(short, 'metric')).toMatch(/^front axle \d+ kg \(\d+ lb\).* short$/);
    expect(steeredText(short, 'metric')).toMatch(
      /^20 % of the tractor, used here: front axle .* short\. Wants: a fifth of/,
    );
  });
});

describe('what the smallest set costs', () => {
  const one = (part: string | null, price: Cure['price'], count = 1): Cure => ({
    kind: part === null ? 'liftStop' : 'part',
    part,
    price,
    count,
    amount: null,
    edits: [],
    returnable: true,
    altersMachine: false,
    on: 'tractor',
    cures: [],
    inSmallestSet: true,
  });
  const euros = (amount: number): Cure['price'] => ({ amount, currency: 'EUR' });
  test('prices times counts are added up', () => {
    expect(setPriceText([one('a', euros(50), 3), one('b', euros(9.5)), one(null, null)])).toBe(
      'What is counted on costs EUR 159.50.',
    );
  });
  test('what is not in the set costs nothing', () => {
    expect(setPriceText([one('a', euros(50)), { ...one('b', euros(9)), inSmallestSet: false }])).toContain(
      'EUR 50.00.',
    );
    expect(setPriceText([{ ...one('b', euros(9)), inSmallestSet: false }])).toBeNull();
  });
  test('currencies are never added to each other, and a part without a price is said', () => {
    expect(setPriceText([one('a', euros(50)), one('b', { amount: 9, currency: 'USD' })])).toBeNull();
    expect(setPriceText([one('a', euros(50)), one('b', null)])).toBe(
      'What is counted on costs EUR 50.00, and one part without a price.',
    );
    expect(setPriceText([one('a', null)])).toBeNull();
  });
});
