import { describe, expect, test } from 'vitest';
import type { SetupDocument } from '../../records/index.ts';
import { editFor, takenAs, type Taking, type Typed } from './index.ts';

const document: SetupDocument = {
  hitchwright: 1,
  tractor: { category: '1', lowerBallWidth: 35, ballSpan: { adjustable: { between: [605, 725] }, from: 'innerFaces' } },
  implement: { category: '1' },
};
const taker = { who: 'Jo', when: '2026-11-25T08:30Z' };
const at = (text: string, value: number): Typed => ({ text, value });

function valueFor(taking: Taking): unknown {
  return editFor(document, taking.path, [taking], taker)?.value;
}

describe('what goes into the record', () => {
  test('one reading: as typed, with its tool and what that may be off', () => {
    expect(valueFor({ path: 'implement.mastHeight', typed: [at('18 1/16 in', 458.7875)] })).toEqual({
      value: '18 1/16 in',
      plusMinus: 1.5,
      tool: 'tape',
      ...taker,
    });
  });
  test('a text that means something else in another unit system becomes a number', () => {
    expect(valueFor({ path: 'implement.mastHeight', typed: [at('18 1/16', 458.7875)] })).toMatchObject({
      value: 458.7875,
    });
    expect(valueFor({ path: 'implement.mastHeight', typed: [at('459', 459)] })).toMatchObject({ value: 459 });
  });
  test('several readings: their middle, and all texts', () => {
    expect(valueFor({ path: 'implement.mastHeight', typed: [at('457 mm', 457), at('18 1/16 in', 458.7875)] })).toEqual({
      value: 457.894,
      plusMinus: 1.501,
      method: 'read as 457 mm and 18 1/16 in',
      tool: 'tape',
      ...taker,
    });
  });
  test('what was worked out: its ends, the way in words, and what was typed', () => {
    const taking: Taking = { path: 'implement.mass', typed: [at('300 kg', 300)], way: 'guess' };
    expect(valueFor(taking)).toEqual({
      between: [225, 375],
      method: 'a guess; read as 300 kg',
      ...taker,
    });
  });
  test('perhaps not level is said', () => {
    const taking: Taking = { path: 'tractor.stubHeight', typed: [at('560 mm', 560)], aslant: true };
    expect(valueFor(taking)).toMatchObject({ method: 'perhaps not standing level; read as 560 mm' });
  });
  test('the field cuts a range off', () => {
    expect(valueFor({ path: 'implement.washer', typed: [at('0 mm', 0)] })).toMatchObject({ between: [0, 1.5] });
  });
  test('nothing follows: no change', () => {
    for (const way of ['plateEdge', 'no such way'])
      expect(valueFor({ path: 'implement.mastHeight', typed: [at('457 mm', 457)], way })).toBeUndefined();
    expect(valueFor({ path: 'implement.mounting', typed: [at('x', 1)] })).toBeUndefined();
  });
  test('a way that takes the figure out of its field says so', () => {
    const taken = takenAs(document, {
      path: 'implement.shoulderSpan',
      typed: [at('310 mm', 310)],
      way: 'pinTips',
    });
    expect(taken).toMatchObject({ ok: false });
  });
});

describe('ends that were read between different points', () => {
  const end = (i: number, value: number, way: string): Taking => ({
    path: `tractor.ballSpan.adjustable.between.${i}`,
    typed: [at(`${value} mm`, value)],
    way,
  });
  const spanFor = (...takings: Taking[]): unknown => editFor(document, 'tractor.ballSpan', takings, taker)?.value;
  test('are kept as named where both are alike', () => {
    expect(spanFor(end(0, 604, 'innerFaces'), end(1, 726, 'innerFaces'))).toMatchObject({
      from: 'innerFaces',
      adjustable: { between: [{ value: '604 mm' }, { value: '726 mm' }] },
    });
  });
  test('are turned to ball centres where they differ', () => {
    const mixed = spanFor(end(0, 604, 'innerFaces'), end(1, 795, 'outerFaces'));
    expect(mixed).toMatchObject({
      adjustable: { between: [{ between: [637.5, 640.5] }, { between: [758.5, 761.5] }] },
    });
    expect(mixed).not.toHaveProperty('from');
  });
  test('an end that stands in the record counts only between the same points', () => {
    expect(spanFor(end(0, 604, 'innerFaces'))).toMatchObject({
      from: 'innerFaces',
      adjustable: { between: [{ value: '604 mm' }, 725] },
    });
    expect(spanFor(end(0, 639, 'ballCentre'))).toBeUndefined();
  });
});
