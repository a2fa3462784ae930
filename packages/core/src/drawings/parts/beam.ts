import type { Item } from '../scene.ts';
import { body, breakLine, rectangle, run } from '../strokes.ts';
import { mirrored } from '../strokes.ts';

/** Top and bottom of the cross beam that stands for the body of the implement, for place only [mm]. */
export const beam = { top: -62, bottom: -122 } as const;

/** The implement's body: a cross beam that breaks off at both sides. */
export function crossBeam(half: number): Item[] {
  const fill = body('ghost', rectangle([-half, beam.bottom], [half, beam.top]));
  const edges = [beam.top, beam.bottom].map((z) =>
    run('thin', [
      [-half, z],
      [half, z],
    ]),
  );
  const end = breakLine([half, beam.bottom], beam.top);
  return [fill, ...edges, end, { ...end, points: mirrored(end.points) }];
}
