import { describe, expect, it } from 'vitest';
import {
  pinPlanDrawing,
  sceneToSvg,
  type Dimension,
  type Format,
  type Item,
  type Lettering,
  type Scene,
} from '../../src/drawings/index.ts';
import { widthOf } from '../../src/drawings/lettering.ts';
import type { PinPlan } from '../../src/engine/pinplan/index.ts';
import { example } from '../asked.ts';
import { expectGolden } from '../drawings/expectGolden.ts';
import { setupWith } from '../drawings/setups.ts';
import { planOf, target } from './judged.ts';

const plans: Readonly<Record<string, PinPlan>> = {
  'upper-pin-lower': planOf(example('box-blade-on-coupler')),
  'lower-pins-inward': planOf(example('rake-on-coupler')),
  'longer-pins': planOf(example('kinds/hookEnds-fails')),
  'all-of-it': planOf(
    setupWith({ implement: { mastHeight: 440, mastSetback: 60, shoulderSpan: { value: 697, plusMinus: 1.2 } } }),
  ),
  'far-back': planOf(setupWith({ implement: { mastHeight: 300, mastSetback: 490, standOut: 20, shoulderToHole: 15 } })),
};
const formats: readonly Format[] = ['desk', 'phone', 'print'];

describe('golden pin plans', () => {
  for (const [name, plan] of Object.entries(plans)) {
    it(`${name} looks as it did`, () => {
      expectGolden(`../../pinplan/golden/${name}`, sceneToSvg(pinPlanDrawing(plan, { system: 'us' })));
    });
  }
  it.each(['phone', 'print'] as const)('the fullest of them looks as it did on a %s', (format) => {
    const plan = plans['all-of-it'] as PinPlan;
    expectGolden(
      `../../pinplan/golden/all-of-it-${format}`,
      sceneToSvg(pinPlanDrawing(plan, { system: 'metric', format })),
    );
  });
});

/** Length of a dimension along its own direction [mm]. */
function lengthOf({ from, to, along, mmPerUnit }: Dimension): number {
  return Math.abs((to[0] - from[0]) * along[0] + (to[1] - from[1]) * along[1]) * mmPerUnit;
}

function labelled(scene: Scene, words: RegExp): Dimension {
  const found = scene.items.filter(
    (item): item is Dimension => item.kind === 'dimension' && words.test(item.label?.text ?? ''),
  );
  if (found.length !== 1) throw new Error(`${found.length} dimensions for ${String(words)}`);
  return found[0] as Dimension;
}

describe('a drawing of a plan, measured', () => {
  const plan = plans['all-of-it'] as PinPlan;
  it.each(formats)('shows the lengths of the plan: %s', (format) => {
    const scene = pinPlanDrawing(plan, { system: 'metric', format });
    const [span, height] = [target(plan, 'shoulderSpan'), target(plan, 'mastHeight')];
    expect(lengthOf(labelled(scene, /^697 mm now/))).toBeCloseTo(697, 6);
    expect(lengthOf(labelled(scene, /^682 mm to be/))).toBeCloseTo(span.aim, 6);
    expect(lengthOf(labelled(scene, /^each pin/))).toBeCloseTo((697 - span.aim) / 2, 6);
    expect(lengthOf(labelled(scene, /^440 mm now/))).toBeCloseTo(440, 6);
    expect(lengthOf(labelled(scene, /^466 mm to be/))).toBeCloseTo(height.aim, 6);
    expect(lengthOf(labelled(scene, /higher$/))).toBeCloseTo(height.aim - 440, 6);
    expect(lengthOf(labelled(scene, /^back/))).toBeCloseTo(60, 6);
  });
  it('hatches the ranges of the plan', () => {
    const scene = pinPlanDrawing(plan, { system: 'metric' });
    const spans = scene.items.flatMap((item) => (item.kind === 'hatch' ? [extent(item.outline)] : []));
    const [span, height] = [target(plan, 'shoulderSpan'), target(plan, 'mastHeight')];
    const widths = spans.map(({ y }) => y).sort((a, b) => a - b);
    expect(widths).toContainEqual(expect.closeTo(((span.high ?? 0) - (span.low ?? 0)) / 2, 6));
    expect(spans.map(({ z }) => z)).toContainEqual(expect.closeTo((height.high ?? 0) - (height.low ?? 0), 6));
  });
  it('is drawn at a round scale for paper', () => {
    expect(pinPlanDrawing(plan, { system: 'metric', format: 'print' }).scale).toBe(10);
  });
  it('says everything in words, the caution about welding too', () => {
    const { description } = pinPlanDrawing(plan, { system: 'us' });
    for (const words of [
      'Set the lower pins nearer together',
      'Set the upper pin higher',
      'Keep a block',
      'qualified person',
      'warranty',
    ])
      expect(description).toContain(words);
  });
  it('never leaves its sheet, and no lettering runs into other lettering', () => {
    for (const [name, one] of Object.entries(plans)) {
      for (const format of formats) {
        for (const system of ['us', 'metric'] as const) {
          expect(faults(pinPlanDrawing(one, { system, format })), `${name} ${format} ${system}`).toEqual([]);
        }
      }
    }
  });
  it('names stay text', () => {
    const name = '</title><script>alert(1)</script>"\u0007';
    const svg = sceneToSvg(
      pinPlanDrawing(planOf(setupWith({ implement: { name, mastHeight: 521 } })), { system: 'us' }),
    );
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });
});

function extent(points: readonly (readonly [number, number])[]) {
  const across = (i: 0 | 1): number =>
    Math.max(...points.map((point) => point[i])) - Math.min(...points.map((point) => point[i]));
  return { y: across(0), z: across(1) };
}

/** Where lettering stands on paper, upward lettering too. */
function boxOf({ at, text, size, second, anchor, upward }: Lettering, scale: number) {
  const width =
    0.92 * (widthOf(text, size) + (second === undefined ? 0 : widthOf(second.text, second.size) + second.size / 2));
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const [x, z] = [at[0] / scale, at[1] / scale];
  return upward === true
    ? { text, x: [x - size * 0.68, x], z: [z + start, z + start + width] }
    : { text, x: [x + start, x + start + width], z: [z, z + size * 0.68] };
}

function letteringIn(items: readonly Item[]): Lettering[] {
  return items.flatMap((item) => {
    if (item.kind === 'text') return [item];
    return item.kind === 'dimension' && item.label !== null ? [item.label] : [];
  });
}

function faults({ items, scale, bounds }: Scene): string[] {
  const boxes = letteringIn(items).map((item) => boxOf(item, scale));
  const isApart = (a: number[], b: number[]): boolean =>
    (a[1] as number) <= (b[0] as number) || (b[1] as number) <= (a[0] as number);
  const pairs = boxes.flatMap((box, i) =>
    boxes
      .slice(i + 1)
      .flatMap((other) => (isApart(box.x, other.x) || isApart(box.z, other.z) ? [] : [`${box.text} | ${other.text}`])),
  );
  const outside = boxes.filter(
    ({ x, z }) =>
      (x[0] as number) < bounds.left / scale ||
      (x[1] as number) > bounds.right / scale ||
      (z[0] as number) < bounds.bottom / scale ||
      (z[1] as number) > bounds.top / scale,
  );
  return [...pairs, ...outside.map(({ text }) => `${text} leaves the sheet`)];
}
