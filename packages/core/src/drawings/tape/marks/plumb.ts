import type { Item } from '../../scene.ts';
import type { Drawn } from '../plate.ts';
import type { Length } from '../row.ts';
import { frameOf, hairline, solid } from './frame.ts';

/** Lengths on paper [mm]. */
const paper = { string: 0.35, bob: 4.4, half: 1.15, under: 1.2, least: 3 } as const;

/** A plumb line from each end that lies well above the tape, past the tape, its bob below. */
export function plumbLines({ plate, perPaper }: Drawn, length: Length): Item[] {
  const frame = frameOf(length);
  const foot = -(plate.tape + paper.under) * perPaper;
  return [0, 1].flatMap((end) => {
    const off = frame.offs[end] as number;
    if (off < (plate.tape + paper.least) * perPaper) return [];
    const s = end * frame.length;
    const [half, bob] = [paper.half * perPaper, paper.bob * perPaper];
    return [
      hairline(frame.at(s, off), frame.at(s, foot), paper.string * perPaper),
      solid([
        frame.at(s - half * 0.5, foot),
        frame.at(s + half * 0.5, foot),
        frame.at(s + half, foot - bob * 0.3),
        frame.at(s, foot - bob),
        frame.at(s - half, foot - bob * 0.3),
      ]),
    ];
  });
}
