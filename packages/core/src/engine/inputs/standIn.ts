import { fieldRules, type Bound, type FieldRule, type Tractor, type Value } from '../../records/index.ts';
import { classFields, classRange, linkageClassFields, linkageClassRange, type Category } from '../../tables/index.ts';
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
