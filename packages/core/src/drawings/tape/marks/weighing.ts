import type { Item, Point } from '../../scene.ts';
import { body, circle, line, rectangle, rounded } from '../../strokes.ts';
import type { Drawn } from '../plate.ts';
import type { Weighing } from '../row.ts';
import { hairline, solid } from './frame.ts';

/** Lengths on paper [mm]. */
const paper = { dial: 5, ring: 1.3, sling: 0.3, plate: 3 } as const;

/** A scale that something hangs from, or stands on. */
export function scaleMark(drawn: Drawn, { scale }: Weighing): Item[] {
  return scale.kind === 'hung'
    ? hung(drawn, scale.hook, scale.slings)
    : scale.under.flatMap((span) => platform(drawn, span));
}

/** A crane scale: its ring, its dial, and the slings from its hook. */
function hung({ perPaper }: Drawn, hook: Point, slings: readonly Point[]): Item[] {
  const [dial, ring] = [paper.dial * perPaper, paper.ring * perPaper];
  const middle: Point = [hook[0], hook[1] + dial + ring];
  return [
    ...slings.map((to) => hairline(hook, to, paper.sling * perPaper)),
    { ...circle('misfit', hook, ring), fill: 'sheet' },
    { ...circle('misfit', middle, dial), fill: 'sheet' },
    ...dialMarks(middle, dial, perPaper),
    { ...circle('misfit', [middle[0], middle[1] + dial + ring], ring), fill: 'sheet' },
    line('misfit', [middle[0], middle[1] + dial + 2 * ring], [middle[0], middle[1] + dial + 3.4 * ring]),
  ];
}

function dialMarks([x, z]: Point, radius: number, perPaper: number): Item[] {
  const at = (r: number, degrees: number): Point => [
    x + r * radius * Math.cos((degrees * Math.PI) / 180),
    z + r * radius * Math.sin((degrees * Math.PI) / 180),
  ];
  const marks = Array.from({ length: 9 }, (_, i) => -45 + i * 33.75);
  return [
    ...marks.map((degrees) => hairline(at(0.92, degrees), at(0.74, degrees), 0.25 * perPaper)),
    solid([at(0.12, 30), at(0.66, 120), at(0.12, 210)]),
    { ...circle('misfit', [x, z], 0.12 * radius), fill: 'line' },
  ];
}

/** A platform under wheels, level with the ground. */
function platform({ perPaper }: Drawn, [from, to]: readonly [number, number]): Item[] {
  const thick = paper.plate * perPaper;
  return [
    body('misfit', rounded([from, -thick], [to, 0], thick * 0.3)),
    ...[0.2, 0.8].map((share) => {
      const x = from + (to - from) * share;
      return solid(rectangle([x - thick * 0.35, -thick * 1.4], [x + thick * 0.35, -thick]));
    }),
  ];
}
