import { describe, expect, it } from 'vitest';
import {
  shaftPlots,
  type Circle,
  type Hatch,
  type Item,
  type Lettering,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import type { ShaftStation } from '../../src/engine/shaft/index.ts';
import { drives, type Drive } from './shaftSetups.ts';

function plotsOf({ setup, answer }: Drive, station: number, system: 'us' | 'metric' = 'metric'): Scene {
  return shaftPlots(setup, answer, { system, station, format: 'print' }) as Scene;
}

function named(name: string): Drive {
  return (drives[name] as () => Drive)();
}

function texts(items: readonly Item[]): Lettering[] {
  return items.filter((item) => item.kind === 'text');
}

/** Reads a value off an axis as a person does, from the two outer numbers under it. */
function readOff(numbers: readonly Lettering[], x: number): number {
  const points = numbers.map(({ at, text }) => [at[0], Number(text.replace('−', '-').replace('°', ''))] as const);
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last) throw new Error('no numbers');
  return first[1] + ((x - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
}

interface Axes {
  readonly degrees: readonly Lettering[];
  readonly lengths: readonly Lettering[];
  /** Rings at the level of the station, those of lengths first. */
  readonly rings: readonly Circle[];
}

function axesOf(scene: Scene): Axes {
  const numbers = texts(scene.items).filter(({ anchor, text }) => anchor === 'middle' && /^[−-]?\d+°?$/.test(text));
  const foot = Math.min(...numbers.map(({ at }) => at[1]));
  const under = numbers.filter(({ at }) => Math.abs(at[1] - foot) < 1e-6);
  return {
    degrees: under.filter(({ text }) => text.endsWith('°')),
    lengths: under.filter(({ text }) => !text.endsWith('°')),
    rings: scene.items.filter((item) => item.kind === 'circle' && item.fill === 'sheet') as Circle[],
  };
}

/** Hatched areas by what they rule out: from where to where, and between what heights. */
function hatchedIn(
  scene: Scene,
  numbers: readonly Lettering[],
): { from: number; to: number; low: number; high: number }[] {
  const hatches = scene.items.filter((item): item is Hatch => item.kind === 'hatch');
  return hatches.map(({ outline }) => {
    const [xs, zs] = [outline.map(([x]) => x), outline.map(([, z]) => z)];
    return {
      from: readOff(numbers, Math.min(...xs)),
      to: readOff(numbers, Math.max(...xs)),
      low: Math.min(...zs),
      high: Math.max(...zs),
    };
  });
}

describe('the plots of a shaft, read with a ruler', () => {
  for (const system of ['us', 'metric'] as const) {
    it(`show overlap and both angles of the station at its ball height: ${system}`, () => {
      const unit = system === 'us' ? 25.4 : 1;
      const drive = named('on the links, long enough');
      for (const index of [3, 30, 57]) {
        const here = drive.shaft.stations[index] as ShaftStation;
        const { degrees, lengths, rings } = axesOf(plotsOf(drive, index, system));
        const [overlap, implement, tractor] = rings as [Circle, Circle, Circle];
        expect(rings).toHaveLength(3);
        for (const ring of rings) expect(ring.centre[1]).toBeCloseTo(here.ballHeight, 6);
        expect(readOff(lengths, overlap.centre[0]) * unit).toBeCloseTo(here.overlap ?? NaN, 6);
        expect(readOff(degrees, implement.centre[0])).toBeCloseTo(here.implementAngle, 6);
        expect(readOff(degrees, tractor.centre[0])).toBeCloseTo(here.tractorAngle, 6);
      }
    });
  }

  it('show the overlap at the shortest as well where shift and sway make a difference', () => {
    const drive = named('shifts aside, input turned');
    const here = drive.shaft.stations[20] as ShaftStation;
    const { lengths, rings } = axesOf(plotsOf(drive, 20));
    const values = rings.slice(0, 2).map(({ centre }) => readOff(lengths, centre[0]));
    const total = (drive.shaft.closedLength ?? NaN) + (drive.shaft.closedOverlap ?? NaN);
    expect(values[0]).toBeCloseTo(total - here.shortest, 6);
    expect(values[1]).toBeCloseTo(total - here.longest, 6);
  });

  it('show the distance between the joints where the length of the shaft is not known', () => {
    const drive = named('length not known');
    const { lengths, rings } = axesOf(plotsOf(drive, 40));
    expect(readOff(lengths, rings[0]?.centre[0] ?? NaN)).toBeCloseTo(drive.shaft.stations[40]?.longest ?? NaN, 6);
  });

  it('rule out what is apart or near bottoming at every height, and too little overlap where the drive turns', () => {
    const drive = named('a coupler moves it back, too little overlap');
    const { shaft } = drive;
    const scene = plotsOf(drive, 0);
    const areas = hatchedIn(scene, axesOf(scene).lengths);
    const [low, high] = [shaft.stations[0]?.ballHeight ?? NaN, shaft.stations.at(-1)?.ballHeight ?? NaN];
    const isWhole = (area: { low: number; high: number }): boolean =>
      area.low <= low + 1e-6 && area.high >= high - 1e-6;
    const apart = areas.find((area) => isWhole(area) && Math.abs(area.to) < 1e-6);
    const bottoming = areas.find((area) => isWhole(area) && Math.abs(area.from - 250) < 1e-6);
    const turning = areas.find((area) => Math.abs(area.from) < 1e-6 && Math.abs(area.to - 150) < 1e-6);
    expect([apart, bottoming].every((area) => area !== undefined)).toBe(true);
    expect([turning?.low, turning?.high]).toEqual([shaft.turnsFrom, shaft.turnsTo]);
  });

  it('rule out angles beyond the limit of turning where the drive turns, and of stopping at every height', () => {
    const drive = named('a coupler moves it back, too little overlap');
    const scene = plotsOf(drive, 0);
    const areas = hatchedIn(scene, axesOf(scene).degrees);
    const turning = areas.find((area) => Math.abs(area.from - 25) < 1e-6);
    const stop = areas.find((area) => Math.abs(area.from - 35) < 1e-6);
    expect([turning?.low, turning?.high]).toEqual([drive.shaft.turnsFrom, drive.shaft.turnsTo]);
    expect(stop?.high ?? NaN).toBeGreaterThanOrEqual(drive.shaft.stations.at(-1)?.ballHeight ?? NaN);
  });

  it('mark where the drive turns with a bar, a single height among them', () => {
    for (const name of ['on the links, long enough', 'turns at work only']) {
      const { shaft, ...drive } = named(name);
      const { items } = plotsOf({ shaft, ...drive }, 0);
      const bars = items.filter(
        (item): item is Stroke => item.kind === 'stroke' && item.role === 'thin' && item.fill === 'line',
      );
      const heights = bars.map(({ points }) => points.map(([, z]) => z));
      const middle = (shaft.turnsFrom + shaft.turnsTo) / 2;
      const beside = heights.filter((zs) => Math.abs((Math.min(...zs) + Math.max(...zs)) / 2 - middle) < 1e-6);
      expect(beside, name).toHaveLength(2);
      const tall = Math.max(...beside.flat()) - Math.min(...beside.flat());
      expect(tall).toBeGreaterThanOrEqual(shaft.turnsTo - shaft.turnsFrom - 1e-6);
    }
  });

  it('mark where it is shortest and longest: there it is measured', () => {
    const drive = named('bottoms at the bottom');
    const { items } = plotsOf(drive, 30);
    const dots = items.filter(
      (item) => item.kind === 'circle' && item.role === 'heavy' && item.fill === 'line',
    ) as Circle[];
    const heights = dots.map(({ centre }) => centre[1]);
    expect(heights).toContain(drive.shaft.shortestAt);
    expect(heights).toContain(drive.shaft.longestAt);
    expect(texts(items).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['shortest', 'longest', expect.stringContaining('measure')]),
    );
  });

  it('say in the accent what is in the way at a height', () => {
    const said = (name: string, station: number): string[] =>
      texts(plotsOf(named(name), station).items).flatMap(({ tone, text }) => (tone === 'accent' ? [text] : []));
    expect(said('comes apart on the way', 60)).toEqual(expect.arrayContaining(['apart', '14 mm']));
    expect(said('bottoms at the bottom', 6)).toEqual(expect.arrayContaining(['too long']));
    expect(said('too near to bottoming', 14)).toEqual(expect.arrayContaining(['to bottoming']));
    expect(said('a coupler moves it back, too little overlap', 60)).toEqual(expect.arrayContaining(['35° allowed']));
    expect(said('on the links, long enough', 20)).toEqual(['150 wanted', '25° turning']);
  });
});
