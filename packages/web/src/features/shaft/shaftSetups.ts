import { setupFrom, type SetupDocument } from '@hitchwright/core/records';
import { sampleYard } from '../yard/sampleYard.ts';

/** The drive shafts on the yard's shelf, as parts. */
export const shaftParts: readonly SetupDocument[] = (sampleYard.parts ?? []).filter(
  ({ kind, shaft }) => kind === 'driveShaft' && typeof shaft === 'object' && shaft !== null,
);

/** The implements of the yard that a shaft drives. */
export const drivenImplements: readonly SetupDocument[] = sampleYard.implements.filter(({ driven }) => driven === true);

/** Tractor and coupler that the shafts are tried between. */
export interface Pair {
  readonly tractor: SetupDocument;
  readonly coupler: SetupDocument | null;
}

/** The setup of one implement with one shaft of the shelf, everything else on the shelf beside it. */
export function setupWith({ tractor, coupler }: Pair, implement: SetupDocument, part: SetupDocument): SetupDocument {
  return { ...setupFrom(sampleYard, tractor, coupler, implement), shaft: part['shaft'] };
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
