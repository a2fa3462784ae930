import { describe, expect, it } from 'vitest';
import {
  balloonsOf,
  rearView,
  sceneToSvg,
  type Format,
  type Item,
  type Lettering,
  type Scene,
  type Stroke,
} from '../../src/drawings/index.ts';
import { widthOf } from '../../src/drawings/lettering.ts';
import type { SetupDocument } from '../../src/records/index.ts';
import { crowded, gallery, judged, setupWith } from './setups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];

function sceneOf(document: SetupDocument, format: Format = 'desk', system: 'us' | 'metric' = 'us'): Scene {
  const { setup, answer } = judged(document);
  return rearView(setup, answer, { system, format });
}

/** Outlines of the machines, by their points; context, axes and dimensions are no part of them. */
function bodies(items: readonly Item[]): Stroke[] {
  return items.filter(
    (item): item is Stroke =>
      item.kind === 'stroke' && item.view !== 'detail' && !['ghost', 'centre', 'dimension'].includes(item.role),
  );
}

function outlineKey(points: Stroke['points'], sign: 1 | -1): string {
  const rounded = points.map(([y, z]) => `${(Math.round(sign * y * 100) / 100 + 0).toFixed(2)},${z.toFixed(2)}`);
  return rounded.sort().join(' ');
}

/** All lettering, that of dimensions too. */
function letteringIn(items: readonly Item[]): Lettering[] {
  return items.flatMap((item) => {
    if (item.kind === 'text') return [item];
    return item.kind === 'dimension' && item.label !== null ? [item.label] : [];
  });
}

interface Box {
  readonly text: string;
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Where a line of lettering stands on paper, a little tighter than its letters may be. */
function boxOf({ at, text, size, second, anchor, upward }: Lettering, scale: number): Box {
  const width =
    0.97 * (widthOf(text, size) + (second === undefined ? 0 : widthOf(second.text, second.size) + second.size / 2));
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const [y, z] = [at[0] / scale, at[1] / scale];
  const along: readonly [number, number] = [start, start + width];
  if (upward === true) return { text, y: [y - size * 0.68, y], z: [z + along[0], z + along[1]] };
  return { text, y: [y + along[0], y + along[1]], z: [z, z + size * 0.68] };
}

function overlap(a: Box, b: Box): boolean {
  return a.y[0] < b.y[1] && b.y[0] < a.y[1] && a.z[0] < b.z[1] && b.z[0] < a.z[1];
}

describe('the rear view', () => {
  for (const [name, document] of Object.entries(gallery)) {
    if (name === 'u-frame-mast-too-high') continue;
    it(`is the same left and right: ${name}`, () => {
      const drawn = bodies(sceneOf(document).items);
      const keys = new Set(drawn.map(({ points }) => outlineKey(points, 1)));
      expect(drawn.length).toBeGreaterThan(4);
      for (const { points } of drawn) expect(keys.has(outlineKey(points, -1)), JSON.stringify(points)).toBe(true);
    });
  }

  it('puts shoulders, hooks and the upper pin where the figures say', () => {
    const drawn = bodies(sceneOf(setupWith({ implement: { mastHeight: 650 } })).items);
    const edges = drawn.flatMap(({ points }) => points.map(([y]) => y));
    expect(edges).toContain(661 / 2);
    expect(edges).toContain(661 / 2 + 58);
    const pin = drawn.find(({ part, points }) => part === 'pin' && points.every(([, z]) => z > 600));
    const heights = pin?.points.map(([, z]) => z) ?? [];
    expect((Math.min(...heights) + Math.max(...heights)) / 2).toBeCloseTo(650, 6);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(19, 6);
  });

  it('draws what nobody measured dashed and never as measured', () => {
    const scene = sceneOf(gallery['u-frame-nothing-measured'] as SetupDocument);
    expect(
      bodies(scene.items)
        .filter(({ part }) => part === 'pin')
        .map(({ role }) => role),
    ).toEqual(['hidden', 'hidden', 'hidden']);
    const labels = scene.items.flatMap((item) =>
      item.kind === 'dimension' && item.label !== null ? [item.label.text] : [],
    );
    expect(labels.length).toBeGreaterThan(2);
    for (const label of labels) expect(label).toMatch(/≈|\?/);
  });

  it('keeps everything inside its bounds', () => {
    for (const document of Object.values(gallery)) {
      for (const format of formats) {
        const { bounds, items } = sceneOf(document, format);
        for (const item of items) {
          const points =
            item.kind === 'stroke' ? item.points : 'at' in item && typeof item.at !== 'number' ? [item.at] : [];
          for (const [y, z] of points) {
            expect(y).toBeGreaterThanOrEqual(bounds.left);
            expect(y).toBeLessThanOrEqual(bounds.right);
            expect(z).toBeGreaterThanOrEqual(bounds.bottom);
            expect(z).toBeLessThanOrEqual(bounds.top);
          }
        }
      }
    }
  });

  it('writes no letter under 13 px on a screen and none under 3 mm on paper', () => {
    for (const document of Object.values(gallery)) {
      for (const format of formats) {
        const sizes = letteringIn(sceneOf(document, format).items).flatMap(({ size, second }) => [
          size,
          second?.size ?? size,
        ]);
        expect(Math.min(...sizes), format).toBeGreaterThanOrEqual(format === 'print' ? 2.999 : (13 * 25.4) / 96);
      }
    }
  });
});

describe('the lettering', () => {
  for (const [name, document] of Object.entries({ ...gallery, ...crowded })) {
    it(`stays clear of other lettering and on the sheet: ${name}`, () => {
      for (const format of formats) {
        for (const system of ['us', 'metric'] as const) {
          const { items, scale, bounds } = sceneOf(document, format, system);
          const boxes = letteringIn(items).map((item) => boxOf(item, scale));
          for (const [i, box] of boxes.entries()) {
            for (const other of boxes.slice(i + 1))
              expect(overlap(box, other), `${format}: ${box.text} | ${other.text}`).toBe(false);
            expect(box.y[0] * scale, `${format}: ${box.text}`).toBeGreaterThanOrEqual(bounds.left);
            expect(box.y[1] * scale, `${format}: ${box.text}`).toBeLessThanOrEqual(bounds.right);
          }
        }
      }
    });
  }
});

describe('the description', () => {
  it('gives every dimension that is shown, the scale bar and the misfit, in both units', () => {
    const { description } = sceneOf(setupWith({ implement: { mastHeight: 521 } }));
    for (const part of [
      'Upper pin above the lower pins: 20 1/2 in (521 mm).',
      'Top hook above the lower hooks: 18 1/2 in (470 mm).',
      'Shoulder to shoulder of the lower pins: 26 in (661 mm).',
      'Hook centre to hook centre: 28 1/16 in (712 mm).',
      'The scale bar is 12 in long.',
      'Misfit, upper pin to the top hook: 1 13/16 in (46 mm), too high.',
      'Drawn to scale',
    ]) {
      expect(description).toContain(part);
    }
  });

  it('has one sentence for each dimension drawn, in every setup', () => {
    for (const document of Object.values(gallery)) {
      const { items, description } = sceneOf(document);
      const labels = items.flatMap((item) =>
        item.kind === 'dimension' && item.label !== null ? [item.label.text] : [],
      );
      const figures = labels.map((label) => /[\d/ ]*\d/.exec(label)?.[0].trim() ?? 'not measured');
      for (const figure of figures) expect(description).toContain(figure);
    }
  });
});

describe('the SVG', () => {
  it('has a role, a title and a description under ids that a page can make unique', () => {
    const svg = sceneToSvg(sceneOf(setupWith({})), { idPrefix: 'rear' });
    expect(svg).toContain('role="img" aria-labelledby="rear-title rear-desc"');
    expect(svg).toContain(
      '<title id="rear-title">Rear view: Wickset 60-in box blade on Pellin U-28, Ostrey 35 behind it</title>',
    );
  });

  it('keeps hostile names as text', () => {
    const hostile = `<script>alert("1")</script>&'"]]>\u0000\ud800`;
    for (const name of [hostile, 'x'.repeat(200), `${'"><svg onload=x> '.repeat(10)}`]) {
      const svg = sceneToSvg(sceneOf(setupWith({ implement: { name }, tractor: { name }, coupler: { name } })));
      expect(svg).not.toMatch(/<script|<svg onload|\]\]>/);
      expect(svg.match(/<svg /g)).toHaveLength(1);
      expect([...svg].every((letter) => letter >= ' ' || letter === '\n')).toBe(true);
    }
  });

  it('stays small where a name has 10,000 letters', () => {
    const { setup, answer } = judged(setupWith({}));
    const named = { ...setup, implement: { ...setup.implement, name: '<b>'.repeat(3334) } };
    const svg = sceneToSvg(rearView(named, answer, { system: 'us' }));
    expect(svg.length).toBeLessThan(80_000);
    expect(svg).not.toContain('<b>');
  });

  it('carries no number that is none, and no colour without a property that a page can set', () => {
    for (const document of Object.values(gallery)) {
      for (const format of formats) {
        for (const system of ['us', 'metric'] as const) {
          const svg = sceneToSvg(sceneOf(document, format, system));
          expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
          expect(svg.replace(/var\(--[\w-]+, #[0-9A-F]{6}\)/g, '')).not.toMatch(/#[0-9A-Fa-f]{3,6}\b(?!;)/);
        }
      }
    }
  });

  it('keeps its line widths when it is drawn wider', () => {
    const scene = sceneOf(setupWith({}));
    const width = (svg: string): number => Number(/\.heavy\{[^}]*stroke-width:([\d.]+)/.exec(svg)?.[1]);
    const mm = (scene.bounds.right - scene.bounds.left) / scene.scale;
    expect(width(sceneToSvg(scene)) / width(sceneToSvg(scene, { widthMm: 2 * mm }))).toBeCloseTo(2, 2);
  });
});

describe('balloons', () => {
  it('number the notes: the lead first, then what fails, what is open, and the passes that matter', () => {
    const { answer } = judged(setupWith({ implement: { standOut: 36, shoulderToHole: 24, clevisGap: null } }));
    const numbered = [...balloonsOf(answer)];
    expect(numbered[0]).toEqual([answer.lead?.id, 1]);
    const statuses = numbered.map(([id]) => answer.findings.find((finding) => finding.id === id)?.status);
    const order = ['fail', 'cured', 'undecided', 'pass'];
    expect(statuses).toEqual([...statuses].sort((a, b) => order.indexOf(a ?? '') - order.indexOf(b ?? '')));
    expect(numbered.map(([, number]) => number)).toEqual(numbered.map((_, i) => i + 1));
  });

  it('carry the same numbers on the drawing', () => {
    const document = setupWith({ implement: { mastHeight: 521 } });
    const numbers = balloonsOf(judged(document).answer);
    const balloons = sceneOf(document).items.filter((item) => item.kind === 'balloon');
    expect(balloons.length).toBeGreaterThan(1);
    for (const { finding, number } of balloons) expect(numbers.get(finding as 'rear.mast')).toBe(number);
  });
});
