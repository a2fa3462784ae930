import { overlap, type CureRecord, type Part } from '../../records/index.ts';

/** Something that could be done about a misfit, before it has been tried. */
export type Candidate = CureRecord;

/** An adjustment: nothing is bought, nothing altered. */
export const adjusted = {
  part: null,
  price: null,
  count: 1,
  amount: null,
  returnable: true,
  altersMachine: false,
} as const;

/** A part taken from the list as it is. */
export function taken(part: Part) {
  return { ...adjusted, kind: 'part', part: part.name, price: part.price ?? null } as const;
}

/** A range as it goes into a document. */
export function writtenRange(low: number, high: number): { readonly value: number } | { readonly between: number[] } {
  return low === high ? { value: low } : { between: [low, high] };
}

/** Two candidates that set the same field, or something inside what the other one exchanges, can’t be taken together. */
export function sharesField(a: Candidate, b: Candidate): boolean {
  return a.edits.some(({ path }) => b.edits.some((other) => overlap(other.path, path)));
}
