import type { Answered } from './recordTypes.ts';

/** Kinds of records as the server names them. */
export type Kind = Answered['kind'];

interface KindWords {
  readonly one: string;
  readonly many: string;
}

/** What a person calls each kind, in the order of the list. */
export const kindWords: Readonly<Record<Kind, KindWords>> = {
  tractor: { one: 'tractor', many: 'Tractors' },
  coupler: { one: 'coupler', many: 'Couplers' },
  implement: { one: 'implement', many: 'Implements' },
  shaft: { one: 'drive shaft', many: 'Drive shafts' },
  weight: { one: 'weight', many: 'Weights' },
  part: { one: 'part', many: 'Parts' },
  customer: { one: 'customer', many: 'Customers' },
  machine: { one: 'customer’s machine', many: 'Customers’ machines' },
  state: { one: 'state of a tractor', many: 'States of tractors' },
};

/** Every kind, in the order of the list. */
export const kinds = Object.keys(kindWords) as readonly Kind[];

/** A word that stands for a kind; null for any other. */
export function kindNamed(word: string | null): Kind | null {
  return kinds.find((kind) => kind === word) ?? null;
}

/** Kinds of parts on the shelf, and what each is called. */
export const partKinds = [
  ['lowerBushings', 'pair of bushings for the lower pins'],
  ['upperBushing', 'bushing for the upper pin'],
  ['lowerPins', 'pair of lower pins'],
  ['upperPinPlate', 'plate with another place for the upper pin'],
  ['clevisSpacers', 'spacers for the mast’s clevis'],
  ['pinBalls', 'balls for the lower pins'],
  ['stubExtender', 'stub extender'],
] as const;

/** Kinds of weights, and what each is called. */
export const weightKinds = [
  ['frontWeights', 'weights for the front'],
  ['wheelWeights', 'pair of wheel weights'],
] as const;

/** A record’s name with its kind before it, for where it stands alone. */
export function titleOf({ kind, name }: Pick<Answered, 'kind' | 'name'>): string {
  const { one } = kindWords[kind];
  return `${one.slice(0, 1).toUpperCase()}${one.slice(1)}: ${name}`;
}
