import { describe, expect, it } from 'vitest';
import {
  axleBalance,
  openLiftPictures,
  sceneToSvg,
  type Format,
  type Point,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import { levelOf } from '../../src/drawings/balance/wheelBallast.ts';
import type { BalanceStation } from '../../src/engine/balance/index.ts';
import { balanceCase, balances, weighedSetup, type Weighed } from './balanceSetups.ts';
import { swept } from './sideSetups.ts';

const stations = [0, 7, 30, 44, 60];
const systems = ['us', 'metric'] as const;
const pound = 0.45359237;

/** Cast iron of 7.2 kg/dm³, 400 mm across, as the picture says: kilograms to a square millimetre. */
const perArea = 7.2e-6 * 400;

function svgAt({ setup, answer }: Weighed, station: number, format: Format = 'desk', system: 'us' | 'metric' = 'us') {
  return sceneToSvg(axleBalance(setup, answer, { system, format, station }) as Scene);
}

/** Outlines of a class of line that are closed, as somebody with a ruler finds them: x right, z up [mm]. */
function outlinesIn(svg: string, classes: string): Point[][] {
  return [...svg.matchAll(/<path class="([^"]+)" d="M([^"]+)Z"\/>/g)]
    .filter(([, found]) => found === classes)
    .map(([, , path = '']) =>
      path.split('L').map((pair): Point => {
        const [x = NaN, y = NaN] = pair.split(' ').map(Number);
        return [x, -y];
      }),
    );
}

/** Area and middle of an outline [mm², mm]. */
function measured(points: readonly Point[]): { area: number; x: number } {
  const twice = points.reduce((sum, [x, z], i) => {
    const [nx, nz] = points[(i + 1) % points.length] as Point;
    return sum + x * nz - nx * z;
  }, 0);
  const xs = points.map(([x]) => x);
  return { area: Math.abs(twice) / 2, x: (Math.min(...xs) + Math.max(...xs)) / 2 };
}

/** Every block of the picture by its mass and where it is behind the rear axle [kg, mm]. */
function blocksIn(svg: string): { mass: number; x: number }[] {
  return outlinesIn(svg, 'l heavy on-sheet').map((outline) => {
    const { area, x } = measured(outline);
    return { mass: area * perArea, x };
  });
}

function here({ balance }: Weighed, station: number): BalanceStation {
  return balance.stations[station] as BalanceStation;
}

describe('the see-saw, measured with a ruler', () => {
  for (const [name, open] of Object.entries(balances)) {
    it(`is in balance: moments of the blocks and the load of the front axle come to nothing: ${name}`, () => {
      const lift = open();
      for (const station of stations) {
        for (const format of ['desk', 'phone', 'print'] as const) {
          const turning = blocksIn(svgAt(lift, station, format)).reduce((sum, { mass, x }) => sum + mass * x, 0);
          const { front } = here(lift, station);
          expect(turning / -lift.balance.wheelbase).toBeCloseTo(front, 1);
        }
      }
    });
  }

  it('shows the tractor as it was weighed, where nothing was taken off it', () => {
    for (const name of ['front too light', 'ballast of every kind', 'loader loaded']) {
      const { answer, balance, ...rest } = balanceCase(name);
      const { low, high } = answer.figures['tractor.mass'] ?? { low: NaN, high: NaN };
      const blocks = blocksIn(svgAt({ answer, balance, ...rest }, 30));
      const tractor = blocks.find(({ mass }) => Math.abs(mass - (low + high) / 2) < 0.1);
      expect(tractor?.x).toBeCloseTo((-balance.ownFront * balance.wheelbase) / ((low + high) / 2), 1);
    }
  });

  it('shows a tractor that was weighed with its loader without it', () => {
    const lift = balanceCase('weighed with its loader, off now');
    const masses = blocksIn(svgAt(lift, 0)).map(({ mass }) => Math.round(mass));
    expect(masses.sort((a, b) => a - b)).toEqual([75, 195, 1680 - 430]);
  });

  it('moves what hangs behind with the lift, and keeps its mass', () => {
    const lift = balanceCase('front too light');
    const places = stations.map((station) => {
      const behind = blocksIn(svgAt(lift, station)).filter(({ x }) => x > 0);
      expect(behind).toHaveLength(1);
      expect(behind[0]?.mass).toBeCloseTo(532, 1);
      return behind[0]?.x ?? NaN;
    });
    const centres = stations.map((station) => lift.answer.sweep?.stations[station]?.centre[0] ?? NaN);
    places.forEach((x, i) => expect(x).toBeCloseTo(centres[i] as number, 2));
    expect(new Set(places.map(Math.round)).size).toBeGreaterThan(3);
  });

  it('shows the wanted weights as a dashed outline that would do, and only where they are wanted', () => {
    const lift = balanceCase('front too light');
    const dashed = outlinesIn(svgAt(lift, 30), 'l hidden').map(measured);
    const ballast = dashed.find(({ x }) => Math.abs(x + 1720 + 700) < 0.01);
    expect((ballast?.area ?? NaN) * perArea).toBeCloseTo(lift.balance.ballast?.enough ?? NaN, 1);
    const enough = balanceCase('enough in front');
    expect(enough.balance.ballast).toBeNull();
    expect(outlinesIn(svgAt(enough, 30), 'l hidden')).toEqual([]);
  });

  it('fills the column of the front axle up to its load, against the level that is wanted', () => {
    for (const name of ['front too light', 'enough in front', 'share of everything', 'half of its own front']) {
      const lift = balanceCase(name);
      for (const station of stations) {
        const { setup, answer } = lift;
        const { items } = axleBalance(setup, answer, { system: 'us', station }) as Scene;
        const fill = items.find((item): item is Stroke => item.kind === 'stroke' && isColumn(item, lift));
        const { front, wanted } = here(lift, station);
        const isShort = front < wanted;
        const mark = items.find(
          (item): item is Stroke =>
            item.kind === 'stroke' &&
            !item.closed &&
            item.role === (isShort ? 'misfit' : 'thin') &&
            Math.max(...item.points.map(([x]) => x)) === Math.max(...(fill?.points ?? []).map(([x]) => x)),
        );
        const height = Math.max(...(fill?.points ?? []).map(([, z]) => z));
        expect(height / (mark?.points[0]?.[1] ?? NaN)).toBeCloseTo(front / wanted, 6);
      }
    }
  });
});

function isColumn({ role, fill, closed, points }: Stroke, { balance }: Weighed): boolean {
  const middle = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  return closed && role === 'thin' && fill === 'line' && Math.abs(middle + balance.wheelbase) < 1e-6;
}

describe('the beam', () => {
  const slopeOf = (svg: string): number => {
    const beam = outlinesIn(svg, 'l thin on-sheet').find((points) => points.length === 4) as Point[];
    const [left, right] = [beam[0] as Point, beam[1] as Point];
    return (left[1] - right[1]) / (right[0] - left[0]);
  };

  it('lies level as long as the front axle carries anything, and tips where its wheels leave the ground', () => {
    const lift = balanceCase('front wheels lift');
    const both = lift.balance.stations.map(({ front }, i) => {
      const slope = slopeOf(svgAt(lift, i, 'phone'));
      if (front > 0) expect(slope).toBe(0);
      else expect(slope).toBeGreaterThan(0.05);
      return front > 0;
    });
    expect(new Set(both).size).toBe(2);
  });

  it('says that the wheels leave the ground, and that the rear axle carries all', () => {
    const { setup, answer } = balanceCase('front wheels lift');
    const { description } = axleBalance(setup, answer, { system: 'metric', station: 30 }) as Scene;
    expect(description).toContain('The front wheels leave the ground');
    expect(description).toContain('The rear axle carries all: 1210 kg');
  });
});

/** All lettering of an SVG text, without what only clears the ground under it. */
function textsIn(svg: string): string[] {
  return [...svg.matchAll(/<text class="(?:ink|second|accent)"[^>]*>(.*?)<\/text>/g)].map(([, inner = '']) =>
    inner.replace(/<tspan class="second".*?<\/tspan>/, '').replace(/<[^>]+>/g, ''),
  );
}

/** A printed mass [kg]. */
function massIn(text: string): number {
  const [, number = '', unit] = /([\d,]+) (lb|kg)$/.exec(text) ?? [];
  return Number(number.replace(',', '')) * (unit === 'lb' ? pound : 1);
}

/** The figure under a name. */
function under(texts: readonly string[], name: string): number {
  return massIn(texts[texts.indexOf(name) + 1] ?? '');
}

describe('the figures of the see-saw', () => {
  for (const system of systems) {
    it(`are those of the sweep, rounded to the cautious side: ${system}`, () => {
      const unit = system === 'us' ? pound : 1;
      for (const name of ['front too light', 'enough in front', 'loader loaded', 'share of everything']) {
        const lift = balanceCase(name);
        for (const station of stations) {
          const { front, rear, wanted } = here(lift, station);
          const texts = textsIn(svgAt(lift, station, 'phone', system));
          const over = under(texts, 'rear axle') - rear;
          const less = front - under(texts, 'front axle');
          const more = massIn(texts[texts.indexOf('wanted') - 1] ?? '') - wanted;
          for (const rounded of [over, less, more]) {
            expect(rounded).toBeGreaterThanOrEqual(-1e-9);
            expect(rounded).toBeLessThan(unit);
          }
          expect(Math.abs(under(texts, 'hung behind') - lift.balance.behind)).toBeLessThanOrEqual(unit / 2 + 1e-9);
          const isShort = front < wanted;
          const told = massIn(texts[texts.indexOf(isShort ? 'missing' : 'to spare') - 1] ?? '');
          const size = isShort ? told - (wanted - front) : front - wanted - told;
          expect(size).toBeGreaterThanOrEqual(-1e-9);
          expect(size).toBeLessThan(unit);
        }
      }
    });
  }

  it('never call to spare what may be missing', () => {
    const lift = weighedSetup(
      ['Ostrey 24', null, 'chipper'],
      { frontAxleMass: { between: [290, 340] } },
      { mass: 290, centreBehind: 480 },
    );
    const finding = lift.answer.findings.find(({ id }) => id === 'balance.frontShare');
    const station = lift.balance.stations.reduce(
      (best, one, i, all) => (one.front > one.wanted && one.front < (all[best]?.front ?? -Infinity) ? i : best),
      60,
    );
    expect(finding?.status).not.toBe('pass');
    expect(here(lift, station).front).toBeGreaterThan(here(lift, station).wanted);
    const texts = textsIn(svgAt(lift, station));
    expect(texts).toContain('not certain');
    expect(texts.join()).not.toContain('to spare');
  });

  it('tell a load over the limit of its axle beside that limit', () => {
    const lift = balanceCase('front too light');
    expect(here(lift, 0).rear).toBeGreaterThan(2080);
    expect(textsIn(svgAt(lift, 0, 'phone', 'metric'))).toContain('limit 2080 kg');
    expect(textsIn(svgAt(lift, 60, 'phone', 'metric')).join()).not.toContain('limit');
  });

  it('tell that the bracket holds less than is wanted', () => {
    expect(textsIn(svgAt(balanceCase('front wheels lift'), 0, 'desk', 'metric'))).toContain('bracket holds 80 kg');
    expect(textsIn(svgAt(balanceCase('front too light'), 0)).join()).not.toContain('bracket');
  });
});

describe('the members of the lift pictures', () => {
  it('are left out where the tractor is not weighed', () => {
    const { setup, answer } = swept(['Ostrey 35', null, 'box blade'], { tractor: { frontAxleMass: undefined } });
    const pictures = openLiftPictures(setup, answer, { system: 'us' });
    expect(answer.balance).toBeNull();
    expect([pictures?.balance, pictures?.balancePlot]).toEqual([undefined, undefined]);
    expect(axleBalance(setup, answer, { system: 'us' })).toBeNull();
  });

  it('draw the see-saw without the sweep of the lift as well', () => {
    const { setup, answer } = balanceCase('front too light');
    const scene = axleBalance(setup, { ...answer, sweep: null }, { system: 'us', station: 30 }) as Scene;
    expect(sceneToSvg(scene)).not.toContain('>balls<');
    expect(blocksIn(sceneToSvg(scene))).toEqual(blocksIn(svgAt(balanceCase('front too light'), 30)));
  });
});

describe('ballast on the rear wheel', () => {
  it('stands in the tyre as high as it is full', () => {
    const rim = 0.62;
    const below = (level: number): number => {
      const steps = 4000;
      const heights = Array.from({ length: steps }, (_, i) => -1 + ((i + 0.5) * 2) / steps);
      const width = (z: number): number => Math.sqrt(1 - z * z) - Math.sqrt(Math.max(0, rim * rim - z * z));
      const area = (all: readonly number[]): number => all.reduce((sum, z) => sum + width(z), 0);
      return area(heights.filter((z) => z < level)) / area(heights);
    };
    for (const fill of [0.1, 0.4, 0.5, 0.6, 0.75, 0.95]) expect(below(levelOf(fill))).toBeCloseTo(fill, 3);
  });

  it('is told on the side view, and drawn only where there is any', () => {
    const bare = balanceCase('front wheels lift');
    const loaded = balanceCase('ballast of every kind');
    const viewOf = ({ setup, answer }: Weighed) => openLiftPictures(setup, answer, { system: 'us' })?.view(30) as Scene;
    const inTyre = ({ items }: Scene, radius: number): Stroke[] =>
      items.filter(
        (item): item is Stroke =>
          item.kind === 'stroke' &&
          item.role === 'thin' &&
          item.points.length > 8 &&
          item.points.every(([x, z]) => Math.abs(Math.hypot(x, z - radius) - radius / 2) < 2),
      );
    expect(inTyre(viewOf(bare), 400)).toEqual([]);
    expect(inTyre(viewOf(loaded), 400).length).toBeGreaterThan(0);
    expect(viewOf(loaded).description).toContain('wheel weights 265 lb (120 kg)');
    expect(viewOf(loaded).description).toContain('tyres 60 % full');
    expect(viewOf(bare).description).not.toContain('wheel weights');
  });
});
