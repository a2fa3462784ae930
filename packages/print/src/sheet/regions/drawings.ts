import type { Scene } from '@hitchwright/core/drawings';
import { frameWidth } from '../../pdf/paper.ts';
import { paintScene } from '../../scene/paintScene.ts';
import type { Block } from '../block.ts';
import type { Row } from '../content/scenes.ts';
import { rule, rules, type Press } from '../press.ts';
import { bandsOf } from './bands.ts';

/** Room over, between and under the parts of a drawing [mm]. */
const gap = 1.5;

/** Drawings side by side in columns of one width, a rule between. */
export function drawingRow(press: Press, row: Row): Block {
  const blocks = row.map((scene) => drawing(press, scene));
  const height = Math.max(...blocks.map((block) => block.height));
  const column = frameWidth / row.length;
  return {
    height,
    paint: ([x, y]) => {
      blocks.forEach((block, i) => {
        const left = x + i * column;
        if (i > 0) rule(press, [left, y], [left, y + height], rules.thin);
        block.paint([left, y]);
      });
    },
  };
}

/** A drawing at its own scale, its heading, picture and bar moved together, told in words to whoever can't see it. */
function drawing({ ink, tags }: Press, scene: Scene): Block {
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
