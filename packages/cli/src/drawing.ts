import { writeFileSync } from 'node:fs';
import type { Answer } from '@hitchwright/core/assess';
import {
  liftPlots,
  liftStrip,
  rearView,
  sceneToSvg,
  shaftDrawing,
  shaftPlots,
  topView,
  type Scene,
} from '@hitchwright/core/drawings';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { UsageError } from './exit.ts';

/** A drawing by the option that asks for it. */
export type DrawingName = 'svg' | 'side' | 'plots' | 'top' | 'drive-plots' | 'shaft';

interface Drawn {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly system: UnitSystem;
}

const draw: Readonly<Record<DrawingName, (drawn: Drawn) => Scene | null>> = {
  svg: ({ setup, answer, system }) => rearView(setup, answer, { system }),
  side: ({ setup, answer, system }) => liftStrip(setup, answer, { system }),
  plots: ({ setup, answer, system }) => liftPlots(setup, answer, { system }),
  top: ({ setup, answer, system }) => topView(setup, answer, { system }),
  'drive-plots': ({ setup, answer, system }) => shaftPlots(setup, answer, { system }),
  shaft: ({ setup, answer, system }) => shaftDrawing(setup, answer, { system, cut: cutOf(answer) }),
};

/** What the cure that cuts the shaft takes off each of its four tubes; nothing where there is none [mm]. */
function cutOf({ cures }: Answer): number {
  return cures.find(({ kind }) => kind === 'cutShaft')?.amount ?? 0;
}

const undrawn: Readonly<Record<'lift' | 'drive', string>> = {
  lift: 'the lift is drawn once the lower links and the top link are placed on the tractor.',
  drive:
    'the drive is drawn where a shaft drives the implement, once the links, the PTO stub and the input shaft are placed.',
};

/** Writes a drawing to its file. Lift and drive can’t be drawn before they are known. */
export function writeDrawing(name: DrawingName, file: string, drawn: Drawn): void {
  const scene = draw[name](drawn);
  const topic = name === 'side' || name === 'plots' ? 'lift' : 'drive';
  if (scene === null) throw new UsageError(`Can’t draw ${file}: ${undrawn[topic]}`);
  try {
    writeFileSync(file, sceneToSvg(scene));
  } catch (problem) {
    throw new UsageError(`Can’t write ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}
