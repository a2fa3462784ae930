import { expect } from 'vitest';
import {
  bestFigure,
  convergenceHalfAngle,
  frontSpacing,
  implementFigures,
  linkPlanLength,
  narrowSpan,
  tractorFigures,
} from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rises, rowOf, sum } from './rows.ts';

const source = 'manual-seed-drill';
const locator = 'document 1875049, p. 19, hitch table after ISO 730-1';
const wide = ['2', '3', '4'] as const;

const pins = { '2': 28, '3': 36.6, '3N': 36.6, '4N': 50.8, '4': 50.8 } as const;
const spans = { '2': 825, '3N': 825, '3': 965, '4N': 965, '4': 1166 } as const;

published(
  { source, locator, kind: 'reads', title: 'lower pins 28, 36.6, 36.6, 50.8, 50.8 mm for 2, 3, 3N, 4N, 4' },
  () => {
    for (const [category, diameter] of Object.entries(pins)) {
      const figures = implementFigures(category as keyof typeof pins, 'lowerPinDiameter');
      const row = figures.find((figure) => figure.source === source);
      expect(row?.value).toBe(diameter);
    }
  },
);

published(
  { source, locator, kind: 'reads', title: 'shoulder spans 825, 825, 965, 965, 1166 mm for 2, 3N, 3, 4N, 4' },
  () => {
    for (const [category, span] of Object.entries(spans)) {
      const figures = implementFigures(category as keyof typeof spans, 'shoulderSpan');
      const row = figures.find((figure) => figure.source === source && figure.status === 'read');
      expect(row?.value).toBe(span);
    }
  },
);

published(
  { source, locator, kind: 'reads', title: 'lower pins of 2, 3 and 4: three rows, rising, adding up to 115.4 mm' },
  () => {
    const values = wide.map((category) => rowOf(implementFigures(category, 'lowerPinDiameter'), source).value);
    expect(values).toHaveLength(3);
    expect(rises(values)).toBe(true);
    expect(sum(values)).toBeCloseTo(115.4, 6);
  },
);

published(
  { source, locator, kind: 'reads', title: 'shoulder spans of 2, 3 and 4: three rows, rising, adding up to 2956 mm' },
  () => {
    const values = wide.map((category) => rowOf(implementFigures(category, 'shoulderSpan'), source).value);
    expect(values).toHaveLength(3);
    expect(rises(values)).toBe(true);
    expect(sum(values)).toBe(2956);
  },
);

const convergence = { '2': [1800, 2400], '3': [1900, 2700], '4': [1900, 2800] } as const;
const fronts = { '2': [390, 505], '3': [480, 635], '4': [480, 660] } as const;

for (const category of wide) {
  const [nearest, farthest] = convergence[category];
  const [narrowest, widest] = fronts[category];
  published(
    { source, locator, kind: 'reads', title: `category ${category} convergence ${nearest}–${farthest} mm` },
    () => {
      const row = rowOf(tractorFigures(category, 'convergenceHorizontal'), source);
      expect([row.value, row.high]).toEqual([nearest, farthest]);
    },
  );
  published(
    { source, locator, kind: 'reads', title: `category ${category} front spacing ${narrowest}–${widest} mm` },
    () => {
      const row = rowOf(tractorFigures(category, 'linkFrontSpacing'), source);
      expect([row.value, row.high]).toEqual([narrowest, widest]);
    },
  );
}

published(
  {
    source,
    locator,
    kind: 'reads',
    title: 'convergence of 2, 3 and 4: six limits adding up to 13500 mm, upper ones rising',
  },
  () => {
    const rows = wide.map((category) => rowOf(tractorFigures(category, 'convergenceHorizontal'), source));
    const upper = rows.map((row) => row.high ?? NaN);
    expect(rows).toHaveLength(3);
    expect(sum([...rows.map((row) => row.value), ...upper])).toBe(13500);
    expect(rises(upper)).toBe(true);
  },
);

published({ source, locator, kind: 'computes', title: 'narrow rule: 3N takes the 825 mm span printed for it' }, () => {
  expect(bestFigure(narrowSpan('3N'), { source })?.value).toBe(825);
});

published({ source, locator, kind: 'computes', title: 'narrow rule: 4N takes the 965 mm span printed for it' }, () => {
  expect(bestFigure(narrowSpan('4N'), { source })?.value).toBe(965);
});

published({ source, locator, kind: 'computes', title: 'narrow rule: 3N and 4N keep pins of 36.6 and 50.8 mm' }, () => {
  for (const [category, diameter] of [
    ['3N', 36.6],
    ['4N', 50.8],
  ] as const) {
    const passedOn = implementFigures(category, 'lowerPinDiameter').filter((figure) => figure.status === 'derived');
    expect(passedOn.find((figure) => figure.source === source)?.value).toBe(diameter);
  }
});

published(
  {
    source,
    locator,
    kind: 'computes',
    title: 'narrow rule: 3N and 4N converge as printed for them, 1800–2400 and 1900–2700 mm',
  },
  () => {
    for (const [category, low, high] of [
      ['3N', 1800, 2400],
      ['4N', 1900, 2700],
    ] as const) {
      const passedOn = tractorFigures(category, 'convergenceHorizontal').filter(
        (figure) => figure.status === 'derived',
      );
      expect(passedOn.map((figure) => [figure.value, figure.high])).toContainEqual([low, high]);
    }
  },
);

const lengths = [
  ['2', 870, 390, 1800, 993],
  ['2', 870, 505, 2400, 1007],
  ['3', 1010, 480, 1900, 997],
  ['3', 1010, 635, 2700, 1002],
] as const;

for (const [category, span, front, meeting, length] of lengths) {
  const title = `category ${category}: spacing ${front} and convergence ${meeting} mm imply links of ${length} mm in plan ±0.5 (derived)`;
  published({ source, locator, kind: 'computes', title }, () => {
    expect(Math.abs(linkPlanLength(span, front, meeting) - length)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(frontSpacing(span, length, meeting) - front)).toBeLessThanOrEqual(0.5);
  });
}

for (const [meeting, degrees] of [
  [1800, 13.6],
  [2400, 10.3],
] as const) {
  const title = `category 2: balls 870 mm apart meeting at ${meeting} mm stand at ${degrees}° ±0.05 (derived)`;
  published({ source, locator, kind: 'computes', title }, () => {
    expect(Math.abs((convergenceHalfAngle(870, meeting) * 180) / Math.PI - degrees)).toBeLessThanOrEqual(0.05);
  });
}
