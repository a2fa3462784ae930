import { fieldRules, type Bound, type FieldRule } from '../../records/index.ts';
import { classFields, classRange, type Category } from '../../tables/index.ts';
import { habit } from './habits.ts';

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
