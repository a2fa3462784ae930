import { setupFrom, type SetupDocument, type YardDocument } from '@hitchwright/core/records';

/** Drive shafts on a yard’s shelf, as parts, and the implements that a shaft drives. */
export interface Driven {
  readonly shafts: readonly SetupDocument[];
  readonly implements: readonly SetupDocument[];
}

/** What of a yard has to do with drive shafts. */
export function drivenIn({ parts = [], implements: all }: YardDocument): Driven {
  return {
    shafts: parts.filter(({ kind, shaft }) => kind === 'driveShaft' && typeof shaft === 'object' && shaft !== null),
    implements: all.filter(({ driven }) => driven === true),
  };
}

/** Tractor and coupler that the shafts are tried between, in their yard. */
export interface Pair {
  readonly yard: YardDocument;
  readonly tractor: SetupDocument;
  readonly coupler: SetupDocument | null;
}

/** The setup of one implement with one shaft of the shelf, everything else on the shelf beside it. */
export function setupWith(
  { yard, tractor, coupler }: Pair,
  implement: SetupDocument,
  part: SetupDocument,
): SetupDocument {
  return { ...setupFrom(yard, tractor, coupler, implement), shaft: part['shaft'] };
}

/** The same without other shafts at hand: what it comes to is then told of this one, never of one that takes its place. */
export function aloneIn(setup: SetupDocument): SetupDocument {
  const parts = (setup['parts'] ?? []) as readonly SetupDocument[];
  return { ...setup, parts: parts.filter(({ kind }) => kind !== 'driveShaft') };
}

/** Whether a shaft is meant for an implement by name. */
export function isItsOwn(part: SetupDocument, implement: SetupDocument): boolean {
  const fits = part['fits'];
  return Array.isArray(fits) && fits.includes(implement['name']);
}
