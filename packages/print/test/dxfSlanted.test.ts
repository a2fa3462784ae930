import DxfParser, { type IEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { sceneToSvg, type Dimension, type Point, type Scene } from '@hitchwright/core/drawings';
import { drawingDxf } from '../src/index.ts';
import { trueDrawings } from './drawings.ts';

const shaft = trueDrawings()['shaft'] as Scene;

interface XY {
  readonly x: number;
  readonly y: number;
}

interface ReadLine extends IEntity {
  readonly vertices: readonly [XY, XY];
}

interface ReadText extends IEntity {
  readonly text: string;
  readonly textHeight: number;
  readonly rotation: number;
  readonly halign: number;
  readonly valign: number;
  /** The point that it is aligned to; where it is not, only that of its beginning is there. */
  readonly endPoint: XY;
}

/** Lines and texts of the dimensions, as an independent reader of DXF has them. */
function dimensionsOf(scene: Scene) {
  const dxf = new DxfParser().parseSync(drawingDxf(scene));
  const own = (dxf?.entities ?? []).filter(({ layer }) => layer === 'DIMENSIONS');
  return {
    lines: own
      .filter(({ type }) => type === 'LINE')
      .map((line): [Point, Point] => {
        const [from, to] = (line as ReadLine).vertices;
        return [
          [from.x, from.y],
          [to.x, to.y],
        ];
      }),
    texts: own.filter((one): one is ReadText => one.type === 'TEXT' && 'endPoint' in one && one.endPoint !== undefined),
  };
}

interface Figure {
  readonly ends: readonly [Point, Point];
  /** Middle of its capitals: they are 0.7 of the letters, which stand on their baseline. */
  readonly centre: Point;
}

/** Dimensions with a figure on a line that is neither level nor upright, as the SVG of a drawing has them. */
function slantedInSvg(scene: Scene): Figure[] {
  const figures = (tag: string): number[] => [...tag.matchAll(/="(-?[\d.]+)"/g)].map(([, figure]) => Number(figure));
  return sceneToSvg(scene)
    .split('<g')
    .flatMap((group): Figure[] => {
      const line = /<line [^>]*data-ends=""([^>]*)>/.exec(group)?.[1];
      const text = /<text class="(?:ink|accent)"([^>]*)>/.exec(group)?.[1];
      if (line === undefined || text === undefined) return [];
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = figures(line);
      const [x = 0, y = 0, size = 0] = figures(text);
      const ends: Figure['ends'] = [
        [x1, -y1],
        [x2, -y2],
      ];
      return x1 === x2 || y1 === y2 ? [] : [{ ends, centre: [x, 0.35 * size - y] }];
    });
}

function apart([x, y]: Point, [u, v]: Point): number {
  return Math.hypot(x - u, y - v);
}

/** Whether a line runs through a text as wide as a letter of its height for every sign but a fifth. */
function runsThrough([a, b]: readonly [Point, Point], { text, textHeight, rotation, endPoint }: ReadText): boolean {
  const turn = (rotation * Math.PI) / 180;
  const halfWidth = (text.length * 0.8 * textHeight) / 2;
  return Array.from({ length: 2001 }, (_, i) => i / 2000).some((part) => {
    const [x, y] = [a[0] + (b[0] - a[0]) * part - endPoint.x, a[1] + (b[1] - a[1]) * part - endPoint.y];
    const along = x * Math.cos(turn) + y * Math.sin(turn);
    const across = y * Math.cos(turn) - x * Math.sin(turn);
    return Math.abs(along) < halfWidth && Math.abs(across) < textHeight / 2;
  });
}

describe('a slanted dimension in DXF', () => {
  const { lines, texts } = dimensionsOf(shaft);
  const slanted = slantedInSvg(shaft);

  test('has its figure along its line, its middle where the SVG has it', () => {
    expect(slanted).toHaveLength(2);
    for (const { ends, centre } of slanted) {
      const there = texts.filter(({ endPoint }) => apart([endPoint.x, endPoint.y], centre) < 0.01);
      expect(there).toHaveLength(1);
      const [text] = there;
      expect(text).toMatchObject({ halign: 1, valign: 2 });
      const [[x1, y1], [x2, y2]] = ends;
      expect(text?.rotation).toBeCloseTo((Math.atan((y2 - y1) / (x2 - x1)) * 180) / Math.PI, 3);
    }
  });

  test('is drawn between the ends that the SVG has, and interrupted for its figure', () => {
    for (const { ends, centre } of slanted) {
      const text = texts.find(({ endPoint }) => apart([endPoint.x, endPoint.y], centre) < 0.01) as ReadText;
      expect(lines.filter((line) => runsThrough(line, text))).toEqual([]);
      expect(runsThrough(ends, text)).toBe(true);
      for (const end of ends) {
        const other = ends.find((one) => one !== end) as Point;
        const piece = lines.filter((line) => line.some((point) => apart(point, end) < 0.01));
        expect(piece).toHaveLength(1);
        const inner = piece[0]?.find((point) => apart(point, end) >= 0.01) as Point;
        expect(apart(end, inner) + apart(inner, other)).toBeCloseTo(apart(end, other), 2);
      }
    }
  });

  function alone(degrees: number, length: number, offLine = 0): Scene {
    const turn = (degrees * Math.PI) / 180;
    const along: Point = [Math.cos(turn), Math.sin(turn)];
    const to: Point = [along[0] * length, along[1] * length];
    const at: Point = [to[0] / 2 - along[1] * offLine, to[1] / 2 + along[0] * offLine - 0.35 * 3];
    const label = { kind: 'text', text: '23 in', size: 3, anchor: 'middle', tone: 'ink', weight: 400, at } as const;
    const dimension: Dimension = {
      kind: 'dimension',
      role: 'dimension',
      from: [0, 0],
      to,
      along,
      at: 0,
      label,
      sides: 1,
      mmPerUnit: 1,
    };
    return { ...shaft, scale: 1, items: [dimension] };
  }

  test.each([
    [10, 10],
    [80, 80],
    [100, -80],
    [170, -10],
    [190, 10],
    [260, 80],
    [280, -80],
    [350, -10],
  ])('running at %d° is read at %d°, from below or from the right', (degrees, rotation) => {
    const {
      lines: pieces,
      texts: [text],
    } = dimensionsOf(alone(degrees, 100));
    expect(text?.rotation).toBeCloseTo(rotation, 9);
    expect(pieces).toHaveLength(2);
  });

  test('too short for its figure keeps a piece for each arrowhead, and shorter still its whole line', () => {
    const drawn = (length: number): number[] =>
      dimensionsOf(alone(30, length))
        .lines.slice(0, 2)
        .map(([from, to]) => Math.round(apart(from, to) * 1e6) / 1e6);
    expect(drawn(9)).toEqual([3, 3]);
    expect(drawn(5)).toEqual([2.5, 2.5]);
  });

  test('whose figure stands beside the line is not interrupted; nor is a level or an upright one', () => {
    for (const scene of [alone(30, 100, 6), alone(0, 100), alone(90, 100)]) {
      const {
        lines: pieces,
        texts: [text],
      } = dimensionsOf(scene);
      expect(pieces).toHaveLength(1);
      expect(text).toMatchObject({ rotation: 0, halign: 1, valign: 0 });
    }
  });
});
