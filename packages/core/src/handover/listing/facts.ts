import { assess } from '../../engine/assess/index.ts';
import { topicOf } from '../../engine/findings/index.ts';
import {
  fieldRules,
  givenRange,
  withEdits,
  type Bound,
  type FieldRule,
  type Setup,
  type SetupDocument,
  type Value,
} from '../../records/index.ts';
import { printQuantity, type Dimension, type UnitSystem } from '../../units/index.ts';
import { howToMeasure, labelOf, sentenceCase } from '../../words/index.ts';
import { plainText } from '../plainText.ts';

/** One dimension or other figure of a machine, as it is listed. */
export interface ListedFact {
  /** Field path, such as `implement.shoulderSpan`. */
  readonly path: string;
  readonly name: string;
  /** The figure with its tolerance in the chosen unit, the other in brackets. */
  readonly figure: string;
  /** What it is measured between. */
  readonly between: string;
  /** How and when it was measured, as far as that was written down; empty where nothing was. */
  readonly measured: string;
  readonly dimension: Dimension;
  /** Ends of what it may be [canonical unit]. */
  readonly low: number;
  readonly high: number;
  /** It can be set anywhere, or to holes, between those ends. */
  readonly settable: boolean;
}

/** A machine that is listed by itself. */
export type ListedMachine = 'implement' | 'coupler';

/** What somebody wants of a machine at work, which is no dimension of it. */
const wishes: readonly string[] = [
  'parkedPinHeight',
  'workPinHeight',
  'carryHeight',
  'clearanceWanted',
  'workDepth',
  'workSpeed',
].map((key) => `implement.${key}`);

/** Every figure that was given of a machine, in the order in which people are asked. */
export function factsOf(setup: Setup, machine: ListedMachine, system: UnitSystem): ListedFact[] {
  return [...fieldRules].flatMap(([path, rule]) => {
    if (!path.startsWith(`${machine}.`) || wishes.includes(path)) return [];
    const value = valueAt(setup, path);
    const range = givenRange(value);
    return range === null || value === undefined ? [] : [factOf(path, rule, value, { ...range, system })];
  });
}

function valueAt(setup: Setup, path: string): Value | undefined {
  const found = path
    .split('.')
    .reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], setup);
  return found as Value | undefined;
}

function factOf(
  path: string,
  rule: FieldRule,
  value: Value,
  printing: Bound & { readonly system: UnitSystem },
): ListedFact {
  const { low, high } = printing;
  return {
    path,
    name: sentenceCase(path.startsWith('coupler.front.') ? labelOf(path) : rule.label),
    figure: figureText(value, rule.dimension, printing),
    between: [pointWords[value.provenance.from ?? ''], howToMeasure(path)].filter(Boolean).join('. '),
    measured: measuredText(value),
    dimension: rule.dimension,
    low,
    high,
    settable: value.kind === 'adjustable' || value.kind === 'stops',
  };
}

/** Reference points that a reading names, in words. */
const pointWords: Readonly<Record<string, string>> = {
  shoulder: 'Shoulder to shoulder',
  ballCentre: 'Ball centre to ball centre',
  unsaid: 'Not said between which points: measure again',
  innerFaces: 'Between the inner faces',
  outerFaces: 'Over the outer faces',
  shaftEnd: 'To the end of the shaft',
};

function figureText(
  value: Value,
  dimension: Dimension,
  { low, high, system }: Bound & { readonly system: UnitSystem },
): string {
  const other = system === 'us' ? 'metric' : 'us';
  const chosen = inSystem(value, dimension, { low, high }, system);
  const second = inSystem(value, dimension, { low, high }, other);
  return chosen === second ? chosen : `${chosen} (${second})`;
}

/** `26 in ±1/16 in`, `from 14 in to 18 1/2 in, can be set`; a tolerance is rounded up, ends outward. */
function inSystem(value: Value, dimension: Dimension, { low, high }: Bound, system: UnitSystem): string {
  const fine = dimension === 'length' ? { step: system === 'us' ? 64 : 0.1 } : {};
  const printed = (figure: number, round: 'nearest' | 'up' | 'down'): string =>
    printQuantity(figure, dimension, { system, round, ...fine }).replace(/\.0 mm$/, ' mm');
  if (value.kind === 'stated') {
    const slack = Math.max(value.value - low, high - value.value);
    return `${printed(value.value, 'nearest')}${slack < 1e-9 ? '' : ` ±${printed(slack - 1e-9, 'up')}`}`;
  }
  const ends = `from ${printed(low, 'down')} to ${printed(high, 'up')}`;
  if (value.kind === 'uncertain') return `somewhere ${ends}`;
  return `${ends}, can be set${value.kind === 'stops' ? `, in ${value.at.length} holes` : ''}`;
}

function measuredText({ provenance }: Value): string {
  const { method, tool, when, source } = provenance;
  return [method, tool, when, source]
    .filter((part) => part !== undefined)
    .map(plainText)
    .filter((part) => part !== '')
    .join(', ');
}

const standIns: readonly string[] = ['class', 'habit', 'default', 'unknown'];

/** What of a machine has to be known before it can be said to hook up, and is not: on bare links and on a rigid coupler. */
export function notKnownOf(document: SetupDocument, machine: ListedMachine): string[] {
  const alone: SetupDocument = {
    hitchwright: 1,
    tractor: {},
    implement: {},
    ...(document['units'] === undefined ? {} : { units: document['units'] }),
  };
  const withMachine = withEdits(alone, [{ path: machine, value: document[machine] }]);
  const trials =
    machine === 'coupler'
      ? [withMachine]
      : [withMachine, withEdits(withMachine, [{ path: 'coupler', value: { kind: 'uFrame' } }])];
  const paths = trials.flatMap((trial) => openPaths(trial, machine));
  return [...new Set(paths)].sort((a, b) => order(a) - order(b));
}

function openPaths(trial: SetupDocument, machine: ListedMachine): string[] {
  const assessment = assess(trial, { full: false });
  if (!assessment.ok) return [];
  return assessment.answer.findings
    .filter(({ id }) => topicOf(id) === 'hooksUp' && !id.startsWith('limit.'))
    .flatMap(({ drivers, asks }) => [
      ...drivers.filter(({ origin }) => standIns.includes(origin)).map(({ path }) => path),
      ...asks.map(({ path }) => path),
    ])
    .map((path) => path.split('.adjustable.')[0] as string)
    .filter((path) => path.startsWith(`${machine}.`));
}

const places = [...fieldRules.keys()];

function order(path: string): number {
  const place = places.indexOf(path);
  return place === -1 ? places.length : place;
}
