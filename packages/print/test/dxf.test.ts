import DxfParser, { type IEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import type { Scene } from '@hitchwright/core/drawings';
import { drawingDxf } from '../src/index.ts';
import { trueDrawings } from './drawings.ts';

const drawings = trueDrawings();
const withHook = drawings['rear with an enlarged hook'] as Scene;

function read(scene: Scene) {
  const dxf = new DxfParser().parseSync(drawingDxf(scene));
  if (dxf === null) throw new Error('the DXF can’t be read');
  return dxf;
}

function textsOf(scene: Scene): string[] {
  return read(scene).entities.flatMap((entity) =>
    entity.type === 'TEXT' ? [(entity as IEntity & { text: string }).text] : [],
  );
}

/** What a reader of DXF makes of a coded text. */
function decoded(text: string): string {
  return text.replace(/\\U\+([0-9A-F]{4})/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

describe('the DXF', () => {
  test('is in millimetres', () => {
    const { header } = read(withHook);
    expect(header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1 });
  });

  test('has true coordinates: circles stand where the drawing has them, hooks 712 mm apart', () => {
    const { entities } = read(withHook);
    const circles = entities.filter(({ type }) => type === 'CIRCLE') as (IEntity & {
      center: { x: number; y: number };
      radius: number;
    })[];
    const wanted = withHook.items.filter((item) => item.kind === 'circle');
    expect(wanted.length).toBeGreaterThan(2);
    for (const { centre, radius } of wanted)
      expect(
        circles.some(
          (one) =>
            Math.hypot(one.center.x - centre[0], one.center.y - centre[1]) < 1e-6 &&
            Math.abs(one.radius - radius) < 1e-6,
        ),
      ).toBe(true);
    const lengths = entities.flatMap((entity) => {
      if (entity.type !== 'LINE' || entity.layer !== 'DIMENSIONS') return [];
      const [from, to] = (entity as IEntity & { vertices: { x: number; y: number }[] }).vertices;
      return [Math.hypot((from?.x ?? 0) - (to?.x ?? 0), (from?.y ?? 0) - (to?.y ?? 0))];
    });
    expect(lengths.some((length) => Math.abs(length - 712) < 0.01)).toBe(true);
  });

  test('puts what is enlarged on layers of its own and says by how much', () => {
    const { entities } = read(withHook);
    const enlarged = entities.filter(({ layer }) => layer.startsWith('DETAIL_'));
    const expected = withHook.items.filter(({ view }) => view === 'detail').length;
    expect(enlarged.length).toBeGreaterThanOrEqual(expected);
    expect(textsOf(withHook)).toContain('What lies on layers DETAIL_ is enlarged 3.5 times: do not measure there.');
  });

  test.each(Object.entries(drawings))('%s: every layer is known and safe, every line plain ASCII', (_, scene) => {
    const text = drawingDxf(scene);
    const dxf = read(scene);
    const layers = Object.keys(dxf.tables.layer.layers);
    expect(text).toMatch(/^[\n\x20-\x7e]*$/);
    for (const layer of layers) expect(layer).toMatch(/^[A-Z_0]+$/);
    for (const { layer } of dxf.entities) expect(layers).toContain(layer);
    expect(drawingDxf(scene)).toBe(text);
  });

  test('a name comes out as the text it is, whatever stands in it', () => {
    const shaft = drawings['shaft'] as Scene;
    const texts = textsOf(shaft).map(decoded);
    expect(drawingDxf(shaft)).toContain('\\U+7281');
    expect(texts.filter((text) => text.includes('犁 %%%%%%d \\P ^I') && text.includes('Łąka'))).not.toHaveLength(0);
  });

  test('a name with line ends adds no group', () => {
    const lines = (scene: Scene): number => drawingDxf(scene).split('\n').length;
    expect(lines({ ...withHook, title: 'a\n0\nENDSEC\r\n0\nEOF\u2028' })).toBe(lines({ ...withHook, title: 'a' }));
    expect(lines({ ...withHook, title: '🚜'.repeat(5000) })).toBe(lines({ ...withHook, title: 'a' }));
  });

  test('a drawing whose lengths are not true ones is refused', () => {
    const items = withHook.items.map((item) => (item.kind === 'dimension' ? { ...item, mmPerUnit: 2 } : item));
    expect(() => drawingDxf({ ...withHook, items })).toThrow(RangeError);
  });
});
