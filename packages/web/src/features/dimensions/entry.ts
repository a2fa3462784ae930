import { setByNature, type FieldRule } from '@hitchwright/core/records';
import { printQuantity, type UnitSystem } from '@hitchwright/core/units';

/** How a field is given: one figure, a range it lies in, a range it can be set to, one of several holes, or not at all. */
export type EntryMode = 'figure' | 'between' | 'adjustable' | 'stops' | 'unknown';

/** What a person calls each. */
export const modeNames: Readonly<Record<EntryMode, string>> = {
  figure: 'one figure',
  between: 'somewhere between',
  adjustable: 'can be set between',
  stops: 'one of several holes',
  unknown: 'not known',
};

/** A field as it stands in its boxes. Texts are what was typed; numbers of a record are kept until they are typed over. */
export interface Entry {
  readonly mode: EntryMode;
  readonly figure: unknown;
  readonly plusMinus: unknown;
  readonly low: unknown;
  readonly high: unknown;
  readonly stops: unknown;
  readonly from: string;
  /** Everything else that the value says, such as who measured it. */
  readonly rest: Readonly<Record<string, unknown>>;
}

const blank: Entry = { mode: 'figure', figure: '', plusMinus: '', low: '', high: '', stops: '', from: '', rest: {} };

/** Fields that some machines have as a range to set, and others as one figure. */
const setBySome = ['coupler.topHookHeight'];
const withHoles = [
  'implement.mastHeight',
  'implement.mastSetback',
  'coupler.topHookHeight',
  'coupler.topHookBehind',
  'tractor.topLinkPivotHeight',
  'tractor.topLinkPivotBehindAxle',
];

/** The modes that a field offers, the first being its own. */
export function modesOf(path: string): readonly EntryMode[] {
  if (setByNature.includes(path)) return ['adjustable', 'unknown'];
  return [
    'figure',
    'between',
    ...(setBySome.includes(path) ? (['adjustable'] as const) : []),
    ...(withHoles.includes(path) ? (['stops'] as const) : []),
    'unknown',
  ];
}

/** The boxes that show a document's value. */
export function entryOf(raw: unknown, path: string): Entry {
  const [mode = 'figure'] = modesOf(path);
  if (raw === undefined) return { ...blank, mode };
  if (raw === null) return { ...blank, mode: 'unknown' };
  if (typeof raw !== 'object') return { ...blank, figure: raw };
  const { value, plusMinus, between, adjustable, unknown, from, ...rest } = raw as Record<string, unknown>;
  const base = { ...blank, from: typeof from === 'string' ? from : '', rest };
  if (unknown !== undefined) return { ...base, mode: 'unknown' };
  if (Array.isArray(between)) return { ...base, mode: 'between', low: between[0], high: between[1] };
  if (adjustable !== undefined) return adjustableEntry(base, adjustable);
  return { ...base, figure: value ?? '', plusMinus: plusMinus ?? '' };
}

function adjustableEntry(base: Entry, adjustable: unknown): Entry {
  const { between, at, setting } = (adjustable ?? {}) as Record<string, unknown>;
  const rest = setting === undefined ? base.rest : { ...base.rest, setting };
  if (Array.isArray(at)) return { ...base, rest, mode: 'stops', stops: at };
  const [low, high] = Array.isArray(between) ? (between as unknown[]) : [];
  return { ...base, rest, mode: 'adjustable', low: low ?? '', high: high ?? '' };
}

/** What goes into the document; `undefined` where nothing has been typed. */
export function rawOf(entry: Entry): unknown {
  const { setting, ...rest } = entry.rest;
  const more = { ...rest, ...(entry.from === '' ? {} : { from: entry.from }) };
  const settings = setting === undefined ? {} : { setting };
  if (entry.mode === 'unknown') return null;
  if (entry.mode === 'stops')
    return isBlank(entry.stops) ? undefined : { ...more, adjustable: { at: stopsOf(entry.stops), ...settings } };
  if (entry.mode === 'figure') return figureOf(entry, more);
  if (isBlank(entry.low) && isBlank(entry.high)) return undefined;
  const between = [entry.low, entry.high];
  return entry.mode === 'between' ? { ...more, between } : { ...more, adjustable: { between, ...settings } };
}

function figureOf({ figure, plusMinus }: Entry, more: object): unknown {
  if (isBlank(figure)) return undefined;
  if (isBlank(plusMinus) && Object.keys(more).length === 0) return figure;
  return { ...more, value: figure, ...(isBlank(plusMinus) ? {} : { plusMinus }) };
}

function stopsOf(stops: unknown): unknown[] {
  if (Array.isArray(stops)) return stops as unknown[];
  return String(stops)
    .split(';')
    .map((stop) => stop.trim())
    .filter((stop) => stop !== '');
}

function isBlank(figure: unknown): boolean {
  return figure === undefined || figure === null || (typeof figure === 'string' && figure.trim() === '');
}

/** A figure as a box shows it: text as it was typed, a record's number in the person's unit. */
export function shown(figure: unknown, rule: FieldRule, system: UnitSystem): string {
  if (typeof figure === 'string') return figure;
  if (typeof figure === 'number')
    return printQuantity(figure, rule.dimension, { system, ...(system === 'metric' ? { step: 0.1 } : {}) });
  if (Array.isArray(figure)) return figure.map((stop) => shown(stop, rule, system)).join('; ');
  if (typeof figure !== 'object' || figure === null) return '';
  const { value, between } = figure as Record<string, unknown>;
  return Array.isArray(between) ? between.map((end) => shown(end, rule, system)).join('–') : shown(value, rule, system);
}
