import { readQuantity, type UnitSystem } from '../units/index.ts';
import { excerpt, type InputError } from './inputError.ts';
import type { Bound, FieldRule, Provenance, Setting, Value } from './value.ts';

/** What was read: the value, or every error found in it. */
export interface ValueReading {
  readonly value: Value | null;
  readonly errors: readonly InputError[];
}

interface Desk {
  readonly rule: FieldRule;
  readonly path: string;
  readonly assume: UnitSystem;
  readonly errors: InputError[];
}

const provenanceKeys = ['from', 'method', 'tool', 'who', 'when', 'source', 'note'] as const;
const formKeys = ['value', 'between', 'adjustable', 'unknown'] as const;
/** What may stand beside each form. */
const besideForm: Readonly<Record<(typeof formKeys)[number], readonly string[]>> = {
  value: ['plusMinus'],
  between: ['default'],
  adjustable: [],
  unknown: [],
};
const settings: readonly Setting[] = ['one', 'perPosition'];

/**
 * Reads one field as people write it: a number (canonical unit), a text with a unit, `null`, or an object in one of the
 * four forms `value` (with `plusMinus`), `between` (with `default`), `adjustable` and `unknown`.
 *
 * @param raw the JSON value of the field [any]
 * @param rule what the field accepts [canonical unit]
 * @param path path of the field, for errors [text]
 * @param assume unit system of a text without a unit [us | metric]
 * @returns the value, or null with every error found [canonical unit]
 */
export function readValue(raw: unknown, rule: FieldRule, path: string, assume: UnitSystem): ValueReading {
  const desk: Desk = { rule, path, assume, errors: [] };
  const value = readForm(raw, desk);
  return { value: desk.errors.length === 0 ? value : null, errors: desk.errors };
}

function readForm(raw: unknown, desk: Desk): Value | null {
  if (raw === null) return { kind: 'unknown', provenance: {} };
  if (typeof raw === 'number' || typeof raw === 'string') {
    return stated(readNumber(raw, desk, desk.path), 0, {});
  }
  if (typeof raw !== 'object' || Array.isArray(raw)) return refuse(desk, '', raw);
  return readObject(raw as Record<string, unknown>, desk);
}

function readObject(raw: Record<string, unknown>, desk: Desk): Value | null {
  const forms = formKeys.filter((key) => Object.hasOwn(raw, key));
  if (forms.length !== 1) return refuse(desk, '', raw);
  const [form = 'value'] = forms;
  reportUnknownKeys(raw, [...provenanceKeys, form, ...besideForm[form]], '', desk);
  const provenance = readProvenance(raw, desk);
  if (form === 'value') return readStated(raw, desk, provenance);
  if (form === 'between') return readBetween(raw, desk, provenance);
  if (form === 'adjustable') return readAdjustable(raw['adjustable'], desk, provenance);
  return raw['unknown'] === true ? { kind: 'unknown', provenance } : refuse(desk, '.unknown', raw['unknown']);
}

function stated(value: number | null, plusMinus: number | null, provenance: Provenance): Value | null {
  if (value === null || plusMinus === null) return null;
  return { kind: 'stated', value, bound: { low: value - plusMinus, high: value + plusMinus }, provenance };
}

function readStated(raw: Record<string, unknown>, desk: Desk, provenance: Provenance): Value | null {
  const value = stated(
    readNumber(raw['value'], desk, `${desk.path}.value`),
    readTolerance(raw, desk, desk.path),
    provenance,
  );
  const { min, max } = desk.rule;
  if (value?.kind !== 'stated' || value.bound.low === value.bound.high) return value;
  if ((min <= 0 || value.bound.low >= min / 2) && value.bound.high <= max * 2) return value;
  const expected = `a tolerance that leaves the figure between ${min} and ${max}`;
  const hint = 'Is the tolerance typed in the right unit?';
  desk.errors.push({
    code: 'out-of-range',
    path: `${desk.path}.plusMinus`,
    expected,
    got: excerpt(raw['plusMinus']),
    hint,
  });
  return null;
}

function readBetween(raw: Record<string, unknown>, desk: Desk, provenance: Provenance): Value | null {
  const bound = readPair(raw['between'], desk, `${desk.path}.between`);
  if (bound === null) return null;
  const basis = raw['default'];
  if (basis === undefined) return { kind: 'uncertain', bound, provenance };
  if (typeof basis !== 'string') return refuse(desk, '.default', basis);
  return { kind: 'default', bound, basis, provenance };
}

function readAdjustable(raw: unknown, desk: Desk, provenance: Provenance): Value | null {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return refuse(desk, '.adjustable', raw);
  const form = raw as Record<string, unknown>;
  reportUnknownKeys(form, ['setting', 'at' in form ? 'at' : 'between'], '.adjustable', desk);
  const setting = readSetting(form['setting'], desk);
  if (Array.isArray(form['at'])) return readStops(form['at'], desk, setting, provenance);
  const ends = form['between'];
  if (!Array.isArray(ends) || ends.length !== 2) return refuse(desk, '.adjustable', raw);
  const lowest = readLimit(ends[0], desk, `${desk.path}.adjustable.between.0`);
  const highest = readLimit(ends[1], desk, `${desk.path}.adjustable.between.1`);
  if (lowest === null || highest === null) return null;
  if (lowest.low > highest.low || lowest.high > highest.high)
    return outOfOrder(desk, `${desk.path}.adjustable.between`);
  return { kind: 'adjustable', lowest, highest, setting, provenance };
}

function readStops(raw: unknown[], desk: Desk, setting: Setting, provenance: Provenance): Value | null {
  if (raw.length < 1 || raw.length > 12) return refuse(desk, '.adjustable.at', raw);
  const at = raw.map((stop, i) => readLimit(stop, desk, `${desk.path}.adjustable.at.${i}`));
  return at.every((stop) => stop !== null) ? { kind: 'stops', at, setting, provenance } : null;
}

function readLimit(raw: unknown, desk: Desk, path: string): Bound | null {
  if (typeof raw !== 'object' || raw === null) {
    const value = readNumber(raw, desk, path);
    return value === null ? null : { low: value, high: value };
  }
  const form = raw as Record<string, unknown>;
  const below = path.slice(desk.path.length);
  reportUnknownKeys(form, 'between' in form ? ['between'] : ['value', 'plusMinus'], below, desk);
  if ('between' in form) return readPair(form['between'], desk, `${path}.between`);
  const value = readNumber(form['value'], desk, `${path}.value`);
  const plusMinus = readTolerance(form, desk, path);
  return value === null || plusMinus === null ? null : { low: value - plusMinus, high: value + plusMinus };
}

function readPair(raw: unknown, desk: Desk, path: string): Bound | null {
  if (!Array.isArray(raw) || raw.length !== 2) return refuse(desk, path.slice(desk.path.length), raw);
  const low = readNumber(raw[0], desk, `${path}.0`);
  const high = readNumber(raw[1], desk, `${path}.1`);
  if (low === null || high === null) return null;
  return low <= high ? { low, high } : outOfOrder(desk, path);
}

function readNumber(raw: unknown, desk: Desk, path: string): number | null {
  if (typeof raw !== 'number' && typeof raw !== 'string') return refuse(desk, path.slice(desk.path.length), raw);
  const { dimension, min, max } = desk.rule;
  const reading = readQuantity(raw, { dimension, range: { min, max }, assume: desk.assume });
  if (reading.ok) return reading.value;
  const { code, expected, got, hint } = reading;
  desk.errors.push({ code, path, expected, got, hint });
  return null;
}

function readTolerance(raw: Record<string, unknown>, desk: Desk, path: string): number | null {
  const given = raw['plusMinus'];
  if (given === undefined) return 0;
  if (typeof given !== 'number' && typeof given !== 'string')
    return refuse(desk, `${path.slice(desk.path.length)}.plusMinus`, given);
  const range = { min: 0, max: (desk.rule.max - desk.rule.min) / 2 };
  const reading = readQuantity(given, { dimension: desk.rule.dimension, range, assume: desk.assume });
  if (reading.ok) return reading.value;
  const { code, expected, got, hint } = reading;
  desk.errors.push({ code, path: `${path}.plusMinus`, expected, got, hint });
  return null;
}

function readSetting(raw: unknown, desk: Desk): Setting {
  if (raw === undefined) return 'one';
  if (typeof raw === 'string' && (settings as readonly string[]).includes(raw)) return raw as Setting;
  notAChoice(desk, 'adjustable.setting', settings, raw);
  return 'one';
}

function readProvenance(raw: Record<string, unknown>, desk: Desk): Provenance {
  const entries = provenanceKeys.filter((key) => raw[key] !== undefined).map((key) => [key, raw[key]] as const);
  for (const [key, text] of entries) {
    if (typeof text !== 'string' || text.length > 2000) refuseText(desk, key, text);
  }
  const from = raw['from'];
  const allowed = desk.rule.from ?? [];
  if (typeof from === 'string' && !allowed.includes(from)) notAChoice(desk, 'from', allowed, from);
  return Object.fromEntries(entries) as Provenance;
}

function reportUnknownKeys(raw: Record<string, unknown>, known: readonly string[], below: string, desk: Desk): void {
  for (const key of Object.keys(raw)) {
    if (known.includes(key)) continue;
    const got = excerpt(key);
    const hint = `Here it takes ${known.join(', ')}.`;
    desk.errors.push({ code: 'unknown-key', path: `${desk.path}${below}.${got}`, expected: 'a known key', got, hint });
  }
}

function notAChoice(desk: Desk, key: string, allowed: readonly string[], got: unknown): void {
  const expected = allowed.length === 0 ? `no ${key} here` : `one of ${allowed.join(', ')}`;
  const hint = 'Say which points the reading lies between, or leave it out.';
  desk.errors.push({ code: 'not-a-choice', path: `${desk.path}.${key}`, expected, got: excerpt(got), hint });
}

function refuseText(desk: Desk, key: string, got: unknown): void {
  const hint = 'Shorten it or write it as text.';
  const expected = 'text of at most 2000 characters';
  desk.errors.push({ code: 'wrong-type', path: `${desk.path}.${key}`, expected, got: excerpt(got), hint });
}

function refuse(desk: Desk, suffix: string, got: unknown): null {
  const { dimension, min, max } = desk.rule;
  desk.errors.push({
    code: 'wrong-type',
    path: `${desk.path}${suffix}`,
    expected: `a ${dimension} (${min}–${max} in the canonical unit)`,
    got: excerpt(got),
    hint: 'Write it like "26 7/8 in", 683, {"value": "26 7/8 in", "plusMinus": "1/16 in"}, {"between": [a, b]}, {"adjustable": {"between": [a, b]}}, {"adjustable": {"at": [a, b]}} or null when it is not known.',
  });
  return null;
}

function outOfOrder(desk: Desk, path: string): null {
  desk.errors.push({
    code: 'wrong-order',
    path,
    expected: 'the smaller figure first',
    got: 'the larger first',
    hint: 'Swap the two ends.',
  });
  return null;
}
