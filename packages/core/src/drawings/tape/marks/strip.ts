import type { UnitSystem } from '../../../units/index.ts';
import type { Item } from '../../scene.ts';
import { body, line, rectangle } from '../../strokes.ts';
import type { Drawn } from '../plate.ts';
import type { Length } from '../row.ts';
import { frameOf, hairline, solid, type Frame } from './frame.ts';

/** Lengths on paper [mm]. */
const paper = { overhang: 1.3, hook: 0.9, tick: 0.22, closest: 1.7, wideTick: 0.34, thin: 0.4 } as const;

/** A tape laid between two ends: the strip with its ticks, its hook or zero at the first end, and a heavy line at each. */
export function tapeStrip(drawn: Drawn, length: Length): Item[] {
  const { perPaper, plate } = drawn;
  const frame = frameOf(length);
  const half = plate.tape * perPaper;
  return [
    body('misfit', corners(frame, -half, half)),
    ...ticks(drawn, frame, half),
    ...(length.from.isCentre === true || length.isBetween === true ? [] : [hook(drawn, frame, half)]),
    ...edgeLines(drawn, frame, half),
  ];
}

function corners({ length, at }: Frame, low: number, high: number) {
  return rectangle([0, low], [length, high]).map(([s, t]) => at(s, t));
}

/** The hook of the tape, around the edge that it is held against. */
function hook({ perPaper }: Drawn, { at }: Frame, half: number): Item {
  const out = paper.hook * perPaper;
  const over = half + paper.overhang * perPaper * 0.5;
  return solid(rectangle([-out, -over], [0, over]).map(([s, t]) => at(s, t)));
}

/** A heavy line at each end across the tape, and a thin one from what is measured to it. */
function edgeLines({ perPaper }: Drawn, { at, length, offs }: Frame, half: number): Item[] {
  const over = half + paper.overhang * perPaper;
  return [0, 1].flatMap((end) => {
    const off = offs[end] as number;
    const s = end * length;
    const near = Math.sign(off) * Math.min(Math.abs(off), over);
    return [
      line('misfit', at(s, -over), at(s, over)),
      ...(near === off ? [] : [hairline(at(s, near), at(s, off), paper.thin * perPaper)]),
    ];
  });
}

/** Steps that a tape may be divided in, with how many of them make a longer mark [mm]. */
const divisions: Readonly<Record<UnitSystem, readonly (readonly [number, number])[]>> = {
  us: [
    [25.4 / 16, 4],
    [25.4 / 8, 4],
    [25.4 / 4, 4],
    [25.4 / 2, 2],
    [25.4, 6],
    [50.8, 6],
    [101.6, 3],
    [152.4, 2],
    [304.8, 3],
  ],
  metric: [
    [1, 5],
    [2, 5],
    [5, 2],
    [10, 5],
    [20, 5],
    [50, 2],
    [100, 5],
    [200, 5],
  ],
};

/** The tape’s own marks, as close as they can be told apart. */
function ticks({ perPaper, system }: Drawn, { at, length }: Frame, half: number): Item[] {
  const steps = divisions[system];
  const [step, longEach] =
    steps.find(([size]) => size >= paper.closest * perPaper) ?? (steps.at(-1) as [number, number]);
  const count = Math.max(0, Math.ceil(length / step) - 1);
  return Array.from({ length: count }, (_, i) => {
    const isLong = (i + 1) % longEach === 0;
    const foot = isLong ? -half * 0.3 : half * 0.25;
    return hairline(
      at((i + 1) * step, half),
      at((i + 1) * step, foot),
      (isLong ? paper.wideTick : paper.tick) * perPaper,
    );
  });
}
