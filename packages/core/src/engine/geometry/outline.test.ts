import { describe, expect, test } from 'vitest';
import { gapBetween, gapToDisc, turned, type Outline } from './outline.ts';

const box = (x: number, z: number, wide: number, tall: number): Outline => [
  [x, z],
  [x + wide, z],
  [x + wide, z + tall],
  [x, z + tall],
];

describe('gap between outlines', () => {
  test('boxes side by side are apart by the space between them', () => {
    expect(gapBetween(box(0, 0, 10, 10), box(14, 2, 5, 5))).toBeCloseTo(4, 12);
  });
  test('boxes apart over a corner are apart by the diagonal', () => {
    expect(gapBetween(box(0, 0, 10, 10), box(13, 14, 5, 5))).toBeCloseTo(5, 12);
  });
  test('boxes that overlap have a negative gap: the least shift that parts them', () => {
    expect(gapBetween(box(0, 0, 10, 10), box(7, 2, 20, 5))).toBeCloseTo(-3, 12);
  });
  test('turning by a quarter carries the first axis to the second', () => {
    const [corner] = turned([[3, 0]], Math.PI / 2);
    expect(corner?.[0]).toBeCloseTo(0, 12);
    expect(corner?.[1]).toBeCloseTo(3, 12);
  });
});

describe('gap to a disc', () => {
  test('is the distance to its rim, and the depth where it reaches in', () => {
    expect(gapToDisc(box(0, 0, 10, 10), [14, 5], 3)).toBeCloseTo(1, 12);
    expect(gapToDisc(box(0, 0, 10, 10), [13, 14], 5)).toBeCloseTo(0, 12);
    expect(gapToDisc(box(0, 0, 10, 10), [12, 5], 3)).toBeCloseTo(-1, 12);
    expect(gapToDisc(box(0, 0, 10, 10), [9, 5], 3)).toBeCloseTo(-4, 12);
  });
  test('agrees with a polygon of many corners around it', () => {
    const disc = (x: number, z: number, radius: number): Outline =>
      Array.from({ length: 720 }, (_, i) => {
        const angle = (i * Math.PI) / 360;
        return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)] as const;
      });
    for (const [x, z] of [
      [20, 5],
      [14, 15],
      [-6, 3],
      [5, -9],
      [11, 5],
    ] as const) {
      expect(gapToDisc(box(0, 0, 10, 10), [x, z], 4)).toBeCloseTo(gapBetween(box(0, 0, 10, 10), disc(x, z, 4)), 3);
    }
  });
});
