import { describe, expect, test } from 'vitest';
import { gapBetween, turned, type Outline } from './outline.ts';

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
