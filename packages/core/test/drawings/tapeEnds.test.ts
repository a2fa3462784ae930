import { describe, expect, it } from 'vitest';
import type { Dimension, Point } from '../../src/drawings/index.ts';
import { dimensionParts } from '../../src/drawings/dimensionParts.ts';
import { turnOf } from '../../src/drawings/tape/marks/protractor.ts';
import { itemsOf } from '../../src/drawings/tape/sketch.ts';
import { distanceTo, named, offEdge, offMiddle, onPhone, tapeCases } from './tapeCases.ts';

const lengths = tapeCases.filter(({ row }) => row.measured.kind === 'length');

describe('where the tape goes', () => {
  it('starts and ends at the points that it names', () => {
    for (const one of lengths) {
      const scene = onPhone(one);
      const found = scene.items.filter((item): item is Dimension => item.kind === 'dimension');
      expect(
        found.map(({ role, from, to }) => ({ role, from, to })),
        named(one),
      ).toEqual([{ role: 'misfit', from: one.row.measured.from.at, to: one.row.measured.to.at }]);
      const [{ from, to, along }] = found as [Dimension];
      const [a, b] = dimensionParts(found[0] as Dimension, scene.scale).ends;
      const apart = (to[0] - from[0]) * along[0] + (to[1] - from[1]) * along[1];
      expect(apart, named(one)).toBeGreaterThan(0);
      expect(Math.hypot(b[0] - a[0], b[1] - a[1]), named(one)).toBeCloseTo(apart, 6);
    }
  });

  it('names points that are drawn: an edge, the middle of something, or the ground', () => {
    const astray = tapeCases.flatMap((one) => {
      const { sketch, measured } = one.row;
      if (measured.kind === 'weight') return [];
      const items = itemsOf(sketch, []);
      return [measured.from, measured.to]
        .filter((end) => {
          if (end.word.includes('ground')) return end.at[1] !== sketch.ground;
          if (measured.kind === 'angle' && end.word.startsWith('level')) return end.at[1] !== measured.corner[1];
          const off = items.map((item) => {
            if (end.isCentre === true) return offMiddle(item, end.at);
            return measured.kind === 'angle' ? distanceTo(item, end.at) : offEdge(item, end.at, measured.along);
          });
          return Math.min(...off) > 0.6;
        })
        .map(({ word }) => `${named(one)}: ${word}`);
    });
    expect(astray).toEqual([]);
  });

  it('has the tool touch both of them', () => {
    for (const one of lengths) {
      const { items, scale } = onPhone(one);
      const accent = items.filter(
        (item) => (item.kind === 'stroke' || item.kind === 'circle') && item.role === 'misfit',
      );
      for (const { at, word } of [one.row.measured.from, one.row.measured.to]) {
        const off = Math.min(...accent.map((item) => distanceTo(item, at)));
        expect(off / scale, `${named(one)}: ${word}`).toBeLessThan(0.3);
      }
    }
  });

  it('lays both legs of a protractor along what it names, the second on the side that counts positive', () => {
    const angles = tapeCases.flatMap((one) =>
      one.row.measured.kind === 'angle' ? [{ one, angle: one.row.measured }] : [],
    );
    expect(angles.length).toBeGreaterThan(6);
    for (const { one, angle } of angles) {
      const legs = onPhone(one).items.flatMap((item) =>
        item.kind === 'stroke' && item.role === 'misfit' && item.points[0] === angle.corner ? [item.points] : [],
      );
      expect(
        legs.map(([corner, end]) => directionOf(corner as Point, end as Point)),
        named(one),
      ).toEqual([angle.from.at, angle.to.at].map((at) => expect.closeTo(directionOf(angle.corner, at), 6)));
    }
    const turns = Object.fromEntries(angles.map(({ one, angle }) => [one.path, turnOf(angle).turn]));
    expect(turns['implement.inputAngle']).toBeGreaterThan(5);
    expect(turns['implement.inputYaw']).toBeLessThan(-5);
    expect(turns['tractor.liftArmLowest']).toBeLessThan(-2);
    expect(turns['tractor.liftArmHighest']).toBeGreaterThan(30);
    expect(turns['tractor.cylinderCrankAngle']).toBeGreaterThan(20);
  });
});

function directionOf([x0, z0]: Point, [x, z]: Point): number {
  return (Math.atan2(z - z0, x - x0) * 180) / Math.PI;
}
