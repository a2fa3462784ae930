import type { Ink, Look, Spot } from '../pdf/ink.ts';
import { inks } from '../pdf/ink.ts';
import type { Tags } from '../pdf/tags.ts';

/** What a block of the sheet is made with. */
export interface Press {
  readonly ink: Ink;
  readonly tags: Tags;
}

/** Lines between compartments [mm]. */
export const rules: Readonly<Record<'frame' | 'thin', Look>> = {
  frame: { stroke: inks.black, width: 0.5 },
  thin: { stroke: inks.black, width: 0.2 },
};

/** A straight rule, which is no content. */
export function rule({ ink, tags }: Press, from: Spot, to: Spot, look: Look): void {
  tags.artifact(() => ink.path([[from, to]], look));
}
