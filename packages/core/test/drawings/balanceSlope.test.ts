import { describe, expect, it } from 'vitest';
import { slopeSketch, type Circle, type Item, type Point, type Scene, type Stroke } from '../../src/drawings/index.ts';
import type { BalanceStation } from '../../src/engine/balance/index.ts';
import { balanceCase, balances, weighedSetup } from './balanceSetups.ts';
import { letteringIn } from './letteringFaults.ts';

function drawn(name: string, station?: number): Scene {
  const { answer } = balanceCase(name);
  return slopeSketch(answer, 'metric', station === undefined ? {} : { station }) as Scene;
}

function strokes(items: readonly Item[], role: Stroke['role']): Stroke[] {
  return items.filter((item): item is Stroke => item.kind === 'stroke' && item.role === role);
}

/** Lines of gravity, from left to right: heavy and open. */
function gravityIn({ items }: Scene): [Point, Point][] {
  return strokes(items, 'heavy')
    .filter(({ closed }) => !closed)
    .map(({ points }) => points as unknown as [Point, Point]);
}

/** Slopes from left to right: thin straight lines of two points that are long and not wheels. */
function slopesIn({ items, scale }: Scene): { angle: number; from: Point; to: Point }[] {
  return strokes(items, 'thin')
    .filter(({ closed, points }) => !closed && points.length === 2)
    .map(({ points: [from, to] }) => ({ from: from as Point, to: to as Point }))
    .filter(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]) > 40 * scale)
    .map(({ from, to }) => ({
      from,
      to,
      angle: (Math.atan2(from[1] - to[1], to[0] - from[0]) * 180) / Math.PI,
    }));
}

describe('the slopes, measured with a protractor', () => {
  it('are inclined as the sweep says at each station', () => {
    for (const name of ['enough in front', 'loader over front weights', 'loader loaded']) {
      for (const station of [0, 25, 60]) {
        const { tips } = balanceCase(name).balance.stations[station] as BalanceStation;
        const angles = slopesIn(drawn(name, station)).map(({ angle }) => angle);
        expect(angles).toHaveLength(2);
        expect(angles[0]).toBeCloseTo(tips?.sideways ?? NaN, 6);
        expect(angles[1]).toBeCloseTo(tips?.uphill ?? NaN, 6);
      }
    }
  });

  it('have the line of gravity straight down through the tipping edge, from the centre of everything', () => {
    for (const name of ['enough in front', 'loader over front weights']) {
      const scene = drawn(name);
      const lines = gravityIn(scene);
      const circles = scene.items.filter((item): item is Circle => item.kind === 'circle');
      const edges = circles.filter(({ role, fill }) => role === 'heavy' && fill === 'line');
      const centres = circles.filter(({ point }) => point === 'centre');
      expect([lines.length, edges.length, centres.length]).toEqual([2, 2, 2]);
      lines.forEach(([top, foot], i) => {
        expect(top[0]).toBeCloseTo(foot[0], 9);
        expect(top).toEqual(centres[i]?.centre);
        expect(edges[i]?.centre[0]).toBeCloseTo(top[0], 6);
        expect(edges[i]?.centre[1]).toBeLessThan(top[1]);
        expect(edges[i]?.centre[1]).toBeGreaterThanOrEqual(foot[1]);
      });
    }
  });

  it('have the centre where the masses put it: as high above the slope, and as far ahead', () => {
    const { answer, balance } = balanceCase('enough in front');
    const scene = drawn('enough in front', 40);
    const here = balance.stations[40] as BalanceStation;
    const hung = answer.sweep?.stations[40]?.centre[1] ?? NaN;
    const height = ((here.total - balance.behind) * 640 + balance.behind * hung) / here.total;
    const slope = slopesIn(scene)[1];
    const centre = scene.items.filter((item): item is Circle => item.kind === 'circle' && item.point === 'centre')[1];
    if (slope === undefined || centre === undefined) throw new Error('no slope');
    const turn = (slope.angle * Math.PI) / 180;
    const [dx, dz] = [centre.centre[0] - slope.to[0], centre.centre[1] - slope.to[1]];
    expect(dx * Math.sin(turn) + dz * Math.cos(turn)).toBeCloseTo(height, 4);
  });

  it('are shown where the limit is least unless a station is asked for', () => {
    const { balance } = balanceCase('enough in front');
    const least = (which: 'sideways' | 'uphill'): number =>
      Math.min(...balance.stations.map(({ tips }) => tips?.[which] ?? NaN));
    const [across, uphill] = slopesIn(drawn('enough in front'));
    expect(across?.angle).toBeCloseTo(least('sideways'), 6);
    expect(uphill?.angle).toBeCloseTo(least('uphill'), 6);
  });
});

describe('the words of the slopes', () => {
  it('say an ideal limit that is none to work on, and half of its grade, all rounded down', () => {
    for (const [name, open] of Object.entries(balances)) {
      const scene = drawn(name, 30);
      const tips = open().balance.stations[30]?.tips;
      const words = letteringIn(scene.items)
        .map(({ text }) => text)
        .join(' ');
      if (tips == null || tips.uphill <= 0) {
        expect(words).toContain('does not even stand on the level');
        continue;
      }
      for (const angle of [tips.sideways, tips.uphill]) {
        expect(words).toContain(`${Math.floor(angle)}° ideal limit at rest Not a slope to work on.`);
        const grade = Math.tan((angle * Math.PI) / 180) / 2;
        const half = (Math.atan(grade) * 180) / Math.PI;
        expect(words).toContain(`Half of that grade is ${Math.floor(half)}° (${Math.floor(grade * 100)} %)`);
      }
      expect(words).toContain('our own choice');
    }
  });

  it('draw no slope where the front wheels leave the ground on the level', () => {
    const scene = drawn('front wheels lift', 30);
    expect(gravityIn(scene)).toEqual([]);
    for (const { angle } of slopesIn(scene)) expect(angle).toBe(0);
  });
});

describe('where a height is not known', () => {
  it('nothing is drawn', () => {
    const { answer } = weighedSetup(['Ostrey 35', null, 'box blade'], { centreHeight: undefined });
    expect(answer.balance).not.toBeNull();
    expect(slopeSketch(answer, 'us')).toBeNull();
    expect(slopeSketch({ ...answer, balance: null }, 'us')).toBeNull();
  });
});
