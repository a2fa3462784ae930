import { describe, expect, test } from 'vitest';
import type { CheckId } from '../../src/engine/findings/index.ts';
import { readSetup, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { kilowattsPerHorsepower } from '../../src/units/index.ts';
import { remarksOn, sentenceOf } from '../../src/words/index.ts';
import { answer, finding } from '../asked.ts';
import { setup } from './yard.ts';

const edits = (fields: Readonly<Record<string, unknown>>): Edit[] =>
  Object.entries(fields).map(([path, value]) => ({ path, value }));

const statusOf = (document: SetupDocument, id: CheckId): string => finding(document, id).status;

/** What a finding says of a setup. */
function said(document: SetupDocument, id: CheckId, system: 'us' | 'metric' = 'us'): string {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return sentenceOf(finding(document, id), reading.setup, system);
}

function remarks(document: SetupDocument, system: 'us' | 'metric' = 'us'): string {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return remarksOn(answer(document), system, reading.setup).join('\n');
}

describe('scenario I: a stone burier that wants 45 hp', () => {
  const burier = (tractor: string, fields: Readonly<Record<string, unknown>> = {}) =>
    setup(tractor, null, 'stone burier', edits(fields));
  test('28.5 hp are too weak by 16.5, 46 hp pass barely', () => {
    expect(said(burier('35'), 'shaft.power')).toBe('The PTO gives 16.5 hp (12.4 kW) less than the implement wants.');
    expect(said(burier('55'), 'shaft.power')).toBe('The PTO gives the power it wants, 1.0 hp (0.7 kW) to spare.');
  });
  test('what it wants unread and its kind of work not one of the table: nothing is invented', () => {
    const unread = burier('35', { 'implement.powerWanted': undefined, 'implement.workWidth': 1300 });
    expect(finding(unread, 'shaft.power')).toMatchObject({ status: 'notChecked', reason: 'powerWanted' });
    const rowless = withEdits(unread, edits({ 'implement.work': 'landPlane' }));
    expect(finding(rowless, 'shaft.power')).toMatchObject({ status: 'notChecked', reason: 'powerWanted' });
  });
  test('made for 50 hp at the most, the 46 hp are allowed and 60 are not', () => {
    const most = { 'implement.powerMost': '50 hp' };
    expect(statusOf(burier('55', most), 'limit.powerMost')).toBe('pass');
    const strong = burier('55', { ...most, 'tractor.ptoPower': '60 hp' });
    const { margin } = finding(strong, 'limit.powerMost');
    expect((margin?.low ?? NaN) / kilowattsPerHorsepower).toBeCloseTo(-10, 9);
    expect(said(strong, 'limit.powerMost')).toMatch(/^The PTO gives .* more than the implement may be driven with\.$/);
    expect(answer(strong).lead?.id).toBe('shaft.splines');
  });
});

describe('a tiller whose power nobody read', () => {
  const unread = (tractor: string) =>
    setup(tractor, null, '60-in tiller', edits({ 'implement.powerWanted': undefined }));
  test('by its width it wants 25 to 35 hp: too much for 17.5, open for 28.5, little enough for 46', () => {
    expect(['24', '35', '55'].map((tractor) => statusOf(unread(tractor), 'shaft.power'))).toEqual([
      'fail',
      'undecided',
      'pass',
    ]);
    const assumed = answer(unread('35')).assumed.find(({ path }) => path === 'implement.powerWanted');
    expect(assumed?.origin).toBe('class');
    expect((assumed?.range.low ?? NaN) / kilowattsPerHorsepower).toBeCloseTo(25, 9);
    expect((assumed?.range.high ?? NaN) / kilowattsPerHorsepower).toBeCloseTo(35, 9);
    expect(assumed?.basis).toBe('by its width, 5–7 PTO hp/ft, from memory');
  });
  test('a brush cutter by common practice, a flail by a figure from memory with our own width', () => {
    const basis = (implement: string) =>
      answer(setup('35', null, implement, edits({ 'implement.powerWanted': undefined }))).assumed.find(
        ({ path }) => path === 'implement.powerWanted',
      )?.basis;
    expect(basis('60-in rotary cutter')).toBe('by its width, 4–7 PTO hp/ft, common practice');
    expect(basis('1.5-m flail')).toBe('by its width, 10 kW/m, from memory, 40 % either way by our own choice');
  });
  test('what is read goes before what its width says', () => {
    const read = withEdits(unread('35'), edits({ 'implement.powerWanted': '20 hp' }));
    expect(statusOf(read, 'shaft.power')).toBe('pass');
  });
});

describe('width over the rear tyres', () => {
  test('60 in of tiller cover the 35, 44 mm to spare, and miss 326 mm of the 55', () => {
    expect(finding(setup('35', null, '60-in tiller'), 'limit.width').margin?.low).toBeCloseTo(44, 9);
    expect(finding(setup('55', null, '60-in tiller'), 'limit.width').margin?.low).toBeCloseTo(-326, 9);
    expect(said(setup('55', null, '60-in tiller'), 'limit.width', 'metric')).toContain('326 mm');
  });
  test('it never decides: the tiller works on the 55 as it would with any width', () => {
    const on55 = setup('55', null, '60-in tiller');
    const wide = withEdits(on55, edits({ 'implement.workWidth': 2500 }));
    expect(statusOf(wide, 'limit.width')).toBe('pass');
    expect(answer(on55).verdict).toBe(answer(wide).verdict);
  });
  test('a plough need not cover anything; without a kind of work nothing is said', () => {
    const blade = (work: unknown) => setup('35', null, 'box blade', edits({ 'implement.work': work }));
    expect(finding(blade('plough'), 'limit.width')).toMatchObject({ status: 'notNeeded', reason: 'anyWidth' });
    expect(finding(blade(undefined), 'limit.width')).toMatchObject({ status: 'notChecked', reason: 'work' });
  });
});

describe('pull at work', () => {
  const chisel = (fields: Readonly<Record<string, unknown>> = {}) =>
    setup(
      '55',
      null,
      'two-row ripper',
      edits({ 'implement.work': 'chisel', 'implement.tools': 5, 'implement.workDepth': 150, ...fields }),
    );
  test('five points 15 cm deep at 5.5 mph: 8.4 to 45.1 kW by hand, 26.4 kW on firm soil', () => {
    const speed = 5.5 * 1.609344;
    const pull = (a: number, b: number, soil: number): number => soil * (a + b * speed) * 5 * 15;
    const [light, heavy] = [pull(91, 5.4, 0.65) * 0.5, pull(107, 6.3, 1) * 1.5];
    const { margin, quantity, band } = finding(chisel(), 'limit.draft');
    expect(band?.low).toBeCloseTo((light * speed) / 3600, 9);
    expect((quantity?.low ?? NaN) - (margin?.low ?? NaN)).toBeCloseTo((heavy * speed) / 3600, 9);
    expect(quantity?.high).toBeCloseTo(0.77 * 46 * kilowattsPerHorsepower, 9);
    expect(finding(chisel(), 'limit.draft').status).toBe('undecided');
  });
  test('slow enough it is certain, deep and fast enough it is certainly too much', () => {
    expect(statusOf(chisel({ 'implement.workSpeed': 3 }), 'limit.draft')).toBe('pass');
    const much = { 'implement.workSpeed': 12, 'implement.workDepth': 350, 'implement.tools': 9 };
    expect(statusOf(chisel(much), 'limit.draft')).toBe('fail');
    expect(answer(chisel(much)).verdict).toBe(answer(chisel()).verdict);
  });
  test('rear wheels alone pull less than all; without a word on them both are meant', () => {
    const given = (wheelsDriven: unknown) =>
      finding(chisel({ 'tractor.wheelsDriven': wheelsDriven }), 'limit.draft').quantity;
    const power = 46 * kilowattsPerHorsepower;
    expect(given('rear')?.high).toBeCloseTo(0.72 * power, 9);
    expect(given(undefined)?.low).toBeCloseTo(0.72 * power, 9);
    expect(given(undefined)?.high).toBeCloseTo(0.77 * power, 9);
  });
  test('each figure that is missing is named', () => {
    const needs = (fields: Readonly<Record<string, unknown>>) => finding(chisel(fields), 'limit.draft').reason;
    expect(needs({ 'implement.work': undefined })).toBe('work');
    expect(needs({ 'implement.tools': undefined })).toBe('tools');
    expect(needs({ 'implement.workDepth': undefined })).toBe('workDepth');
    expect(needs({ 'tractor.ptoPower': undefined })).toBe('ptoPower');
    expect(needs({ 'implement.work': 'cultivator' })).toBe('workSpeed');
    expect(needs({ 'implement.work': 'landPlane' })).toBe('workWidth');
    expect(needs({ 'implement.work': 'rotaryTiller' })).toBe('notDrawn');
  });
});

describe('a log splitter', () => {
  const splitter = (tractor: string, fields: Readonly<Record<string, unknown>> = {}) =>
    setup(tractor, null, 'log splitter', edits(fields));
  const ids = ['limit.remotes', 'limit.flow', 'limit.pressure'] as const;
  const statuses = (document: SetupDocument) => ids.map((id) => statusOf(document, id));
  test('on the 35 it works, slower and with less force than meant; the verdict stands', () => {
    expect(statuses(splitter('35'))).toEqual(['pass', 'fail', 'fail']);
    expect(said(splitter('35'), 'limit.flow')).toBe(
      'One remote gives 7.1 gpm (27.0 L/min) of the 10.6 gpm (40.0 L/min) that it wants: it works, slower than meant.',
    );
    expect(answer(splitter('35')).verdict).toBe('works');
  });
  test('on the 55 nothing is short', () => {
    expect(statuses(splitter('55'))).toEqual(['pass', 'pass', 'pass']);
  });
  test('two remotes where there is one', () => {
    expect(said(splitter('35', { 'implement.remotes': 2 }), 'limit.remotes')).toBe(
      'It takes 2 remotes, and the tractor has one remote.',
    );
  });
  test('a flow that may or may not do is open, and asked for', () => {
    const range = splitter('55', { 'tractor.remoteFlow': { between: [35, 45] } });
    expect(finding(range, 'limit.flow')).toMatchObject({ status: 'undecided', core: false });
    expect(finding(range, 'limit.flow').asks[0]?.path).toBe('tractor.remoteFlow');
  });
  test('what nobody said of remotes is asked for; what takes none needs none', () => {
    const reasons = (document: SetupDocument) => ids.map((id) => finding(document, id).reason);
    expect(reasons(splitter('24'))).toEqual(['remotes', 'remoteFlow', 'remotePressure']);
    expect(reasons(setup('35', null, 'bale spear'))).toEqual(['remotesTaken', 'remotesTaken', 'remotesTaken']);
    expect(reasons(splitter('35', { 'implement.remotes': 0 }))).toEqual(['noRemotes', 'noRemotes', 'noRemotes']);
    expect(reasons(splitter('35', { 'implement.flowWanted': undefined }))[1]).toBe('flowWanted');
  });
  test('4 in at 160 bar push with 129.7 kN; 24 in take 11.0 s out on 27 L/min, and three quarters of it back', () => {
    const text = remarks(splitter('35'), 'metric');
    expect(text).toContain('On 160 bar (2,320 psi) of this tractor its cylinder pushes with 129700 N (29,161 lbf)');
    expect(text).toContain('comes out in 11.0 s and goes back in 8.3 s, 19.3 s for both');
  });
});

describe('pace', () => {
  test('5 ft at 3 mph and 80 %: 1.4 acres an hour, 0.58 ha', () => {
    const cutter = setup('35', null, '60-in rotary cutter');
    expect(remarks(cutter)).toContain('At 3.0 mph (4.8 km/h) it works 1.4 acres/h (0.58 ha/h)');
    expect(remarks(cutter, 'metric')).toContain('At 4.8 km/h (3.0 mph) it works 0.58 ha/h (1.4 acres/h)');
  });
  test('a usual speed is called one, and a share from memory says so', () => {
    expect(remarks(setup('35', null, '60-in tiller'))).toMatch(/At its usual 3\.1 mph .* a share from memory\./);
  });
  test('the pull stands beside it, from light soil to heavy', () => {
    const ripper = edits({ 'implement.work': 'chisel', 'implement.tools': 5, 'implement.workDepth': 150 });
    expect(remarks(setup('55', null, 'two-row ripper', ripper))).toContain(
      'At work it takes 11.2 hp (8.4 kW) to 60.4 hp (45.1 kW) at the drawbar, from light soil to heavy',
    );
  });
  test('without a row for its pace nothing is said of it', () => {
    expect(remarks(setup('35', null, '1.5-m flail', edits({ 'implement.workSpeed': 5 })))).not.toContain('acres/h');
  });
});
