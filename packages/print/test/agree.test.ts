import DxfParser from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { sceneToSvg, type Scene } from '@hitchwright/core/drawings';
import { bundledFonts, drawingDxf, drawingPdf } from '../src/index.ts';
import { frameMargin, papers } from '../src/pdf/paper.ts';
import { trueDrawings } from './drawings.ts';
import { linesOf } from './readPdf.ts';

type Ends = readonly [readonly [number, number], readonly [number, number]];

const line = /<line[^>]* data-ends="" x1="([^"]+)" y1="([^"]+)" x2="([^"]+)" y2="([^"]+)"\/>/g;

/** Ends of every dimension line as they stand in the SVG, up counting positive [mm]. */
function svgEnds(scene: Scene): Ends[] {
  return [...sceneToSvg(scene).matchAll(line)].map((match): Ends => {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = match.slice(1).map(Number);
    return [
      [x1, -y1],
      [x2, -y2],
    ];
  });
}

/** Lines of a DXF on the layers of dimensions. */
function dxfLines(scene: Scene): Ends[] {
  const entities = new DxfParser().parseSync(drawingDxf(scene))?.entities ?? [];
  return entities.flatMap((entity): Ends[] => {
    if (entity.type !== 'LINE' || !entity.layer.endsWith('DIMENSIONS')) return [];
    const [from, to] = (entity as unknown as { vertices: { x: number; y: number }[] }).vertices;
    return [
      [
        [from?.x ?? NaN, from?.y ?? NaN],
        [to?.x ?? NaN, to?.y ?? NaN],
      ],
    ];
  });
}

/** The lines, and two on one line as the one that is interrupted between them: the DXF has its label there. */
function withInterrupted(lines: readonly Ends[]): Ends[] {
  const isOn = ([from, to]: Ends, [x, y]: readonly [number, number]): boolean => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return Math.abs((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) < 0.01 * length;
  };
  const whole = lines.flatMap((one, i) =>
    lines
      .slice(i + 1)
      .flatMap((two) => [[one[0], two[1]] as Ends].filter((all) => isOn(all, one[1]) && isOn(all, two[0]))),
  );
  return [...lines, ...whole];
}

/** Lines of a PDF, measured on the page from the frame and scaled up by the drawing's scale. */
async function pdfLines(scene: Scene): Promise<Ends[]> {
  const { bounds, scale } = scene;
  const paper = papers.a4;
  const left = (paper.width - (bounds.right - bounds.left) / scale) / 2;
  const bytes = await drawingPdf(scene, { fonts: bundledFonts, paper: 'a4', date: '2026-11-26' });
  const up = ([x, y]: readonly [number, number]): readonly [number, number] => [
    bounds.left + (x - left) * scale,
    bounds.top - (y - frameMargin) * scale,
  ];
  return (await linesOf(bytes)).map(({ from, to }): Ends => [up(from), up(to)]);
}

/** How far the nearest of some lines is from one [mm]. */
function nearest(one: Ends, among: readonly Ends[]): number {
  const apart = (a: Ends, b: Ends): number =>
    Math.max(Math.hypot(a[0][0] - b[0][0], a[0][1] - b[0][1]), Math.hypot(a[1][0] - b[1][0], a[1][1] - b[1][1]));
  return Math.min(...among.map((other) => Math.min(apart(one, other), apart(one, [other[1], other[0]]))));
}

describe.each(Object.entries(trueDrawings()))('%s', (_, scene) => {
  test('SVG, DXF and PDF have the same ends of every dimension', async () => {
    const ends = svgEnds(scene);
    const [dxf, pdf] = [withInterrupted(dxfLines(scene)), await pdfLines(scene)];
    const dimensions = scene.items.filter(({ kind }) => kind === 'dimension').length;
    expect(ends).toHaveLength(dimensions);
    for (const one of ends) {
      expect(nearest(one, dxf)).toBeLessThan(0.01);
      expect(nearest(one, pdf)).toBeLessThan(0.01);
    }
  });
});
