import type { Item, Point } from '../../scene.ts';
import { body, rectangle } from '../../strokes.ts';
import type { Drawn } from '../plate.ts';
import type { Length } from '../row.ts';
import { frameOf, hairline, solid } from './frame.ts';

/** Lengths on paper [mm]. */
const paper = { jaw: 2, tip: 2.6, beam: 2.6, past: 9, slider: 5.2, tick: 0.22, step: 1.1 } as const;

/** A caliper on two faces: its jaws, the beam that they stand on, its marks and its slider. */
export function caliper({ perPaper }: Drawn, length: Length): Item[] {
  const frame = frameOf(length);
  const { beam, grip } = length.jaws ?? missing();
  const up = Math.sign(beam) || 1;
  const on = (points: readonly Point[]): Point[] => points.map(([s, t]) => frame.at(s, t * up));
  const foot = Math.abs(beam);
  const [jaw, tip, thick] = [paper.jaw * perPaper, paper.tip * perPaper, paper.beam * perPaper];
  const outward = grip === 'over' ? 1 : -1;
  const head = foot + thick;
  const fixed = jawShape(0, -outward, { jaw, tip, foot });
  const moving = jawShape(frame.length, outward, { jaw, tip, foot });
  const slide = rectangle(
    [frame.length - (outward < 0 ? jaw * 1.3 : 0), foot - thick * 0.22],
    [frame.length + paper.slider * perPaper - (outward < 0 ? jaw * 1.3 : 0), head + thick * 0.22],
  );
  return [
    body('misfit', on(rectangle([-jaw * 1.6, foot], [frame.length + paper.past * perPaper, head]))),
    ...beamMarks(frame.length + paper.past * perPaper, paper.step * perPaper).map((s) =>
      hairline(frame.at(s, (head - thick * 0.1) * up), frame.at(s, (foot + thick * 0.5) * up), paper.tick * perPaper),
    ),
    body('misfit', on(fixed)),
    body('misfit', on(moving)),
    body('misfit', on(slide)),
    solid(on(faceOf(0, -outward, { tip, width: jaw * 0.32 }))),
    solid(on(faceOf(frame.length, outward, { tip, width: jaw * 0.32 }))),
  ];
}

/** A jaw from the beam to past the part, its face at `s`, its body toward `out`; it tapers to its tip. */
function jawShape(s: number, out: number, { jaw, tip, foot }: { jaw: number; tip: number; foot: number }): Point[] {
  return [
    [s, -tip],
    [s, foot],
    [s + out * jaw * 1.5, foot],
    [s + out * jaw * 1.1, tip * 0.6],
    [s + out * jaw * 0.45, -tip],
  ];
}

/** The face of a jaw, heavy where it touches. */
function faceOf(s: number, out: number, { tip, width }: { tip: number; width: number }): Point[] {
  return rectangle([s, -tip], [s + out * width, tip]);
}

function beamMarks(length: number, step: number): number[] {
  return Array.from({ length: Math.floor(length / step) }, (_, i) => i * step);
}

function missing(): never {
  throw new Error('invariant: a caliper is held over or inside something');
}
