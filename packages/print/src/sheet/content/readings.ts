import { atPath, fieldRules, type Bound, type Setup, type Value } from '@hitchwright/core/records';
import { printQuantity, type Dimension, type UnitSystem } from '@hitchwright/core/units';
import { howToMeasure, labelOf } from '@hitchwright/core/words';

/** A reading that says by whom, how or when it was taken. */
export interface ReadingRow {
  readonly label: string;
  /** Between which points it was read. */
  readonly points: string;
  readonly value: string;
  readonly giveOrTake: string;
  readonly how: string;
}

/** Figures of one machine that say nothing of how they were read. */
export interface FigureList {
  readonly machine: string;
  readonly figures: readonly { readonly label: string; readonly value: string }[];
}

interface Reading {
  readonly path: string;
  readonly value: Value;
  readonly dimension: Dimension;
}

/** The readings of a setup, those with a source one by one. */
export function readingsOf(setup: Setup, system: UnitSystem): { rows: ReadingRow[]; lists: FigureList[] } {
  const all = [...fieldRules].flatMap(([path, { dimension }]): Reading[] => {
    const value = atPath(setup, path) as Value | undefined;
    return value === undefined || value.kind === 'unknown' ? [] : [{ path, value, dimension }];
  });
  const isSourced = ({ value }: Reading): boolean => sourceOf(value) !== '';
  return {
    rows: all.filter(isSourced).map((reading) => rowOf(reading, system)),
    lists: machines.flatMap(({ machine, begins }): FigureList[] => {
      const own = all.filter((reading) => !isSourced(reading) && machineOf(reading.path) === begins);
      return own.length === 0 ? [] : [{ machine, figures: own.map((reading) => figureOf(reading, system)) }];
    }),
  };
}

const machines = [
  { machine: 'Tractor', begins: 'tractor' },
  { machine: 'Coupler', begins: 'coupler' },
  { machine: 'Coupler’s front', begins: 'coupler.front' },
  { machine: 'Implement', begins: 'implement' },
  { machine: 'Implement’s second pin row', begins: 'implement.secondRow' },
  { machine: 'Drive shaft', begins: 'shaft' },
] as const;

function machineOf(path: string): string {
  return path.slice(0, path.lastIndexOf('.'));
}

function rowOf({ path, value, dimension }: Reading, system: UnitSystem): ReadingRow {
  return {
    label: capital(labelOf(path)),
    points: [pointWords[value.provenance.from ?? ''], howToMeasure(path)]
      .filter((text) => text !== undefined)
      .join(' '),
    value: valueText(value, dimension, system, true),
    giveOrTake: toleranceText(value, dimension, system),
    how: sourceOf(value),
  };
}

function figureOf({ path, value, dimension }: Reading, system: UnitSystem): FigureList['figures'][number] {
  const tolerance = toleranceText(value, dimension, system);
  const points = pointWords[value.provenance.from ?? ''];
  const between = points === undefined ? '' : ` (${points.toLowerCase().replace(/\.$/, '')})`;
  return {
    label: (fieldRules.get(path)?.label ?? path) + between,
    value: `${valueText(value, dimension, system, false)}${tolerance === '' ? '' : ` ${tolerance}`}`,
  };
}

/** Points of a span that may be read in more ways than one. */
const pointWords: Readonly<Record<string, string>> = {
  shoulder: 'Shoulder to shoulder.',
  ballCentre: 'Ball centre to ball centre.',
  innerFaces: 'Inner faces.',
  outerFaces: 'Outer faces.',
  unsaid: 'Nobody said between which points.',
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

function valueText(value: Value, dimension: Dimension, system: UnitSystem, inBoth: boolean): string {
  const print = (bound: Bound): string => boundText(bound, dimension, system, inBoth);
  if (value.kind === 'stated') return print({ low: value.value, high: value.value });
  if (value.kind === 'adjustable') return `${print(value.lowest)} to ${print(value.highest)}, can be set`;
  if (value.kind === 'stops') return `${value.at.map(print).join(', ')}: holes to set it in`;
  if (value.kind === 'unknown') return 'not known';
  return print(value.bound);
}

function boundText({ low, high }: Bound, dimension: Dimension, system: UnitSystem, inBoth: boolean): string {
  const print = (at: number, one: UnitSystem): string =>
    printQuantity(at, dimension, { system: one, ...(isFine(at, dimension, one) ? { step: 0.1 } : {}) });
  const range = (one: UnitSystem): string => {
    const [from, to] = [print(low, one), print(high, one)];
    return from === to ? from : `${from} to ${to}`;
  };
  const first = range(system);
  const other = range(system === 'us' ? 'metric' : 'us');
  return inBoth && first !== other ? `${first} (${other})` : first;
}

/** A caliper's tenths are kept. */
function isFine(value: number, dimension: Dimension, system: UnitSystem): boolean {
  return dimension === 'length' && system === 'metric' && Math.abs(value - Math.round(value)) > 0.04;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
