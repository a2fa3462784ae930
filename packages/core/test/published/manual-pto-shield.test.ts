import { expect } from 'vitest';
import { highestOf, lowestOf, ptoType, ptoTypeNumbers } from '../../src/tables/index.ts';
import { published } from './register.ts';
import { sum } from './rows.ts';

const source = 'manual-pto-shield';
const locator = 'document OMLVU28456, page "DX,PTO"';

const printed = [
  [1, 35, 6, 85],
  [2, 35, 21, 85],
  [3, 45, 20, 100],
  [4, 57.5, 22, 100],
] as const;

for (const [type, diameter, splines, overlap] of printed) {
  published({ source, locator, kind: 'reads', title: `type ${type}: ${diameter} mm, ${splines} splines` }, () => {
    expect(ptoType(type).diameter.value).toBe(diameter);
    expect(ptoType(type).splines.value).toBe(splines);
  });
  published(
    { source, locator, kind: 'reads', title: `type ${type}: master shield reaches ${overlap} ±5 mm over the end` },
    () => {
      const row = ptoType(type).masterShieldOverlap;
      expect([lowestOf(row), highestOf(row)]).toEqual([overlap - 5, overlap + 5]);
    },
  );
}

published(
  {
    source,
    locator,
    kind: 'reads',
    title: 'four types; splines add up to 69, overlaps to 370 mm; diameters never fall',
  },
  () => {
    const types = ptoTypeNumbers.map(ptoType);
    expect(types).toHaveLength(4);
    expect(sum(types.map((type) => type.splines.value))).toBe(69);
    expect(sum(types.map((type) => type.masterShieldOverlap.value))).toBe(370);
    const diameters = types.map((type) => type.diameter.value);
    expect([...diameters].sort((a, b) => a - b)).toEqual(diameters);
  },
);
