import { readSetup, type Setup, type SetupDocument, type Value } from '@hitchwright/core/records';
import { printBoth, type UnitSystem } from '@hitchwright/core/units';
import { recordAt } from '../question/question.ts';
import { nameOf, recordNamed, sampleYard } from '../yard/sampleYard.ts';

/** A drive shaft that can be taken. */
export interface ShelfShaft {
  readonly name: string;
  /** As a setup takes it. */
  readonly record: SetupDocument;
  /** Closed length from cross to cross, and overlap [mm]; null where it is not known. */
  readonly closed: number | null;
  readonly overlap: number | null;
  readonly note: string;
}

export interface Shelf {
  readonly shafts: readonly ShelfShaft[];
  /** The longest closed length [mm]. */
  readonly longest: number;
  readonly chosen: ShelfShaft | 'typed' | 'none';
}

/** Whether the question is asked of a tractor of the sample yard. */
export function isOfSample(document: SetupDocument): boolean {
  return recordNamed('tractor', nameOf(recordAt(document, 'tractor'), '')) !== null;
}

/**
 * The drive shafts at hand: those of the setup, and behind a tractor of the sample yard those of that yard, behind any other those of the
 * yard’s records. What is invented is never offered for a tractor that is not.
 */
export function shelfFor(
  document: SetupDocument,
  system: UnitSystem,
  yardShafts: readonly SetupDocument[] | null,
): Shelf {
  const parts = [...partsIn(document['parts']), ...((isOfSample(document) ? sampleYard.parts : yardShafts) ?? [])];
  const found = new Map<string, ShelfShaft>();
  for (const part of parts) {
    const shaft = shelfShaft(part, document['units'], system);
    if (shaft !== null && !found.has(shaft.name)) found.set(shaft.name, shaft);
  }
  const shafts = [...found.values()];
  return {
    shafts,
    longest: Math.max(1, ...shafts.map(({ closed }) => closed ?? 0)),
    chosen: chosenOf(document, shafts),
  };
}

function chosenOf(document: SetupDocument, shafts: readonly ShelfShaft[]): Shelf['chosen'] {
  const own = document['shaft'];
  if (own === undefined) return 'none';
  return shafts.find(({ record }) => JSON.stringify(record) === JSON.stringify(own)) ?? 'typed';
}

function partsIn(parts: unknown): readonly SetupDocument[] {
  return Array.isArray(parts) ? (parts as SetupDocument[]) : [];
}

/** The drive shaft of a part, its texts without a unit read in the given units; null where the part is none. */
export function shelfShaft(part: SetupDocument, units: unknown, system: UnitSystem): ShelfShaft | null {
  const record = part['shaft'];
  if (part['kind'] !== 'driveShaft' || typeof record !== 'object' || record === null) return null;
  const shaft = readShaft(record as SetupDocument, units);
  const isCrossToCross = (shaft.closedLength?.provenance.from ?? 'crossCentre') === 'crossCentre';
  return {
    name: nameOf(part, 'drive shaft without a name'),
    record: record as SetupDocument,
    closed: isCrossToCross ? middle(shaft.closedLength) : null,
    overlap: middle(shaft.closedOverlap),
    note: noteOf(shaft, system),
  };
}

function readShaft(shaft: SetupDocument, units: unknown): NonNullable<Setup['shaft']> {
  const reading = readSetup({
    hitchwright: 1,
    ...(units === undefined ? {} : { units }),
    tractor: {},
    implement: {},
    shaft,
  });
  return reading.ok ? (reading.setup.shaft ?? {}) : {};
}

function noteOf({ closedLength, closedOverlap, series }: NonNullable<Setup['shaft']>, system: UnitSystem): string {
  const length = (words: string, value: Value | undefined): string[] => {
    const size = middle(value);
    return size === null ? [] : [`${words} ${printBoth(size, 'length', { system })}`];
  };
  const size = series === undefined ? [] : [`size ${series}`];
  return [...length('closed', closedLength), ...length('overlap', closedOverlap), ...size].join(', ');
}

function middle(value: Value | undefined): number | null {
  if (value === undefined || value.kind === 'unknown') return null;
  if (value.kind === 'stated') return value.value;
  if (value.kind === 'uncertain' || value.kind === 'default') return (value.bound.low + value.bound.high) / 2;
  return null;
}
