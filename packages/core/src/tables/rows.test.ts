import { describe, expect, test } from 'vitest';
import { bushings } from './bushings.ts';
import { categories } from './category.ts';
import { categoryPower } from './categoryPower.ts';
import { couplerKindFacts, couplerKinds } from './couplerKinds.ts';
import { couplerFigures, type CouplerField } from './couplers.ts';
import { highestOf, lowestOf, type Figure } from './figure.ts';
import { implementRows, type ImplementField } from './implementRows.ts';
import { implementFigures } from './implementSide.ts';
import { linkageFigures } from './linkage.ts';
import { ptoType, ptoTypeNumbers } from './ptoTypes.ts';
import { tractorRows, type TractorField } from './tractorRows.ts';
import { tractorFigures } from './tractorSide.ts';

const couplerFields: readonly CouplerField[] = [
  'clawBallDiameter',
  'hookHeight',
  'adjustableHookHeight',
  'socketSpread',
  'rearwardOffset',
  'hookEndOffset',
  'extraShaftLength',
  'lowerHookRoom',
  'gaugeBlock',
];

const everyRow: readonly Figure[] = [
  ...categories.flatMap((category) => [
    ...(Object.keys(implementRows) as ImplementField[]).flatMap((field) => implementFigures(category, field)),
    ...(Object.keys(tractorRows) as TractorField[]).flatMap((field) => tractorFigures(category, field)),
    ...couplerFields.flatMap((field) => couplerFigures(category, field)),
    ...categoryPower(category),
    ...linkageFigures(category, 'lowerLinkLength'),
  ]),
  ...bushings.flatMap((bushing) => [bushing.inside, bushing.outside, ...bushing.lengths]),
  ...ptoTypeNumbers.map(ptoType).flatMap((type) => [type.diameter, type.splines, type.speed, type.masterShieldOverlap]),
];

describe('every row', () => {
  test('says what was printed, where, and how it is known', () => {
    for (const row of everyRow) {
      expect(row.printed).not.toBe('');
      expect(row.locator).not.toBe('');
      expect(Number.isFinite(lowestOf(row)) && highestOf(row) >= lowestOf(row)).toBe(true);
    }
  });

  test('has a confidence exactly when it comes from memory', () => {
    for (const row of everyRow) expect(row.confidence !== undefined).toBe(row.status === 'memory');
  });

  test('printed in plain inches is 25.4 mm to the inch', () => {
    const inches = everyRow.filter((row) => row.printedUnit === 'in' && /^[\d./-]+$/.test(row.printed));
    expect(inches.length).toBeGreaterThan(20);
    for (const row of inches) expect(row.value).toBeCloseTo(25.4 * readInches(row.printed), 6);
  });

  test('printed in plain millimetres is the same number', () => {
    const plain = everyRow.filter((row) => row.printedUnit === 'mm' && /^[\d.]+$/.test(row.printed));
    expect(plain.length).toBeGreaterThan(100);
    for (const row of plain) expect(row.value).toBe(Number(row.printed));
  });
});

test('no bushing makes a pin smaller', () => {
  for (const bushing of bushings) expect(bushing.outside.value).toBeGreaterThan(bushing.inside.value);
});

test('only the couplers that fix a height or a span have a frame', () => {
  for (const kind of couplerKinds.map(couplerKindFacts)) {
    if (kind.fixesMastHeight || kind.fixesSpan) expect(kind.frame).toBe(true);
  }
});

test('disagreeing power rows stay side by side, and a choice picks one', () => {
  expect(categoryPower('1').filter((row) => row.source === 'exam-banks-hitch')).toHaveLength(2);
  expect(categoryPower('3', { edition: 'ISO 730-1' })).toMatchObject([{ value: 80, high: 185 }]);
});

function readInches(text: string): number {
  return text.split('-').reduce((total, part) => {
    const [top, bottom = '1'] = part.split('/');
    return total + Number(top) / Number(bottom);
  }, 0);
}
