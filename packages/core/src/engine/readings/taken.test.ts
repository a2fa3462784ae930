import { describe, expect, test } from 'vitest';
import type { SetupDocument } from '../../records/index.ts';
import { agreementOf, takenAs, wayQuestion } from './index.ts';

const tractor = {
  category: '1',
  tyreRadius: 520,
  lowerLinkPivotHeight: 520,
  topLinkPivotHeight: 820,
  lowerLinkPivotBehindAxle: 120,
  lowerLinkLength: 760,
};
const document: SetupDocument = { hitchwright: 1, tractor, implement: { category: '1' } };

function widthOf(path: string, value: number, aslant: boolean): number {
  const taken = takenAs(document, { path, typed: [{ text: String(value), value }], aslant });
  return taken.ok ? taken.range.high - taken.range.low : NaN;
}

describe('ground that looks level', () => {
  const steep = Math.tan(Math.PI / 60);
  test('does no harm to a plumb line at the height of the axle, and 3° more for each millimetre above it', () => {
    const [level, aslant] = [false, true].map((one) => widthOf('tractor.lowerLinkPivotBehindAxle', 120, one));
    expect(aslant).toBeCloseTo(level ?? NaN, 9);
    const above =
      widthOf('tractor.topLinkPivotBehindAxle', 270, true) - widthOf('tractor.topLinkPivotBehindAxle', 270, false);
    expect(above).toBeCloseTo(2 * 300 * steep, 9);
  });
  test('moves a ball by no more than its link reaches back', () => {
    const more = widthOf('tractor.ballHeightHigh', 800, true) - widthOf('tractor.ballHeightHigh', 800, false);
    expect(more).toBeCloseTo(2 * 880 * steep, 9);
  });
  test('does none to a diameter or a span', () => {
    for (const [path, value] of [
      ['implement.lowerPinDiameter', 22],
      ['implement.shoulderSpan', 683],
      ['tractor.wheelbase', 1720],
    ] as const)
      expect(widthOf(path, value, true)).toBe(widthOf(path, value, false));
  });
});

describe('readings of which several pairs agree', () => {
  test('as many on the one side as on the other: what either leaves open', () => {
    const both = agreementOf(document, 'implement.mastHeight', [457, 459, 461.5]);
    expect(both).toEqual({ kind: 'agrees', range: { low: 456.5, high: 461.75 }, kept: 3, setAside: 0 });
  });
  test('three against two: the three', () => {
    const most = agreementOf(document, 'implement.mastHeight', [470, 457, 459, 470.5, 458]);
    expect(most).toEqual({ kind: 'agrees', range: { low: 456.5, high: 459.5 }, kept: 3, setAside: 2 });
  });
});

describe('what is asked about a reading', () => {
  test('the field’s own way comes first, keys are never twice, and an end is asked as its field', () => {
    for (const path of ['implement.shoulderSpan', 'coupler.front.mastHeight', 'shaft.closedLength', 'tractor.mass']) {
      const { ways } = wayQuestion(path) ?? { ways: [] };
      expect(ways[0]?.kind, path).toBe('as');
      expect(new Set(ways.map(({ key }) => key)).size).toBe(ways.length);
    }
    expect(wayQuestion('tractor.ballSpan.adjustable.between.0')).toBe(wayQuestion('tractor.ballSpan'));
    expect(wayQuestion('tractor.wheelbase')).toBeNull();
  });
  test('what nobody has read beside it is listed', () => {
    const taken = takenAs(document, {
      path: 'implement.shoulderSpan',
      typed: [{ text: '803 mm', value: 803 }],
      way: 'pinTips',
    });
    expect(taken).toMatchObject({ ok: true, unread: ['implement.standOut'], method: 'from tip to tip of the pins' });
  });
});
