import type { Edit, Part, Price } from '../../records/index.ts';

/** Something that could be done about a misfit, before it has been tried. */
export interface Candidate {
  readonly kind:
    | 'part'
    | 'reversePins'
    | 'cutBushing'
    | 'longerTubes'
    | 'liftStop'
    | 'cutShaft'
    | 'stubExtender'
    | 'frontWeights'
    | 'loaderOn';
  /** The part's own name, or null where nothing is bought. */
  readonly part: string | null;
  /** What one of it costs, where that is known. */
  readonly price: Price | null;
  /** How many of it are taken. */
  readonly count: number;
  /** How much is added, cut off or set [mm]; null where that is not a matter of how much. */
  readonly amount: number | null;
  readonly edits: readonly Edit[];
  /** False once it is cut, drilled or welded. */
  readonly returnable: boolean;
  /** True where the machine itself is changed, which a rented or guaranteed machine must not be. */
  readonly altersMachine: boolean;
  /** Path of the pins or machine that it is done to. */
  readonly on: string;
}

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
