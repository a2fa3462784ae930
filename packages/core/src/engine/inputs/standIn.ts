import { fieldRules, type Bound, type FieldRule, type Setup, type Tractor, type Value } from '../../records/index.ts';
import {
  classFields,
  classRange,
  drawbarShare,
  drivenMachines,
  fieldPace,
  fieldWorks,
  highestOf,
  linkageClassFields,
  linkageClassRange,
  lowestOf,
  ptoDemand,
  tyreLiquidMass,
  type Category,
  type Figure,
} from '../../tables/index.ts';
import { habit } from './habits.ts';
import { consistentRanges } from './linkageRanges.ts';

/** What stands in for a figure that was not given: a class range, a habit of the trade, or all that the field accepts. */
export interface StandIn extends Bound {
  readonly origin: 'class' | 'habit' | 'unknown';
  readonly basis?: string;
}

/** The stand-in for one figure. The front pins of a coupler are pins like those of an implement of its category. */
export function standInFor(path: string, category: Category | undefined): StandIn {
  return fromClass(path, category) ?? habit(path) ?? everythingAccepted(path);
}

/** The stand-ins for the two ends of something that can be set. */
export function standInsForEnds(path: string, category: Category | undefined): readonly [StandIn, StandIn] {
  const all = everythingAccepted(path);
  return [fromClass(`${path}Narrowest`, category) ?? all, fromClass(`${path}Widest`, category) ?? all];
}

/**
 * The stand-ins for an unmeasured linkage: the ranges of its category, shrunk by whatever was measured of it.
 *
 * @param tractor the tractor [record]
 * @returns stand-ins by field path, only for what was not given [mm]
 */
export function linkageStandIns({ category, ...tractor }: Tractor): ReadonlyMap<string, StandIn> {
  if (category === undefined) return new Map();
  const key = (path: string): string => path.slice('tractor.'.length);
  const given = (path: string): Bound | null => measured((tractor as Readonly<Record<string, unknown>>)[key(path)]);
  const open = linkageClassFields.filter((path) => given(path) === null);
  const ranges = linkageClassFields.map(
    (path) => [key(path), given(path) ?? linkageClassRange(category, path)] as const,
  );
  const shrunk = consistentRanges(Object.fromEntries(ranges));
  const basis = 'range of the category, our own wide choice, shrunk by what was measured of the linkage';
  return new Map(open.map((path) => [path, { ...(shrunk[key(path)] as Bound), origin: 'class', basis }]));
}

/**
 * What the liquid in the rear tyres weighs by their size, where it was not weighed.
 *
 * @param tractor the tractor [record]
 * @returns the stand-in by its field path; none without liquid [kg]
 */
export function liquidStandIn({ tyreLiquid }: Tractor): ReadonlyMap<string, StandIn> {
  if (tyreLiquid === undefined) return new Map();
  const { size, fluid, fill } = tyreLiquid;
  const one = tyreLiquidMass(size, fluid, fill === undefined ? undefined : fill / 100);
  if (one === null) return new Map();
  const basis = 'both rear tyres by a chart of their sizes, 15 % either way between makers';
  return new Map([['tractor.tyreLiquidMass', { low: 2 * one.low, high: 2 * one.high, origin: 'class', basis }]]);
}

/**
 * What the kind of work says of power and pull where nothing was read: the PTO power of a driven machine by its width, the
 * usual speed, and how much of a range of drafts and of the PTO power is there.
 *
 * @param setup a setup that was read [record]
 * @returns stand-ins by path, only those that a table row stands behind [kW, km/h, share]
 */
export function workStandIns({ tractor, implement }: Setup): ReadonlyMap<string, StandIn> {
  const { work, workWidth } = implement;
  const machine = drivenMachines.find((one) => one === work);
  const kind = fieldWorks.find((one) => one === work);
  const width = measured(workWidth);
  return new Map<string, StandIn>([
    ...(machine === undefined || width === null ? [] : [powerByWidth(ptoDemand(machine), width)]),
    ...(kind === undefined ? [] : [usualSpeed(fieldPace(kind).speed)]),
    ['implement.draftShare', { low: 0, high: 1, origin: 'class', basis: draftBasis }],
    ['tractor.drawbarShare', drawbarRange(tractor)],
  ]);
}

/** Where a source tells one figure and no range [share], our own and wide. */
const ownSpread = 0.4;

function powerByWidth(row: Figure, width: Bound): [string, StandIn] {
  const [least, most] = [lowestOf(row), highestOf(row)];
  const isRange = most > least;
  const spread = isRange ? 0 : ownSpread;
  const low = (least * (1 - spread) * width.low) / 1000;
  const high = (most * (1 + spread) * width.high) / 1000;
  const widened = isRange ? '' : `, ${ownSpread * 100} % either way by our own choice`;
  const basis = `by its width, ${row.printed} ${row.printedUnit}, ${knownBy(row)}${widened}`;
  return ['implement.powerWanted', { low, high, origin: 'class', basis }];
}

function usualSpeed(row: Figure): [string, StandIn] {
  const basis = `usual speed of its kind of work, ${row.printed} ${row.printedUnit}, ${knownBy(row)}`;
  return ['implement.workSpeed', { low: lowestOf(row), high: highestOf(row), origin: 'class', basis }];
}

function knownBy({ status }: Figure): string {
  if (status === 'practice') return 'common practice';
  return status === 'memory' ? 'from memory' : 'by a university extension page';
}

const draftBasis =
  'soil from sandy to clay and any build of its kind, the spread of the table on top, mostly from memory';

/** Firm soil is taken; without a word on the front axle it may pull or not. */
function drawbarRange({ wheelsDriven }: Tractor): StandIn {
  const rear = drawbarShare('firm', 'rearWheel').value;
  const all = drawbarShare('firm', 'frontAssist').value;
  const [low, high] = [wheelsDriven === 'all' ? all : rear, wheelsDriven === 'rear' ? rear : all];
  const printed = low === high ? `${low}` : `${low} to ${high}`;
  return { low, high, origin: 'class', basis: `firm soil, ${printed} of the PTO power by a university extension page` };
}

/** The range of a figure that was measured, or null. */
function measured(value: unknown): Bound | null {
  const figure = value as Value | undefined;
  if (figure?.kind === 'stops')
    return {
      low: Math.min(...figure.at.map((stop) => stop.low)),
      high: Math.max(...figure.at.map((stop) => stop.high)),
    };
  return figure !== undefined && 'bound' in figure ? figure.bound : null;
}

function fromClass(path: string, category: Category | undefined): StandIn | null {
  const field = classFields.find((candidate) => candidate === path.replace(/^coupler\.front\./, 'implement.'));
  if (category === undefined || field === undefined) return null;
  const range = classRange(category, field);
  return range === null ? null : { low: range.low, high: range.high, origin: 'class', basis: range.note };
}

function everythingAccepted(path: string): StandIn {
  const { min, max } = ruleOf(path);
  return { low: min, high: max, origin: 'unknown' };
}

function ruleOf(path: string): FieldRule {
  const rule = fieldRules.get(path);
  if (rule === undefined) throw new Error(`invariant: no field ${path}`);
  return rule;
}
