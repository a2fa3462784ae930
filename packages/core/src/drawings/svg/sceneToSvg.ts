import type { Scene } from '../scene.ts';
import { coordinate, escaped } from './escape.ts';
import { styleOf } from './style.ts';
import { writeItem } from './writeItem.ts';

/** How a scene is written. */
export interface SvgOptions {
  /** Makes the ids of title and description unique where several drawings share a page. */
  readonly idPrefix?: string;
  /** Width that it is drawn at [mm]; lines keep their widths at it. The width that the scene was laid out for unless given. */
  readonly widthMm?: number;
}

/**
 * Writes a scene as one standalone SVG: `viewBox` in millimetres of the scene, `role="img"` with title and description, and a
 * style whose colours are the custom properties `--ink`, `--ink-2`, `--accent`, `--ghost` and `--sheet` with fallbacks, so that
 * a page can theme it. A misfit's dimension line carries `data-finding`, `data-sides` and `data-mm-per-unit`: its length
 * [viewBox units] times both is the margin of the finding [mm]. All text is escaped.
 *
 * @param scene the drawing [mm]
 * @param options ids and width [mm]
 * @returns the SVG document [XML text]
 * @example sceneToSvg(rearView(setup, answer, { system: 'us' }), { idPrefix: 'rear' })
 */
export function sceneToSvg(scene: Scene, options: SvgOptions = {}): string {
  const { left, right, bottom, top } = scene.bounds;
  const width = right - left;
  const widthMm = options.widthMm ?? width / scene.scale;
  const scope = `hw-${coordinate(width / widthMm).replace('.', '-')}`;
  const prefix = (options.idPrefix ?? 'drawing').replace(/[^\w-]/g, '');
  const box = [left, -top, width, top - bottom].map(coordinate).join(' ');
  const items = scene.items.map((item) => writeItem(item, scene.scale)).join('\n');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="hw ${scope}" role="img" aria-labelledby="${prefix}-title ${prefix}-desc" viewBox="${box}" width="${coordinate(widthMm)}mm" height="${coordinate((widthMm * (top - bottom)) / width)}mm" data-mm-per-unit="1">`,
    `<title id="${prefix}-title">${escaped(scene.title)}</title>`,
    `<desc id="${prefix}-desc">${escaped(scene.description)}</desc>`,
    `<style>${styleOf(scope, width / widthMm)}</style>`,
    `<rect class="sheet" x="${coordinate(left)}" y="${coordinate(-top)}" width="${coordinate(width)}" height="${coordinate(top - bottom)}"/>`,
    items,
    '</svg>',
    '',
  ].join('\n');
}
