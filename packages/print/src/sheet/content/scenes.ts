import { liftStrip, rearView, topView, type Scene } from '@hitchwright/core/drawings';
import type { Judged, SheetOptions } from '../options.ts';

/** The drawings of a sheet, as far as they can be drawn: from behind, from the side in three heights, from above. */
export function scenesOf({ setup, answer }: Judged, { system }: SheetOptions): Scene[] {
  const how = { system, format: 'print' } as const;
  return [rearView(setup, answer, how), liftStrip(setup, answer, how), topView(setup, answer, how)].filter(
    (scene) => scene !== null,
  );
}
