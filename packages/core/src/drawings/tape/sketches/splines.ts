import { placedItem, type Pose } from '../../side/pose.ts';
import type { Item, Point } from '../../scene.ts';
import { body, hatch, line, rectangle } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes of a splined shaft [mm]: it leaves its housing at 0 and points along its own axis. */
export const spline = { end: 82, groove: 48, half: 4.5, depth: 4, radius: 17.5, chamfer: 4 } as const;

const { end, groove, half, depth, radius, chamfer } = spline;

/** A splined shaft with the groove round it. */
export function splineItems(): Item[] {
  const outline = (sign: 1 | -1): Point[] => [
    [0, sign * radius],
    [groove - half, sign * radius],
    [groove - half + 2, sign * (radius - depth)],
    [groove + half - 2, sign * (radius - depth)],
    [groove + half, sign * radius],
    [end - chamfer, sign * radius],
    [end, sign * (radius - chamfer)],
  ];
  const ridges = [-0.62, -0.2, 0.2, 0.62].flatMap((share) => {
    const z = share * radius;
    return [line('thin', [4, z], [groove - half, z]), line('thin', [groove + half, z], [end - chamfer, z])];
  });
  const rims = [groove - half, groove + half, end - chamfer].map((x) => line('thin', [x, -radius], [x, radius]));
  const axes = [line('centre', [-4, 0], [end + 8, 0]), line('centre', [groove, -radius - 5], [groove, radius + 5])];
  return [body('thin', [...outline(1), ...outline(-1).reverse()]), ...ridges, ...rims, ...axes];
}

/** A splined shaft in its place. */
export function splineAt(pose: Pose): Item[] {
  return splineItems().map((item) => placedItem(pose, item));
}

/** Points of the close-up. */
export const points = {
  groove: [groove, radius - depth],
  grooveNear: [groove - half, radius],
  grooveFar: [groove + half, radius],
  end: [end, 0],
  face: [0, 30],
} as const satisfies Readonly<Record<string, Point>>;

/** The end of a splined shaft, enlarged: a tractor’s stub points right, the input shaft of an implement left. */
export function splineClose(view: string): Sketch {
  const housing = rectangle([-60, -60], [0, 60]);
  return {
    view,
    ground: null,
    show: { left: -26, right: 108, bottom: -36, top: 52 },
    pieces: [
      piece('housing', body('thin', housing), hatch('thin', housing)),
      piece('shaft', splineItems()),
      piece('axis', line('centre', [-60, 0], [130, 0])),
    ],
  };
}
