import type { Tool } from '../../../engine/advice/index.ts';
import type { Dimension, Item, Lettering, Point } from '../../scene.ts';
import { line } from '../../strokes.ts';
import type { Drawn } from '../plate.ts';
import { dot, type End, type Length, type TapeRow } from '../row.ts';
import { caliper } from './caliper.ts';
import { frameOf } from './frame.ts';
import { plumbLines } from './plumb.ts';
import { protractor } from './protractor.ts';
import { tapeStrip } from './strip.ts';
import { scaleMark } from './weighing.ts';

/** Lengths on paper [mm]. */
const paper = { offTape: 2.8, offJaws: 5.2, centre: 3.4, dot: 0.65 } as const;

/** Where the tool goes: the tool itself, and a mark at every centre. */
export function marksOf(drawn: Drawn, { measured, sketch }: TapeRow, tool: Tool): Item[] {
  const centres = [measured.from, measured.to].flatMap((end) => (end.isCentre === true ? centreMark(drawn, end) : []));
  switch (measured.kind) {
    case 'angle':
      return [...protractor(drawn, measured), ...centres];
    case 'weight':
      return scaleMark(drawn, measured);
    case 'length':
      return [...toolMark(drawn, measured, sketch.isPlan === true && tool === 'plumbLine' ? 'tape' : tool), ...centres];
  }
}

function toolMark(drawn: Drawn, length: Length, tool: Tool): Item[] {
  if (tool === 'caliper') return caliper(drawn, length);
  const strip = tapeStrip(drawn, length);
  return tool === 'plumbLine' ? [...strip, ...plumbLines(drawn, length)] : strip;
}

/** A centre: its axes, and a dot on it. */
function centreMark({ perPaper }: Drawn, { at: [x, z] }: End): Item[] {
  const reach = paper.centre * perPaper;
  return [
    line('centre', [x - reach, z], [x + reach, z]),
    line('centre', [x, z - reach], [x, z + reach]),
    { kind: 'circle', role: 'misfit', centre: [x, z], radius: paper.dot * perPaper, fill: 'line' },
  ];
}

/** How far the dimension line lies off the middle of the tape, or off the jaws [scene mm]. */
export function dimensionOff({ plate, perPaper }: Drawn, { side, jaws }: Length): number {
  return side * (jaws === undefined ? plate.tape + paper.offTape : paper.offJaws) * perPaper;
}

/** The measured length as a dimension, beside the tool. */
export function dimensionOf(drawn: Drawn, length: Length, label: Lettering | null): Dimension {
  const { from, to, along } = length;
  const [x, z]: Point = frameOf(length).at(0, dimensionOff(drawn, length));
  return {
    kind: 'dimension',
    role: 'misfit',
    from: from.at,
    to: to.at,
    along,
    at: dot([x, z], [along[1], -along[0]]),
    label,
    sides: 1,
    mmPerUnit: 1,
  };
}
