import type { Point } from '@hitchwright/core/drawings';
import {
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  type DxfBlock,
} from '@tarikjabiri/dxf';
import { dxfText } from './dxfText.ts';

/** How a text of a DXF stands. */
export interface TextLook {
  /** Size of the letters' body [paper mm]. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Counterclockwise from level [°]. */
  readonly rotation?: number;
  /** Stands with its middle on the point instead of its baseline. */
  readonly centred?: boolean;
}

/** A DXF's text is as high as its capitals, which are this part of the letters' body. */
export const capHeight = 0.7;

const anchors = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

/** Model space of a file, in true millimetres. */
export class DxfSheet {
  constructor(
    private readonly space: DxfBlock,
    /** True millimetres to one of paper, for letters. */
    readonly scale: number,
  ) {}

  line(layerName: string, [from, to]: readonly [Point, Point]): void {
    this.space.addLine(point3d(...from), point3d(...to), { layerName });
  }

  run(layerName: string, points: readonly Point[], closed: boolean): void {
    const [from, to, ...more] = points;
    if (from !== undefined && to !== undefined && more.length === 0) return this.line(layerName, [from, to]);
    const flags = closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
    this.space.addLWPolyline(
      points.map((point) => ({ point: point2d(...point) })),
      { layerName, flags },
    );
  }

  circle(layerName: string, centre: Point, radius: number): void {
    this.space.addCircle(point3d(...centre), radius, { layerName });
  }

  /** A filled head: a line that grows wider from its tip. */
  arrowhead(layerName: string, [tip, a, b]: readonly [Point, Point, Point]): void {
    const base: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const endWidth = Math.hypot(a[0] - b[0], a[1] - b[1]);
    this.space.addLWPolyline([{ point: point2d(...tip), startingWidth: 0, endWidth }, { point: point2d(...base) }], {
      layerName,
    });
  }

  text(layerName: string, text: string, at: Point, look: TextLook): void {
    const { size, anchor, rotation = 0, centred = false } = look;
    const place = point3d(...at);
    const isPlain = anchor === 'start' && !centred;
    this.space.addText(place, size * capHeight * this.scale, dxfText(text), {
      layerName,
      rotation,
      ...(isPlain
        ? {}
        : {
            horizontalAlignment: anchors[anchor],
            verticalAlignment: centred ? TextVerticalAlignment.Middle : TextVerticalAlignment.BaseLine,
            secondAlignmentPoint: place,
          }),
    });
  }
}
