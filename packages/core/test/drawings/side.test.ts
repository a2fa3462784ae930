import { describe, expect, it } from 'vitest';
import {
  liftPlots,
  liftStrip,
  openLiftPictures,
  sceneToSvg,
  sideView,
  type Format,
  type Item,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import type { Station } from '../../src/engine/lift/index.ts';
import { judgedFully, documentOf, lifts, swept, type Swept } from './sideSetups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];
const pixelMm = 25.4 / 96;

function made(scene: Scene | null): Scene {
  if (scene === null) throw new Error('nothing was drawn');
  return scene;
}

interface Marked {
  readonly name: string;
  readonly at: readonly [number, number];
}

const circle = /<circle [^>]*data-point="(\w+)" cx="([^"]+)" cy="([^"]+)"/g;

/** Every point that is marked in an SVG text, as somebody with a ruler would find it: x right, z up [units of the viewBox]. */
function markedIn(svg: string): Marked[] {
  return [...svg.matchAll(circle)].map(([, name = '', x, y]) => ({ name, at: [Number(x), -Number(y)] as const }));
}

function distance([x, z]: readonly [number, number], [a, b]: readonly [number, number]): number {
  return Math.hypot(x - a, z - b);
}

/** Every joint of a station stands in the drawing where the sweep says, all by the same shift. */
function expectTrue(svg: string, station: Station, isCentreKnown: boolean, shift: readonly [number, number] = [0, 0]) {
  const marked = markedIn(svg);
  const wanted = {
    ball: station.ball,
    topEnd: station.topEnd,
    pins: station.pins,
    mast: station.mast,
    armEnd: station.armEnd,
    rodFoot: station.rodFoot,
    centre: isCentreKnown ? station.centre : null,
  };
  for (const [name, point] of Object.entries(wanted)) {
    const found = marked.filter((one) => one.name === name);
    if (point === null) expect(found, name).toEqual([]);
    else {
      const moved = [point[0] + shift[0], point[1] + shift[1]] as const;
      expect(
        found.some(({ at }) => distance(at, moved) < 0.01),
        `${name} at ${String(moved)}`,
      ).toBe(true);
    }
  }
}

describe('the side view, measured', () => {
  for (const [name, open] of Object.entries(lifts)) {
    it(`puts every joint where the sweep has it, in every format: ${name}`, () => {
      const { setup, answer, sweep } = open();
      const isCentreKnown = sweep.load !== null && answer.figures['implement.centreBehind']?.origin !== 'unknown';
      for (const format of formats) {
        for (const station of [0, 20, 41, 60]) {
          const svg = sceneToSvg(made(sideView(setup, answer, { system: 'us', format, station })));
          expect(markedIn(svg).filter((one) => one.name === 'ball')).toHaveLength(1);
          expectTrue(svg, sweep.stations[station] as Station, isCentreKnown);
        }
      }
    });
  }

  it('draws both links from pivot to joint', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const { items } = made(sideView(setup, answer, { system: 'us', station: 50 }));
    const centres = items.flatMap((item) => (item.kind === 'circle' ? [item.centre] : []));
    for (const pivot of [sweep.lowerPivot, sweep.topPivot, sweep.armPivot])
      expect(centres.some((centre) => pivot !== null && distance(centre, pivot) < 1e-9)).toBe(true);
  });

  it('stands on the ground: the wheel is as big as it was measured and touches the ground line', () => {
    const { setup, answer } = swept(['Ostrey 35', null, 'tiller']);
    const { items } = made(sideView(setup, answer, { system: 'us' }));
    const ghosts = items.flatMap((item) => (item.kind === 'stroke' && item.role === 'ghost' ? [item.points] : []));
    const rim = ghosts.find((points) => Math.min(...points.map(([, z]) => z)) < 1 && points.length > 40);
    for (const [x, z] of rim ?? []) expect(Math.hypot(x, z - 520)).toBeCloseTo(520, 6);
    expect(rim?.length).toBeGreaterThan(40);
  });

  it('dimensions the ground clearance of the station, from the ground up', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const { items } = made(sideView(setup, answer, { system: 'us', station: 60 }));
    const [dimension] = items.filter((item) => item.kind === 'dimension');
    expect([dimension?.from[1], dimension?.to[1]]).toEqual([0, sweep.stations[60]?.clearance]);
  });

  it('cuts what digs in at the ground and dashes it below', () => {
    const { setup, answer } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const { items, bounds } = made(sideView(setup, answer, { system: 'us', station: 0 }));
    const below = items.filter(
      (item): item is Stroke => item.kind === 'stroke' && item.points.some(([, z]) => z < -1e-6),
    );
    expect(below.length).toBeGreaterThan(0);
    for (const { role, points } of below) {
      expect(role).toBe('hidden');
      for (const [, z] of points) expect(z).toBeGreaterThan(bounds.bottom);
    }
  });

  it('draws the part that binds in the accent, and nothing else', () => {
    const { setup, answer, sweep } = lifts['the rod is too short at the bottom']?.() as Swept;
    const accented = (station: number): Item[] =>
      made(sideView(setup, answer, { system: 'us', station })).items.filter(
        (item) => item.kind === 'stroke' && item.role === 'misfit',
      );
    const open = sweep.stations.findIndex(({ closes }) => closes);
    expect(open).toBeGreaterThan(0);
    expect(accented(open)).toEqual([]);
    const [rod, ...others] = accented(open - 1) as Stroke[];
    expect(others).toEqual([]);
    const { armEnd, rodFoot } = sweep.stations[open - 1] as Station;
    const middle = [0, 1].map((axis) => (rod?.points ?? []).reduce((sum, point) => sum + (point[axis] ?? 0) / 4, 0));
    for (const axis of [0, 1])
      expect(middle[axis]).toBeCloseTo(((armEnd?.[axis] ?? 0) + (rodFoot?.[axis] ?? 0)) / 2, 6);
  });

  it('shows other positions of the links where they are asked for, chain-dashed', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'box blade']);
    const { items } = made(sideView(setup, answer, { system: 'us', station: 60 }));
    const ends = items.flatMap((item) =>
      item.kind === 'stroke' && item.role === 'centre' && item.points[0] === sweep.lowerPivot ? [item.points[1]] : [],
    );
    const heights = ends.map((end) => end?.[1] ?? NaN);
    for (const asked of [sweep.pickUp, sweep.work, sweep.carry])
      expect(Math.min(...heights.map((height) => Math.abs(height - (asked ?? NaN))))).toBeLessThan(5.1);
    expect(ends).toHaveLength(3);
  });

  it('rests at the working height, and half-way up where none is given', () => {
    const worked = swept(['Ostrey 35', 'U-28', 'tiller']);
    const at = (one: Swept, station: number) =>
      sceneToSvg(made(sideView(one.setup, one.answer, { system: 'us', station })));
    const resting = ({ setup, answer }: Swept) => sceneToSvg(made(sideView(setup, answer, { system: 'us' })));
    const nearest = worked.sweep.stations.reduce(
      (best, { ballHeight }, i) =>
        Math.abs(ballHeight - (worked.sweep.work ?? 0)) <
        Math.abs((worked.sweep.stations[best]?.ballHeight ?? 0) - (worked.sweep.work ?? 0))
          ? i
          : best,
      0,
    );
    expect(resting(worked)).toBe(at(worked, nearest));
    const spear = swept(['Ostrey 24', null, 'bale spear']);
    expect(resting(spear)).toBe(at(spear, 30));
  });

  it('takes any number for a station to the nearest that exists', () => {
    const { setup, answer } = swept(['Ostrey 24', null, 'tiller']);
    const at = (station: number) => sceneToSvg(made(sideView(setup, answer, { system: 'us', station })));
    expect(at(-5)).toBe(at(0));
    expect(at(99)).toBe(at(60));
    expect(at(NaN)).toBe(at(openLiftPictures(setup, answer, { system: 'us' })?.resting ?? -1));
  });
});

describe('what is not known', () => {
  it('draws nothing where the lift is not known', () => {
    const { setup, answer } = judgedFully(documentOf(['Ostrey 35', null, 'auger']));
    expect(answer.sweep).toBeNull();
    const options = { system: 'us' } as const;
    expect(sideView(setup, answer, options)).toBeNull();
    expect(liftStrip(setup, answer, options)).toBeNull();
    expect(liftPlots(setup, answer, options)).toBeNull();
    expect(openLiftPictures(setup, answer, options)).toBeNull();
  });

  it('dashes a wheel that nobody measured and an implement whose centre nobody knows, and marks no centre', () => {
    const { setup, answer } = lifts['little is known']?.() as Swept;
    const scene = made(sideView(setup, answer, { system: 'us' }));
    const hidden = scene.items.filter((item) => item.kind === 'stroke' && item.role === 'hidden');
    expect(hidden.length).toBeGreaterThan(4);
    expect(markedIn(sceneToSvg(scene)).map(({ name }) => name)).not.toContain('centre');
    expect(scene.description).toContain('Bodies and wheel for place only.');
  });

  it('says in the plot what it would take to know the lift', () => {
    const text = (name: string): string => {
      const { setup, answer } = lifts[name]?.() as Swept;
      const { items } = made(liftPlots(setup, answer, { system: 'us' }));
      return items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
    };
    expect(text('little is known')).toContain('Not known: needs the mass of the implement.');
    expect(text('no rating')).toContain('Not known: needs a lift rating.');
  });
});

describe('pictures for a slider', () => {
  it('are the same as those drawn one by one, where each has its own sheet', () => {
    const { setup, answer } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const options = { system: 'metric', format: 'phone' } as const;
    const pictures = openLiftPictures(setup, answer, options);
    expect(pictures?.areBeside).toBe(false);
    for (const station of [0, 33, 60]) {
      expect(pictures?.view(station)).toEqual(sideView(setup, answer, { ...options, station }));
      expect(pictures?.plots(station)).toEqual(liftPlots(setup, answer, { ...options, station }));
    }
  });

  it('never jump: bounds, scale and all that stands still are the same at every station', () => {
    for (const open of Object.values(lifts)) {
      const { setup, answer } = open();
      for (const format of formats) {
        const pictures = openLiftPictures(setup, answer, { system: 'us', format });
        for (const draw of [pictures?.view, pictures?.plots]) {
          const scenes = [0, 20, 60].map((station) => made(draw?.(station) ?? null));
          const [first] = scenes as [Scene, ...Scene[]];
          const still = scenes.map(({ items }) => items.filter((item) => first.items.includes(item)).length);
          for (const { bounds, scale } of scenes) expect([bounds, scale]).toEqual([first.bounds, first.scale]);
          expect(Math.min(...still)).toBeGreaterThan(9);
        }
      }
    }
  });

  it('share scale, height and level where they stand side by side, and fill the sheet together', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const pictures = openLiftPictures(setup, answer, { system: 'us' });
    expect(pictures?.areBeside).toBe(true);
    const [view, plots] = [made(pictures?.view(44) ?? null), made(pictures?.plots(44) ?? null)];
    expect([plots.scale, plots.bounds.top, plots.bounds.bottom, plots.bounds.left]).toEqual([
      view.scale,
      view.bounds.top,
      view.bounds.bottom,
      view.bounds.right,
    ]);
    const width = (scene: Scene): number => (scene.bounds.right - scene.bounds.left) / scene.scale;
    expect(width(view) + width(plots)).toBeCloseTo(820 * pixelMm, 6);
    const height = sweep.stations[44]?.ballHeight ?? NaN;
    const levels = (scene: Scene) =>
      scene.items.filter(
        (item) => item.kind === 'stroke' && item.role === 'centre' && item.points.every(([, z]) => z === height),
      );
    expect(levels(view)).toHaveLength(1);
    expect(levels(plots)).toHaveLength(1);
  });

  it('stand apart where the implement is so long that the plots would be too low to read', () => {
    const { setup, answer } = swept(['Ostrey 24', null, 'rotary cutter']);
    const pictures = openLiftPictures(setup, answer, { system: 'us' });
    expect(pictures?.areBeside).toBe(false);
    expect(pictures?.view(9)).toEqual(sideView(setup, answer, { system: 'us', station: 9 }));
  });

  it('tell how many stations there are and how high the balls are at each', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'tiller']);
    const pictures = openLiftPictures(setup, answer, { system: 'us' });
    expect(pictures?.stations).toBe(sweep.stations.length);
    expect(pictures?.ballHeights).toEqual(sweep.stations.map(({ ballHeight }) => ballHeight));
  });
});

describe('the strip', () => {
  it('shows pick-up, work and carry at one scale, each as true as the side view', () => {
    const { setup, answer, sweep } = swept(['Ostrey 35', 'U-28', 'box blade']);
    for (const format of formats) {
      const scene = made(liftStrip(setup, answer, { system: 'us', format }));
      const svg = sceneToSvg(scene);
      const balls = markedIn(svg).filter(({ name }) => name === 'ball');
      const near = (height: number | null) =>
        sweep.stations.reduce((best, station) =>
          Math.abs(station.ballHeight - (height ?? 0)) < Math.abs(best.ballHeight - (height ?? 0)) ? station : best,
        );
      const wanted = [sweep.pickUp, sweep.work, sweep.carry].map(near);
      expect(balls).toHaveLength(3);
      for (const [i, station] of wanted.entries()) {
        const ball = (balls[i] as Marked).at;
        expectTrue(svg, station, true, [ball[0] - station.ball[0], ball[1] - station.ball[1]]);
      }
      const captions = scene.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
      for (const name of ['Pick-up:', 'Work:', 'Carry:'])
        expect(
          captions.some((text) => text.startsWith(name)),
          `${format} ${name}`,
        ).toBe(true);
    }
  });

  it('takes the ends and the middle of the lift for heights that are not given or fall together', () => {
    const { setup, answer } = swept(['Ostrey 35', null, 'tiller']);
    const { subtitle } = made(liftStrip(setup, answer, { system: 'us', format: 'print' }));
    expect(subtitle).toBe('Pick-up, work; Carry; Full lift');
    const spear = swept(['Ostrey 24', null, 'bale spear']);
    expect(made(liftStrip(spear.setup, spear.answer, { system: 'us' })).subtitle).toBe('Pick-up; Half-way up; Carry');
  });

  it('is printed at a round scale', () => {
    const { setup, answer } = swept(['Ostrey 24', null, 'rotary cutter']);
    const { scale, description } = made(liftStrip(setup, answer, { system: 'us', format: 'print' }));
    expect([20, 25, 30, 40, 50, 60, 75]).toContain(scale);
    expect(description).toContain(`Printed 186 mm wide the scale is 1:${scale}.`);
  });
});
