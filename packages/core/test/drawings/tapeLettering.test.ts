import { describe, expect, it } from 'vitest';
import { sceneToSvg, tapeDrawing, type Format, type Item, type Scene } from '../../src/drawings/index.ts';
import { expectInsideBounds, expectLegible } from './legible.ts';
import { tapeCases, type TapeCase } from './tapeCases.ts';

/** Cases that look alike are looked at once: a machine’s other pins are drawn as the implement’s are. */
const looks = [...new Map(tapeCases.map((one) => [lookOf(one), one])).values()];

function lookOf({ row: { sketch, measured, not, show } }: TapeCase): string {
  return JSON.stringify([sketch.view, measured, not, show]);
}

function scenes(format: Format, system: 'us' | 'metric', reading: string | null): Scene[] {
  return looks.map(
    ({ path, from }) =>
      tapeDrawing(path, { system, format, reading, ...(from === undefined ? {} : { from }) }) as Scene,
  );
}

const others = (items: readonly Item[]): Item[] =>
  items
    .filter((item) => item.kind !== 'text' || item.weight !== 700)
    .map((item) => (item.kind === 'dimension' ? { ...item, label: null } : item));

describe('the lettering of where the tape goes', () => {
  it('stays on the sheet, clear of other lettering and big enough to read', () => {
    expectLegible((format, system) => scenes(format, system, system === 'us' ? '88 15/16' : '2260.5'));
  });

  it('leaves no line outside the sheet', () => {
    expectInsideBounds((format) => scenes(format, 'us', null), 12);
  });

  it('keeps its sheet and everything on it while a reading is typed', () => {
    for (const { path } of looks.filter((_, i) => i % 5 === 0)) {
      const drawn = ['', '2', '26 5/8', null].map((reading) =>
        tapeDrawing(path, { system: 'us', format: 'phone', reading }),
      );
      for (const scene of drawn) {
        expect(others(scene?.items ?? [])).toEqual(others(drawn[0]?.items ?? []));
        const { left, right, bottom, top } = scene?.bounds ?? { left: 0, right: 0, bottom: 0, top: 0 };
        expect((right - left) / (scene?.scale ?? 1)).toBeCloseTo((390 * 25.4) / 96, 6);
        expect((top - bottom) / (scene?.scale ?? 1)).toBeCloseTo((300 * 25.4) / 96, 6);
      }
    }
  });

  it('makes a long reading smaller, leaves out one that no letters fit, and writes any as text', () => {
    const sizes = ['26 5/8', '126 15/16 in', 'about 26 5/8 in or a little more than that'].map((reading) => {
      const scene = tapeDrawing('implement.shoulderSpan', { system: 'us', format: 'phone', reading });
      const [dimension] = scene?.items.filter((item) => item.kind === 'dimension') ?? [];
      return dimension?.label?.size ?? null;
    });
    expect(sizes[1]).toBeLessThan(sizes[0] as number);
    expect(sizes[2]).toBeNull();
    const hostile = tapeDrawing('implement.standOut', { system: 'us', format: 'phone', reading: '<b>&' }) as Scene;
    expect(sceneToSvg(hostile)).not.toContain('<b>');
    expect(sceneToSvg(hostile)).toContain('&lt;b&gt;&amp;');
  });
});
