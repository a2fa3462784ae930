import type { CheckId } from '../../engine/findings/index.ts';
import type { Item, Lettering, Point, Tone } from '../scene.ts';

/** A part of a view: what is drawn, and the same in words. */
export interface Part {
  readonly items: readonly Item[];
  readonly says: readonly string[];
}

/** Nothing to draw. */
export const nothing: Part = { items: [], says: [] };

/** Several parts, one painted over the other. */
export function together(...parts: readonly Part[]): Part {
  return { items: parts.flatMap((part) => part.items), says: parts.flatMap((part) => part.says) };
}

interface Writing {
  readonly tone?: Tone;
  readonly weight?: Lettering['weight'];
  readonly anchor?: Lettering['anchor'];
  readonly second?: Lettering['second'];
  readonly upward?: boolean;
}

/** A line of lettering with its baseline at a point. */
export function lettering(at: Point, text: string, size: number, writing: Writing = {}): Lettering {
  const { tone = 'ink', weight = 400, anchor = 'start', second, upward } = writing;
  const extra = { ...(second === undefined ? {} : { second }), ...(upward === undefined ? {} : { upward }) };
  return { kind: 'text', at, text, size, tone, weight, anchor, ...extra };
}

/** The items, marked as showing a finding. */
export function showing<T extends Item>(finding: CheckId, items: readonly T[]): T[] {
  return items.map((item) => ({ ...item, finding }));
}
