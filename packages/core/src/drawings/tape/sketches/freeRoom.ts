import type { Item, Point } from '../../scene.ts';
import { body, circle, hatch, line, outline, rectangle } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** A square block around or under a pin, from the side: the pin’s axis is at 0, rearward is right. */
interface Block {
  readonly view: string;
  readonly low: Point;
  readonly size: number;
  readonly pin: number;
}

const blocks = {
  lower: { view: 'One lower pin, from the side', low: [-46, -50], size: 104, pin: 11 },
  upper: { view: 'Upper pin, from the side', low: [-28, -98], size: 88, pin: 9.5 },
} as const satisfies Readonly<Record<string, Block>>;

/** Where a block may stand. */
export type BlockPlace = keyof typeof blocks;

/** Both ends of the lower edge of a block, and places that are none. */
export function blockPoints(place: BlockPlace): Readonly<Record<'left' | 'right' | 'pin', Point>> {
  const { low, size } = blocks[place];
  return { left: low, right: [low[0] + size, low[1]], pin: [0, 0] };
}

/** A pin from the side with the largest block that passes it, and the steel that stops the block. */
export function freeRoom(place: BlockPlace): Sketch {
  const { view, low, size, pin } = blocks[place];
  const [x, z] = low;
  const high: Point = [x + size, z + size];
  return {
    view,
    ground: null,
    show: { left: x - 40, right: high[0] + 56, bottom: z - 34, top: Math.max(high[1], pin) + 16 },
    pieces: [
      piece('steel', steel(place, high)),
      piece('block', outline('heavy', rectangle(low, high)), line('dimension', low, high)),
      piece(
        'pin',
        { ...circle('thin', [0, 0], pin), fill: 'sheet' },
        line('centre', [-pin - 8, 0], [pin + 8, 0]),
        line('centre', [0, -pin - 8], [0, pin + 8]),
      ),
    ],
  };
}

/** Frame steel behind the block, and above it where there is some. */
function steel(place: BlockPlace, [right, top]: Point): Item[] {
  const behind = rectangle([right, top - 190], [right + 30, top + (place === 'lower' ? 26 : 40)]);
  const above = rectangle([-120, top], [right, top + 26]);
  return [behind, ...(place === 'lower' ? [above] : [])].flatMap((shape) => [
    body('thin', shape),
    hatch('thin', shape),
  ]);
}
