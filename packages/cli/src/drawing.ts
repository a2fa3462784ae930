import { writeFileSync } from 'node:fs';
import type { Answer } from '@hitchwright/core/assess';
import { sceneToSvg, undrawnWords, viewOf, type Format, type Scene, type ViewName } from '@hitchwright/core/drawings';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { UsageError } from './exit.ts';

/** A drawing by the option that asks for it. */
export type DrawingName = 'svg' | 'side' | 'plots' | 'top' | 'drive-plots' | 'shaft' | 'balance' | 'slope';

/** What is drawn, and for which sheet; for a wide screen unless that is given. */
export interface Drawn {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly system: UnitSystem;
  readonly format?: Format;
}

const views: Readonly<Record<DrawingName, ViewName>> = {
  svg: 'rear',
  side: 'lift',
  plots: 'plots',
  top: 'top',
  'drive-plots': 'drivePlots',
  shaft: 'shaft',
  balance: 'balance',
  slope: 'slope',
};

/** A drawing; what is not known yet can’t be drawn, and is said with the name of its file. */
export function sceneOf(view: ViewName, file: string, drawn: Drawn): Scene {
  const { system, format } = drawn;
  const scene = viewOf(view, drawn, { system, ...(format === undefined ? {} : { format }) });
  if (scene === null) throw new UsageError(`Can’t draw ${file}: ${undrawnWords[view]}`);
  return scene;
}

/** Writes a drawing to its file as SVG. */
export function writeDrawing(name: DrawingName, file: string, drawn: Drawn): void {
  writeOut(file, sceneToSvg(sceneOf(views[name], file, drawn)));
}

/** Writes a file that was asked for by its name. */
export function writeOut(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch (problem) {
    throw new UsageError(`Can’t write ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}
