import { atPath, fieldRules, type Bound, type Setup, type Value } from '@hitchwright/core/records';
import { printQuantity, type Dimension, type UnitSystem } from '@hitchwright/core/units';
import { labelOf } from '@hitchwright/core/words';

/** A reading, with the points it lies between where it may lie between others. */
interface ReadingEntry {
  readonly label: string;
  readonly value: string;
}

/** Readings that were taken alike. */
interface ReadingList {
  /** How, by whom, when. */
  readonly how: string;
  readonly readings: readonly ReadingEntry[];
}

/** What a setup says in figures. */
export interface Readings {
  readonly lists: readonly ReadingList[];
  /** How many figures say nothing of how they were read. */
  readonly others: number;
}

interface Reading {
  readonly path: string;
  readonly value: Value;
  readonly dimension: Dimension;
}

/** The readings of a setup that say by whom, how or when, by how they were taken; the others are counted. */
export function readingsOf(setup: Setup, system: UnitSystem): Readings {
  const all = [...fieldRules].flatMap(([path, { dimension }]): Reading[] => {
    const value = atPath(setup, path) as Value | undefined;
    return value === undefined || value.kind === 'unknown' ? [] : [{ path, value, dimension }];
  });
  const bySource = new Map<string, ReadingEntry[]>();
  for (const reading of all) {
    const how = sourceOf(reading.value);
    bySource.set(how, [...(bySource.get(how) ?? []), entryOf(reading, system)]);
  }
  return {
    lists: [...bySource].filter(([how]) => how !== '').map(([how, readings]) => ({ how, readings })),
    others: bySource.get('')?.length ?? 0,
  };
}

function entryOf({ path, value, dimension }: Reading, system: UnitSystem): ReadingEntry {
  const tolerance = toleranceText(value, dimension, system);
  const points = pointWords[value.provenance.from ?? ''];
  return {
    label: labelOf(path) + (points === undefined ? '' : ` (${points})`),
    value: `${valueText(value, dimension, system)}${tolerance === '' ? '' : ` ${tolerance}`}`,
  };
}

/** Points of a span that may be read in more ways than one. */
const pointWords: Readonly<Record<string, string>> = {
  shoulder: 'shoulder to shoulder',
  ballCentre: 'ball centre to ball centre',
  innerFaces: 'inner faces',
  outerFaces: 'outer faces',
  unsaid: 'nobody said between which points',
};

function sourceOf({ provenance }: Value): string {
  const { method, tool, who, when, source, note } = provenance;
  return [method, tool, who, when, source, note].filter((part) => part !== undefined && part !== '').join(', ');
}

/** Half of what a stated figure may be off by; a range says so itself. */
function toleranceText(value: Value, dimension: Dimension, system: UnitSystem): string {
  if (value.kind !== 'stated') return '';
  const half = (value.bound.high - value.bound.low) / 2;
  if (half === 0) return '';
  return `± ${fine(half, dimension, system)}`;
}

/** A tolerance too fine for a tape is told in millimetres, whatever the system. */
function fine(value: number, dimension: Dimension, system: UnitSystem): string {
  if (dimension !== 'length') return printQuantity(value, dimension, { system, step: 0.1 });
  if (system === 'us' && value >= finest) return printQuantity(value, dimension, { system, step: 64 });
  return printQuantity(value, dimension, { system: 'metric', step: 0.1 });
}

const finest = 25.4 / 64;

function valueText(value: Value, dimension: Dimension, system: UnitSystem): string {
  const print = (bound: Bound): string => boundText(bound, dimension, system);
  if (value.kind === 'stated') return print({ low: value.value, high: value.value });
  if (value.kind === 'adjustable') return `${print(value.lowest)} to ${print(value.highest)}, can be set`;
  if (value.kind === 'stops') return `${value.at.map(print).join(', ')}: holes to set it in`;
  if (value.kind === 'unknown') return 'not known';
  return print(value.bound);
}

/** In both units, where they don't print alike. */
function boundText({ low, high }: Bound, dimension: Dimension, system: UnitSystem): string {
  const print = (at: number, one: UnitSystem): string =>
    printQuantity(at, dimension, { system: one, ...(isFine(at, dimension, one) ? { step: 0.1 } : {}) });
  const range = (one: UnitSystem): string => {
    const [from, to] = [print(low, one), print(high, one)];
    return from === to ? from : `${from} to ${to}`;
  };
  const first = range(system);
  const other = range(system === 'us' ? 'metric' : 'us');
  return first === other ? first : `${first} (${other})`;
}

/** A caliper's tenths are kept. */
function isFine(value: number, dimension: Dimension, system: UnitSystem): boolean {
  return dimension === 'length' && system === 'metric' && Math.abs(value - Math.round(value)) > 0.04;
}
