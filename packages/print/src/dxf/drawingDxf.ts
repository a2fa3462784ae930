import type { Item, Point, Scene } from '@hitchwright/core/drawings';
import { DxfWriter, point3d, Units } from '@tarikjabiri/dxf';
import { lineDashes } from '@hitchwright/core/drawings';
import { DxfSheet } from './dxfSheet.ts';
import { drawItem } from './entities.ts';
import { allLayers } from './layers.ts';

/**
 * Writes a drawing as DXF (AC1021) at its true size: one unit of model space is one millimetre of the machine. Layers go by
 * the kind of line; hatches, dimensions and lettering have their own. A dimension is drawn as lines, with its figure as text; on
 * a slanted one the figure stands along its line, which is interrupted for it.
 * An enlarged view keeps its enlargement, says so, and lies on layers that begin with `DETAIL_`. What a filled outline hides
 * on paper is not hidden. Letters are as high as on paper at the drawing's own scale.
 *
 * @param scene the drawing [mm]
 * @returns the file, plain ASCII [text]; throws a RangeError where lengths of the main view are not true ones
 */
export function drawingDxf(scene: Scene): string {
  if (scene.items.some(isUntrue)) throw new RangeError('The drawing has lengths that are not true ones.');
  const writer = openWriter(scene);
  const sheet = new DxfSheet(writer.modelSpace, scene.scale);
  for (const item of scene.items) drawItem(sheet, item);
  mark(sheet, scene);
  return writer.stringify();
}

function isUntrue(item: Item): boolean {
  return item.kind === 'dimension' && item.view !== 'detail' && Math.abs(item.mmPerUnit - 1) > 1e-6;
}

function openWriter({ bounds, scale }: Scene): DxfWriter {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  writer.setVariable('$MEASUREMENT', { 70: 1 });
  writer.setVariable('$LASTSAVEDBY', { 1: 'hitchwright' });
  writer.setVariable('$EXTMIN', { 10: bounds.left, 20: bounds.bottom, 30: 0 });
  writer.setVariable('$EXTMAX', { 10: bounds.right, 20: bounds.top, 30: 0 });
  writer.setVariable('$LTSCALE', { 40: 1 });
  writer.document.setViewCenter(point3d((bounds.left + bounds.right) / 2, (bounds.bottom + bounds.top) / 2, 0));
  writer.addLType('HIDDEN', 'Hidden __ __ __', pattern(lineDashes.hidden, scale));
  writer.addLType('CENTRE', 'Centre ____ _ ____', pattern(lineDashes.centre, scale));
  for (const { name, colour, line } of allLayers)
    writer.addLayer(name, colour, line === 'CONTINUOUS' ? 'Continuous' : line);
  return writer;
}

/** Gaps are negative in a line type. */
function pattern(lengths: readonly number[], scale: number): number[] {
  return lengths.map((length, i) => (i % 2 === 0 ? length : -length) * scale);
}

/** Size of the words under the drawing [paper mm]. */
const markSize = 3;

/** Says under the drawing what it shows, and beside an enlarged view that it is not to be measured. */
function mark(sheet: DxfSheet, scene: Scene): void {
  const { left, bottom } = scene.bounds;
  const lines = [scene.title, scene.subtitle, 'True size, in millimetres.', ...enlargedWords(scene)];
  lines
    .filter((line) => line !== '')
    .forEach((line, i) => {
      const at: Point = [left, bottom - (i + 1) * 2 * markSize * scene.scale];
      sheet.text('TEXT', line, at, { size: markSize, anchor: 'start' });
    });
  const corner = detailCorner(scene);
  if (corner === null) return;
  sheet.text('DETAIL_TEXT', enlargedWords(scene).join(''), corner, { size: markSize, anchor: 'start' });
}

function enlargedWords({ items }: Scene): string[] {
  const enlarged = items.filter(({ view }) => view === 'detail');
  const [dimension] = enlarged.filter((item) => item.kind === 'dimension');
  if (enlarged.length === 0) return [];
  const times = dimension === undefined ? '' : ` ${String(Math.round(1e4 / dimension.mmPerUnit) / 1e4)} times`;
  return [`What lies on layers DETAIL_ is enlarged${times}: do not measure there.`];
}

/** Under the enlarged view, where nothing else stands. */
function detailCorner({ items, bounds, scale }: Scene): Point | null {
  const spots = items.flatMap((item): Point[] => {
    if (item.view !== 'detail') return [];
    if (item.kind === 'stroke') return [...item.points];
    return item.kind === 'scaleBar' || item.kind === 'text' ? [item.at] : [];
  });
  if (spots.length === 0) return null;
  return [Math.min(...spots.map(([x]) => x)), bounds.bottom - 2 * markSize * scale];
}
