import type { Scene } from '@hitchwright/core/drawings';
import { paintScene } from '../../scene/paintScene.ts';
import type { Block } from '../block.ts';
import type { Press } from '../press.ts';
import { bandsOf } from './bands.ts';

/** Room over, between and under the parts of a drawing [mm]. */
const gap = 1.5;

/** A drawing at its own scale, its heading, picture and bar moved together, told in words to whoever can't see it. */
export function drawing({ ink, tags }: Press, scene: Scene): Block {
  const bands = bandsOf(scene);
  const tall = bands.map(({ top, bottom }) => (top - bottom) / scene.scale);
  const paint = (x: number, y: number): void => {
    let from = y + gap;
    bands.forEach(({ top, bottom, items }, i) => {
      paintScene(ink, { ...scene, items, bounds: { ...scene.bounds, top, bottom } }, [x, from]);
      from += (tall[i] ?? 0) + gap;
    });
  };
  return {
    height: tall.reduce((sum, one) => sum + one + gap, gap),
    paint: ([x, y]) => tags.leaf('Figure', () => paint(x, y), { alt: scene.description }),
  };
}
