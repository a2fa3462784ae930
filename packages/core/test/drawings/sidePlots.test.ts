import { describe, expect, it } from 'vitest';
import {
  liftPlots,
  type Circle,
  type Item,
  type Lettering,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import type { Station } from '../../src/engine/lift/index.ts';
import { lifts, swept, withStation, type Swept } from './sideSetups.ts';

const kgPerPound = 0.45359237;

function plotsOf({ setup, answer }: Pick<Swept, 'setup' | 'answer'>, station: number, system: 'us' | 'metric'): Scene {
  return liftPlots(setup, answer, { system, station }) as Scene;
}

function texts(items: readonly Item[]): Lettering[] {
  return items.filter((item) => item.kind === 'text');
}

/** Reads a value off an axis as a person does, from the two outer numbers under it. */
function readOff(numbers: readonly Lettering[], x: number): number {
  const points = numbers.map(({ at, text }) => [at[0], Number(text.replace('−', '-').replace(/[°,]/g, ''))] as const);
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no numbers');
  return first[1] + ((x - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
}

interface Axes {
  readonly degrees: readonly Lettering[];
  readonly masses: readonly Lettering[];
  /** Rings at the level of the station: attitude first. */
  readonly rings: readonly Circle[];
}

/** The two axes of the plots: their numbers, found by where they stand, and the rings. */
function axesOf(scene: Scene): Axes {
  const numbers = texts(scene.items).filter(({ anchor, text }) => anchor === 'middle' && /^−?[\d,]+°?$/.test(text));
  const foot = Math.min(...numbers.map(({ at }) => at[1]));
  const under = numbers.filter(({ at }) => Math.abs(at[1] - foot) < 1e-6);
  return {
    degrees: under.filter(({ text }) => text.endsWith('°')),
    masses: under.filter(({ text }) => !text.endsWith('°')),
    rings: scene.items.filter((item) => item.kind === 'circle' && item.fill === 'sheet') as Circle[],
  };
}

describe('the plots, read with a ruler', () => {
  for (const system of ['us', 'metric'] as const) {
    it(`show pitch, proven and estimated lift of the station at its ball height: ${system}`, () => {
      const unit = system === 'us' ? kgPerPound : 1;
      const lift = lifts['rigid frame, arms known']?.() as Swept;
      for (const index of [3, 30, 57]) {
        const station = lift.sweep.stations[index] as Station;
        const { degrees, masses, rings } = axesOf(plotsOf(lift, index, system));
        const [pitch, estimated, proven] = rings as [Circle, Circle, Circle];
        expect(rings).toHaveLength(3);
        for (const ring of rings) expect(ring.centre[1]).toBe(station.ballHeight);
        expect(readOff(degrees, pitch.centre[0])).toBeCloseTo(station.pitch, 6);
        expect(readOff(masses, proven.centre[0]) * unit).toBeCloseTo(station.proven ?? NaN, 6);
        expect(readOff(masses, estimated.centre[0]) * unit).toBeCloseTo(station.estimated ?? NaN, 6);
      }
    });
  }

  it('run their curves through every station', () => {
    const lift = swept(['Ostrey 55', 'U-33', 'two-row']);
    const scene = plotsOf(lift, 0, 'metric');
    const { degrees, masses } = axesOf(scene);
    const curves = scene.items.filter(
      (item): item is Stroke => item.kind === 'stroke' && item.points.length === lift.sweep.stations.length,
    );
    const [pitch, proven] = curves as [Stroke, Stroke];
    expect(curves).toHaveLength(2);
    for (const [i, station] of lift.sweep.stations.entries()) {
      const [a, b] = [pitch.points[i], proven.points[i]];
      expect([a?.[1], b?.[1]]).toEqual([station.ballHeight, station.ballHeight]);
      expect(readOff(degrees, a?.[0] ?? NaN)).toBeCloseTo(station.pitch, 6);
      expect(readOff(masses, b?.[0] ?? NaN)).toBeCloseTo(station.proven ?? NaN, 6);
    }
  });

  it('draw the load as a limit in the accent and hatch what is less', () => {
    const lift = lifts['rigid frame, arms known']?.() as Swept;
    const scene = plotsOf(lift, 0, 'metric');
    const { masses } = axesOf(scene);
    const limit = scene.items.find((item) => item.kind === 'stroke' && item.role === 'misfit') as Stroke;
    expect(readOff(masses, limit.points[0]?.[0] ?? NaN)).toBeCloseTo(lift.sweep.load ?? NaN, 6);
    const hatched = scene.items.filter((item) => item.kind === 'hatch');
    const edges = hatched.map(({ outline }) => readOff(masses, Math.max(...outline.map(([x]) => x))));
    expect(Math.max(...edges)).toBeCloseTo(lift.sweep.load ?? NaN, 6);
  });

  it('leave a gate of three degrees either way at the working height, and hatch beside it', () => {
    const lift = lifts['rigid frame, arms known']?.() as Swept;
    const scene = plotsOf(lift, 0, 'us');
    const { degrees } = axesOf(scene);
    const work = lift.sweep.work ?? NaN;
    const beside = scene.items.filter(
      (item) => item.kind === 'hatch' && item.outline.every(([, z]) => Math.abs(z - work) < 60),
    );
    const edges = beside.flatMap((item) =>
      item.kind === 'hatch' ? item.outline.map(([x]) => readOff(degrees, x)) : [],
    );
    expect(beside).toHaveLength(2);
    expect(Math.max(...edges.filter((edge) => edge < 0))).toBeCloseTo(-3, 6);
    expect(Math.min(...edges.filter((edge) => edge > 0))).toBeCloseTo(3, 6);
  });

  it('mark where proven lift and load cross: there the sweep says that it gives out', () => {
    const lift = lifts['the lift gives out on the way']?.() as Swept;
    const scene = plotsOf(lift, 0, 'metric');
    const dots = scene.items.filter((item) => item.kind === 'circle' && item.role === 'misfit') as Circle[];
    expect(dots).toHaveLength(1);
    expect(dots[0]?.centre[1]).toBeCloseTo(lift.sweep.stallProven ?? NaN, 6);
    const height = Math.round(lift.sweep.stallProven ?? NaN);
    expect(texts(scene.items).map(({ text }) => text)).toContain(`to ${height}`);
    expect(scene.description).toContain(`The lift is proven for the load up to ${height} mm (`);
  });

  it('mark none where the lift is always enough, or never', () => {
    for (const name of ['rigid frame, arms known', 'no coupler, arms not known, too heavy']) {
      const scene = plotsOf(lifts[name]?.() as Swept, 0, 'us');
      expect(scene.items.filter((item) => item.kind === 'circle' && item.role === 'misfit')).toEqual([]);
    }
  });

  it('break the curves and rule out the heights at which the linkage binds', () => {
    const lift = lifts['the rod is too short at the bottom']?.() as Swept;
    const { unreachable, stations } = lift.sweep;
    const scene = plotsOf(lift, 0, 'us');
    const closing = stations.filter(({ closes }) => closes);
    const curves = scene.items.filter((item): item is Stroke => item.kind === 'stroke' && item.points.length > 20);
    expect(curves.length).toBeGreaterThan(1);
    for (const { points } of curves)
      for (const [, z] of points) expect(z).toBeGreaterThanOrEqual(closing[0]?.ballHeight ?? NaN);
    const ruledOut = scene.items.filter(
      (item) =>
        item.kind === 'hatch' &&
        item.outline.some(([, z]) => z <= (unreachable?.low ?? NaN)) &&
        item.outline.some(([, z]) => z >= (unreachable?.high ?? NaN)),
    );
    expect(ruledOut.length).toBeGreaterThanOrEqual(2);
    expect(axesOf(scene).rings).toEqual([]);
  });

  it('show a lift without end near a dead point only up to twice what is usual', () => {
    const { setup, answer } = swept(['Ostrey 35', null, 'tiller']);
    const wild = withStation(answer, { proven: 90_000, estimated: 95_000 });
    const calm = axesOf(plotsOf({ setup, answer }, 30, 'metric')).masses;
    const shown = axesOf(plotsOf({ setup, answer: wild }, 30, 'metric')).masses;
    const highest = (numbers: readonly Lettering[]) => Number(numbers.at(-1)?.text.replace(',', ''));
    expect(highest(shown)).toBeLessThanOrEqual(2.2 * highest(calm));
    expect(axesOf(plotsOf({ setup, answer: wild }, 0, 'metric')).rings).toHaveLength(1);
  });
});

describe('the ruler of ball heights', () => {
  it('has its numbers at their heights, in the person’s unit', () => {
    const lift = lifts['no coupler, arms known']?.() as Swept;
    for (const [system, unit] of [
      ['us', 25.4],
      ['metric', 1],
    ] as const) {
      const scene = plotsOf(lift, 60, system);
      const size = Math.min(...texts(scene.items).map((item) => item.size));
      const numbers = texts(scene.items).filter(({ anchor, text }) => anchor === 'end' && /^\d+$/.test(text));
      expect(numbers.length).toBeGreaterThan(2);
      for (const { at, text } of numbers) expect(at[1] + size * 0.34 * scene.scale).toBeCloseTo(Number(text) * unit, 6);
    }
  });

  it('names pick-up, work, carry and full lift from low to high, clear of each other', () => {
    const lift = swept(['Ostrey 35', 'U-28', 'tiller']);
    const scene = plotsOf(lift, 0, 'us');
    const names = texts(scene.items).filter(({ text }) => ['pick-up', 'work', 'carry', 'full lift'].includes(text));
    const heights = names.map(({ at }) => at[1] / scene.scale);
    expect(names.map(({ text }) => text)).toEqual(['pick-up', 'work', 'carry', 'full lift']);
    for (const [i, height] of heights.entries()) expect(height - (heights[i - 1] ?? -1e3)).toBeGreaterThan(4.2);
  });

  it('shows the ball height in a tag whose tip is at it, and no number under the tag', () => {
    const lift = swept(['Ostrey 35', 'U-28', 'tiller']);
    for (const station of [0, 11, 25]) {
      const height = lift.sweep.stations[station]?.ballHeight ?? NaN;
      const scene = plotsOf(lift, station, 'metric');
      const tag = scene.items.find(
        (item): item is Stroke => item.kind === 'stroke' && item.role === 'heavy' && item.points.length === 5,
      );
      const tip = tag?.points.reduce((best, point) => (point[0] > best[0] ? point : best));
      const half = 3.3 * scene.scale;
      expect(tip?.[1]).toBe(height);
      expect(texts(scene.items).map(({ text }) => text)).toContain(String(Math.round(height)));
      const covered = texts(scene.items).filter(
        ({ anchor, text, at }) => anchor === 'end' && /^\d+$/.test(text) && Math.abs(at[1] - height) < half,
      );
      expect(covered).toEqual([]);
    }
  });
});
