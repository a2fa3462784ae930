import { describe, expect, it } from 'vitest';
import {
  openLiftPictures,
  sceneToSvg,
  shaftDrawing,
  shaftPlots,
  sideView,
  topView,
  type Circle,
  type Dimension,
  type Format,
  type Item,
  type Point,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import type { ShaftStation } from '../../src/engine/shaft/index.ts';
import { driven, drives, mirroredDrive, withShaft, type Drive } from './shaftSetups.ts';
import { lifts } from './sideSetups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];
const stations = [0, 14, 30, 45, 60];

function made(scene: Scene | null | undefined): Scene {
  if (scene == null) throw new Error('nothing was drawn');
  return scene;
}

function named(name: string): Drive {
  return (drives[name] as () => Drive)();
}

function dimensionsOf({ items }: Scene): Dimension[] {
  return items.filter((item) => item.kind === 'dimension');
}

/** Length of a dimension line as it stands in the SVG, as somebody with a ruler would find it [units of the viewBox]. */
function measuredIn(svg: string): number[] {
  const ends = /<line[^>]* data-ends="" x1="([^"]+)" y1="([^"]+)" x2="([^"]+)" y2="([^"]+)"\/>/g;
  return [...svg.matchAll(ends)].map((match) => {
    const [x1, y1, x2, y2] = match.slice(1).map(Number) as [number, number, number, number];
    return Math.hypot(x2 - x1, y2 - y1);
  });
}

const circle = /<circle [^>]*data-point="(\w+)" cx="([^"]+)" cy="([^"]+)"/g;

function pointsIn(svg: string): Readonly<Record<string, Point>> {
  return Object.fromEntries([...svg.matchAll(circle)].map(([, name = '', x, y]) => [name, [Number(x), -Number(y)]]));
}

describe('the shaft in the side view, measured', () => {
  for (const name of Object.keys(drives)) {
    it(`puts joints, stub and input where the sweep has them, in every format: ${name}`, () => {
      const { setup, answer, shaft } = named(name);
      for (const format of formats) {
        for (const station of stations) {
          const found = pointsIn(sceneToSvg(made(sideView(setup, answer, { system: 'us', format, station }))));
          const here = shaft.stations[station] as ShaftStation;
          for (const point of ['tractorCross', 'implementCross', 'stub', 'input'] as const)
            for (const axis of [0, 1])
              expect(Math.abs((found[point]?.[axis] ?? NaN) - (here[point][axis] ?? NaN)), point).toBeLessThan(0.01);
        }
      }
    });
  }

  it('draws the overlap, the gap or what is left before it bottoms as long as the sweep says', () => {
    for (const [name, open] of Object.entries(drives)) {
      const { setup, answer, shaft } = open();
      if (shaft.closedLength === null) continue;
      for (const station of stations) {
        const here = shaft.stations[station] as ShaftStation;
        const [overlap, toBottom] = [here.overlap ?? NaN, here.toBottom ?? NaN];
        const told = toBottom < shaft.limits.clearance && overlap >= 0 ? toBottom : overlap;
        const svg = sceneToSvg(made(sideView(setup, answer, { system: 'metric', station })));
        const nearest = Math.min(...measuredIn(svg).map((length) => Math.abs(length - Math.abs(told))));
        expect(nearest, `${name} at ${station}`).toBeLessThan(0.1);
      }
    }
  });

  it('overlaps the tubes themselves by that much, along the line from joint to joint', () => {
    const { setup, answer, shaft } = named('on the links, long enough');
    for (const station of stations) {
      const here = shaft.stations[station] as ShaftStation;
      const { items } = made(sideView(setup, answer, { system: 'us', station }));
      const [front, rear] = [here.tractorCross, here.implementCross];
      const length = Math.hypot(rear[0] - front[0], rear[1] - front[1]);
      const along = (point: Point): number =>
        ((point[0] - front[0]) * (rear[0] - front[0]) + (point[1] - front[1]) * (rear[1] - front[1])) / length;
      const tubes = items.filter((item): item is Stroke => isTube(item, along, length));
      const ends = tubes.map(({ points }) => points.map(along));
      const outerEnd = Math.min(...ends.map((reach) => Math.max(...reach)));
      const innerStart = Math.max(...ends.map((reach) => Math.min(...reach)));
      expect(tubes).toHaveLength(2);
      expect(Math.abs(outerEnd - innerStart - (here.overlap ?? NaN))).toBeLessThan(0.1);
    }
  });

  it('shows the gap in the accent where the halves are apart, and says so', () => {
    const { setup, answer, shaft } = named('comes apart on the way');
    const station = shaft.stations.findIndex(({ overlap }) => (overlap ?? 0) < 0);
    const { items, description } = made(sideView(setup, answer, { system: 'metric', station }));
    const gaps = items.filter((item) => item.kind === 'hatch' && item.role === 'misfit');
    const labels = items.flatMap((item) => (item.kind === 'text' && item.tone === 'accent' ? [item.text] : []));
    expect(station).toBeGreaterThan(0);
    expect(gaps).toHaveLength(1);
    expect(labels.join(' ')).toContain('apart');
    expect(description).toContain('Its halves are apart by');
  });

  it('marks where a tube runs into a yoke', () => {
    const { setup, answer, shaft } = named('bottoms at the bottom');
    const station = shaft.stations.findIndex(({ toBottom }) => (toBottom ?? 0) < 0);
    const { items, description } = made(sideView(setup, answer, { system: 'metric', station }));
    const filled = items.filter((item) => item.kind === 'stroke' && item.role === 'misfit' && item.fill === 'line');
    expect(filled).toHaveLength(2);
    expect(description).toContain('it bottoms');
  });

  it('draws a plain line where the closed length is not known', () => {
    const { setup, answer, shaft } = named('length not known');
    const { items } = made(sideView(setup, answer, { system: 'us', station: 30 }));
    const here = shaft.stations[30] as ShaftStation;
    const lines = items.filter((item) => item.kind === 'stroke' && item.points[0] === here.tractorCross);
    expect(lines.some((item) => item.kind === 'stroke' && item.points[1] === here.implementCross)).toBe(true);
    expect(sceneToSvg(made(sideView(setup, answer, { system: 'us' })))).not.toContain('overlap');
  });

  it('letters both angles, never smaller than they are, and those beyond their limit in the accent', () => {
    const { setup, answer, shaft } = named('a coupler moves it back, too little overlap');
    for (const station of [14, 60]) {
      const here = shaft.stations[station] as ShaftStation;
      const { items } = made(sideView(setup, answer, { system: 'us', station }));
      const angles = items.flatMap((item) => (item.kind === 'text' && /^[\d.]+°$/.test(item.text) ? [item] : []));
      for (const angle of [here.tractorAngle, here.implementAngle]) {
        const label = angles.find(({ text }) => Math.abs(Number.parseFloat(text) - angle - 0.05) < 0.051);
        expect(label?.tone, String(angle)).toBe(angle > 35 ? 'accent' : 'ink');
      }
    }
  });

  it('shows the opening of a coupler where it is known', () => {
    const hatches = (name: string): number => {
      const { setup, answer } = named(name);
      const { items } = made(sideView(setup, answer, { system: 'us', station: 60 }));
      return items.filter((item) => item.kind === 'hatch').length;
    };
    const withOpening = hatches('a coupler moves it back, too little overlap');
    expect(withOpening).toBe(hatches('turns at work only') + 2);
  });
});

function isTube(item: Item, along: (point: Point) => number, length: number): boolean {
  if (item.kind !== 'stroke' || item.points.length !== 4 || item.fill !== 'sheet') return false;
  const reach = item.points.map(along);
  const [from, to] = [Math.min(...reach), Math.max(...reach)];
  const isSquare = reach.every((at) => Math.abs(at - from) < 1e-6 || Math.abs(at - to) < 1e-6);
  return isSquare && from > 20 && to < length - 20 && to - from > 60;
}

describe('the top view', () => {
  it('puts both joints where the sweep has them, seen from above', () => {
    for (const [name, open] of Object.entries(drives)) {
      const { setup, answer, shaft } = open();
      for (const station of stations) {
        const found = pointsIn(sceneToSvg(made(topView(setup, answer, { system: 'us', station }))));
        const here = shaft.stations[station] as ShaftStation;
        const wanted = {
          tractorCross: [here.tractorCross[0], shaft.stubAside],
          implementCross: [here.implementCross[0], shaft.inputAside],
        };
        for (const [point, at] of Object.entries(wanted))
          for (const axis of [0, 1])
            expect(Math.abs((found[point]?.[axis] ?? NaN) - (at[axis] ?? NaN)), `${name} ${point}`).toBeLessThan(0.01);
      }
    }
  });

  it('puts the input where it was measured, and its shaft in line with the joint, turned as it was said', () => {
    const { setup, answer } = named('shifts aside, input turned');
    const { items } = made(topView(setup, answer, { system: 'us', station: 30 }));
    const found = pointsIn(sceneToSvg(made(topView(setup, answer, { system: 'us', station: 30 }))));
    const [input, joint] = [found['input'] as Point, found['implementCross'] as Point];
    expect(input[1]).toBeCloseTo(-60, 2);
    expect(joint[1]).toBeCloseTo(-60 + 57 * Math.sin((6 * Math.PI) / 180), 2);
    const ends = items.flatMap((item) =>
      item.kind === 'stroke' && item.points.length === 4 && item.points.every(([x]) => x > input[0] - 20) ? [item] : [],
    );
    const turns = ends.map(({ points }) => {
      const [x, y] = [0, 1].map((axis) => points.reduce((sum, point) => sum + (point[axis] ?? 0) / 4, 0)) as [
        number,
        number,
      ];
      return (Math.atan2(joint[1] - y, x - joint[0]) * 180) / Math.PI;
    });
    expect(turns.some((turn) => Math.abs(turn - 6) < 0.01)).toBe(true);
  });

  it('hatches the swing from the leftmost to the rightmost, and dimensions offset and swing', () => {
    const { setup, answer, shaft } = named('shifts aside, input turned');
    const scene = made(topView(setup, answer, { system: 'metric', station: 20 }));
    const here = shaft.stations[20] as ShaftStation;
    const fan = scene.items.find((item) => item.kind === 'hatch' && item.outline.length === 3);
    const aside = fan?.kind === 'hatch' ? fan.outline.map(([, y]) => y) : [];
    expect(aside).toEqual([shaft.stubAside, shaft.stubAside + here.leftmost, shaft.stubAside + here.rightmost]);
    const lengths = dimensionsOf(scene).map(({ from, to }) => Math.abs(to[1] - from[1]));
    for (const wanted of [Math.abs(shaft.inputAside - shaft.stubAside), here.rightmost - here.leftmost])
      expect(lengths.some((length) => Math.abs(length - wanted) < 1e-6)).toBe(true);
    expect(scene.description).toContain('to the left of that at the tractor');
  });

  it('is mirrored when everything is mirrored', () => {
    const [one, other] = [named('shifts aside, input turned'), mirroredDrive()];
    for (const format of formats) {
      const scenes = [one, other].map(({ setup, answer }) =>
        made(topView(setup, answer, { system: 'us', format, station: 33 })),
      );
      const [here, there] = scenes.map((scene) => shapesOf(scene.items)) as [string[], string[]];
      const turned = shapesOf((scenes[1] as Scene).items.map(mirrorOf));
      expect(here.length).toBeGreaterThan(20);
      expect(turned.sort()).toEqual([...here].sort());
      expect(there.sort()).not.toEqual([...here].sort());
    }
  });

  it('stands under the side view: same scale, same edges', () => {
    for (const open of Object.values(drives)) {
      const { setup, answer } = open();
      for (const format of formats) {
        const pictures = openLiftPictures(setup, answer, { system: 'us', format });
        const [view, top] = [made(pictures?.view(9)), made(pictures?.top?.(9))];
        expect([top.scale, top.bounds.left, top.bounds.right]).toEqual([
          view.scale,
          view.bounds.left,
          view.bounds.right,
        ]);
      }
    }
  });
});

const rounded = (points: readonly Point[]): string =>
  points
    .map((point) => point.map((value) => (Math.round(value * 1e3) / 1e3 + 0).toFixed(3)).join(' '))
    .sort()
    .join(', ');

/** Shapes of a plan without lettering; a hatching runs the other way on the other side, and is told by its outline alone. */
function shapesOf(items: readonly Item[]): string[] {
  return items.flatMap((item) => {
    if (item.kind === 'stroke') return [`${item.role} ${rounded(item.points)}`];
    if (item.kind === 'circle') return [`${item.role} ${item.radius} ${rounded([item.centre])}`];
    return item.kind === 'hatch' ? [`hatch ${rounded(item.outline)}`] : [];
  });
}

function mirrorOf(item: Item): Item {
  const turn = ([x, y]: Point): Point => [x, -y];
  if (item.kind === 'stroke') return { ...item, points: item.points.map(turn) };
  if (item.kind === 'circle') return { ...item, centre: turn(item.centre) };
  return item.kind === 'hatch' ? { ...item, outline: item.outline.map(turn) } : item;
}

describe('the drive shaft by itself', () => {
  it('dimensions closed length and overlap to scale', () => {
    const { setup, answer } = named('on the links, long enough');
    for (const format of formats) {
      const svg = sceneToSvg(made(shaftDrawing(setup, answer, { system: 'us', format })));
      const lengths = measuredIn(svg);
      for (const wanted of [470, 330])
        expect(Math.min(...lengths.map((length) => Math.abs(length - wanted)))).toBeLessThan(0.01);
    }
  });

  it('hatches what is cut off both tubes and both guards, all by the same, and says so', () => {
    const { setup, answer } = named('bottoms at the bottom');
    for (const format of formats) {
      const scene = made(shaftDrawing(setup, answer, { system: 'metric', format, cut: 32 }));
      const cuts = dimensionsOf(scene).filter(({ role }) => role === 'misfit');
      const texts = scene.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
      expect(cuts.map(({ from, to }) => Math.round(Math.abs(to[0] - from[0]) * 1e6) / 1e6)).toEqual([32, 32, 32, 32]);
      expect(cuts.map(({ label }) => label?.text)).toEqual(['tube 32 mm', 'guard 32 mm', 'tube 32 mm', 'guard 32 mm']);
      expect(texts.join(' ')).toContain('the same off all four');
      expect(scene.description).toContain('Then closed 558 mm (22 in), overlap 388 mm');
    }
  });

  it('shows stub and input where they come nearest, with what is to be measured between them', () => {
    const { setup, answer, shaft } = named('shifts aside, input turned');
    const scene = made(shaftDrawing(setup, answer, { system: 'metric', format: 'phone' }));
    const nearest = shaft.stations.find(({ ballHeight }) => ballHeight === shaft.shortestAt) as ShaftStation;
    const across = dimensionsOf(scene).find(
      ({ label }) => label?.text.endsWith('cross to cross') && label.second !== undefined,
    );
    const { from, to, mmPerUnit } = across as Dimension;
    expect(Math.hypot(to[0] - from[0], to[1] - from[1]) * mmPerUnit).toBeCloseTo(nearest.shortest, 6);
    expect(scene.description).toContain('end to end');
  });

  it('draws only where to measure while the closed length is not known', () => {
    const { setup, answer } = named('length not known');
    const scene = made(shaftDrawing(setup, answer, { system: 'us' }));
    expect(dimensionsOf(scene)).toHaveLength(2);
    expect(scene.description).toContain('Its closed length is not known');
  });

  it('takes a cut that is none as nothing', () => {
    const { setup, answer } = named('on the links, long enough');
    const plain = made(shaftDrawing(setup, answer, { system: 'us' }));
    for (const cut of [0, -5, NaN]) expect(shaftDrawing(setup, answer, { system: 'us', cut })).toEqual(plain);
  });
});

describe('without a drive', () => {
  it('nothing of it is drawn', () => {
    const { setup, answer } = (lifts['no coupler, arms known'] as () => Drive)();
    expect(answer.shaft).toBeNull();
    for (const draw of [topView, shaftPlots, shaftDrawing]) expect(draw(setup, answer, { system: 'us' })).toBeNull();
    const pictures = openLiftPictures(setup, answer, { system: 'us' });
    expect([pictures?.top, pictures?.shaftPlots]).toEqual([undefined, undefined]);
  });
});

describe('the pictures of a drive', () => {
  it('never jump, and carry no number that is none', () => {
    for (const open of Object.values(drives)) {
      const { setup, answer } = open();
      const pictures = openLiftPictures(setup, answer, { system: 'us', format: 'phone' });
      for (const draw of [pictures?.view, pictures?.top, pictures?.shaftPlots]) {
        const scenes = [0, 20, 60].map((station) => made(draw?.(station)));
        for (const { bounds, scale } of scenes) expect([bounds, scale]).toEqual([scenes[0]?.bounds, scenes[0]?.scale]);
        for (const scene of scenes) expect(sceneToSvg(scene)).not.toMatch(/NaN|Infinity|undefined|null/);
      }
    }
  });

  it('are drawn of any length, however odd', () => {
    const { setup, answer, shaft } = driven({
      machines: ['Ostrey 35', null, 'tiller'],
      tractor: { stubBehindAxle: 310, stubHeight: 560 },
      implement: { driven: true, inputBehind: 140, inputAbove: 200 },
    });
    for (const [closedLength, closedOverlap] of [
      [250, 245],
      [1200, 60],
      [500, null],
    ] as const) {
      const stationsOf = shaft.stations.map((station) => ({
        ...station,
        overlap: closedOverlap === null ? null : closedOverlap - (station.longest - closedLength),
        toBottom: station.shortest - closedLength,
      }));
      const odd = withShaft(answer, { ...shaft, closedLength, closedOverlap, stations: stationsOf });
      const options = { system: 'us', format: 'phone', station: 7 } as const;
      for (const draw of [sideView, topView, shaftPlots, shaftDrawing])
        expect(sceneToSvg(made(draw(setup, odd, options)))).not.toMatch(/NaN|Infinity/);
    }
  });
});

describe('circles', () => {
  it('stand on the crosses in the accent where a joint bends too far', () => {
    const { setup, answer } = named('a coupler moves it back, too little overlap');
    const { items } = made(sideView(setup, answer, { system: 'us', station: 60 }));
    const over = items.filter(
      (item): item is Circle => item.kind === 'circle' && item.role === 'misfit' && item.point === 'tractorCross',
    );
    expect(over).toHaveLength(1);
  });
});
