import fc from 'fast-check';
import { readingGrades, readSetup, type FieldRule } from '../../src/records/index.ts';
import { canonicalUnit, customaryUnit } from '../../src/units/index.ts';
import { catalogues } from '../../src/exchange/rows/catalogue/catalogue.ts';
import type { FieldSpec } from '../../src/exchange/rows/catalogue/fieldSpec.ts';
import { rowKinds, type ProposedReading, type ProposedRecord, type RowKind } from '../../src/exchange/index.ts';
import { checked } from '../../src/exchange/rows/reading/check.ts';
import { identityOf, keyOf } from '../../src/exchange/rows/reading/identity.ts';
import type { Plain } from '../../src/exchange/rows/cells/plainCell.ts';

const word = fc.constantFrom(
  'Harl',
  'rake',
  '60"',
  'Größe',
  '=1+1',
  '-2',
  "it's",
  'a; b',
  '犁',
  'x,y',
  '@sum',
  'line\nend',
  'worn (left)',
);
const words = fc.array(word, { minLength: 1, maxLength: 4 }).map((list) => list.join(' '));

/** A figure in the field’s range as it may be written: a number, or a text with a unit of either country. */
function figure({ dimension, min, max }: FieldRule): fc.Arbitrary<{ written: unknown; value: number }> {
  const value = fc.double({ min, max, noNaN: true }).map((each) => Math.round(each * 1000) / 1000 + 0);
  const [metric, us] = [canonicalUnit[dimension], customaryUnit[dimension]];
  return fc.tuple(value, fc.constantFrom('number', 'metric', 'padded')).map(([each, how]) => {
    const inside = Math.min(max, Math.max(min, each));
    if (how === 'number') return { written: inside, value: inside };
    const text = how === 'metric' ? `${inside} ${metric}` : `${inside}0 ${us === metric ? us : metric}`;
    return { written: /e/.test(text) ? inside : text, value: inside };
  });
}

function leafForms(rule: FieldRule): fc.Arbitrary<unknown> {
  const one = figure(rule).map(({ written }) => written);
  const pair = fc
    .tuple(figure(rule), figure(rule))
    .map((ends) => ends.sort((a, b) => a.value - b.value).map(({ written }) => written));
  const slack = fc.constantFrom(0, 0.5, 1.25, `0.25 ${canonicalUnit[rule.dimension]}`);
  const from =
    rule.from === undefined
      ? fc.constant({})
      : fc
          .option(fc.constantFrom(...rule.from), { nil: undefined })
          .map((point) => (point === undefined ? {} : { from: point }));
  const beside = fc.record(
    { method: fc.constant('tape'), who: words, when: fc.constant('2026-09-14'), note: words, source: words },
    { requiredKeys: [] },
  );
  const forms: fc.Arbitrary<object>[] = [
    fc.tuple(one, slack).map(([value, plusMinus]) => ({ value, plusMinus })),
    one.map((value) => ({ value })),
    pair.map((between) => ({ between })),
    pair.map((between) => ({ between, default: 'usual for the class' })),
    pair.map((between) => ({ adjustable: { between } })),
    pair.map((between) => ({ adjustable: { between, setting: 'perPosition' } })),
    pair.map((at) => ({ adjustable: { at } })),
    fc
      .tuple(pair, slack)
      .map(([[low, high], plusMinus]) => ({ adjustable: { between: [{ value: low, plusMinus }, high] } })),
  ];
  const full = fc.tuple(fc.oneof(...forms), from, beside).map((each) => Object.assign({}, ...each) as object);
  return fc.oneof(one, full);
}

function plainValue(spec: FieldSpec): fc.Arbitrary<Plain> | null {
  if (spec.form === 'choice') return fc.constantFrom(...spec.options.map(({ said }) => said));
  if (spec.form === 'count') return fc.integer({ min: spec.min, max: spec.max });
  if (spec.form === 'category') return fc.constantFrom('0', '1N', '1', '2N', '2', '3N', '3', '4N', '4');
  if (spec.form === 'speed') return fc.constantFrom(540, 1000);
  if (spec.form === 'speeds') return fc.constantFrom<readonly number[]>([540], [540, 1000]);
  if (spec.form === 'names') return fc.array(words, { minLength: 1, maxLength: 3 });
  if (spec.form === 'text') return words;
  if (spec.form === 'price')
    return fc
      .tuple(fc.integer({ min: 0, max: 9_999_999 }), fc.constantFrom('USD', 'EUR', 'XTS'))
      .map(([cents, currency]) => ({ amount: cents / 100, currency }));
  return null;
}

function recordOfKind(kind: RowKind): fc.Arbitrary<ProposedRecord> {
  const specs = [...catalogues[kind]];
  const chosen = fc.subarray(
    specs.map(([path]) => path),
    { maxLength: Math.min(12, specs.length) },
  );
  return chosen.chain((paths) => {
    const readings: Record<string, fc.Arbitrary<ProposedReading>> = {};
    const fields: Record<string, fc.Arbitrary<Plain>> = {};
    for (const [path, spec] of specs) {
      const isNeeded = path === 'kind' || path === 'count';
      if (!paths.includes(path) && !isNeeded) continue;
      const plain = plainValue(spec);
      if (spec.form === 'quantity')
        readings[path] = fc.record({ leaf: leafForms(spec.rule), grade: fc.constantFrom(...readingGrades) });
      else if (plain !== null) fields[path] = plain;
    }
    return fc
      .tuple(words, fc.option(words, { nil: null }), fc.record(fields), fc.record(readings))
      .map(([name, id, f, r]) => sound(kind, name, id, f, r));
  });
}

/** The record with only what a setup takes of it, as it may stand in a store. */
function sound(
  kind: RowKind,
  name: string,
  id: string | null,
  fields: Readonly<Record<string, Plain>>,
  readings: Readonly<Record<string, ProposedReading>>,
): ProposedRecord {
  const kept = checked({ kind, name, fields, readings });
  const record = { kind, name, id, fields: kept.fields, readings: kept.readings };
  return { ...record, key: keyOf(identityOf(record)) };
}

/** Records of every kind with every form of leaf and everything that may stand beside it. */
export const anyRecord: fc.Arbitrary<ProposedRecord> = fc.constantFrom(...rowKinds).chain(recordOfKind);

/** What the yard keeps beside what a setup knows. */
const besideSetup = ['price', 'fits', 'extra'];
const besidePart = ['note', 'extra'];

/** Whether a setup takes a record; figures of a part may be not known yet. */
export function isTaken(kind: RowKind, document: Readonly<Record<string, unknown>>): boolean {
  if (kind === 'customer') return true;
  const isPart = kind === 'part' || kind === 'weight';
  const beside = isPart ? besidePart : besideSetup;
  const known = Object.fromEntries(Object.entries(document).filter(([key]) => !beside.includes(key)));
  const empty = { hitchwright: 1, units: 'metric', tractor: {}, implement: {} };
  const reading = readSetup(isPart ? { ...empty, parts: [known] } : { ...empty, [kind]: known });
  return reading.ok || (isPart && reading.errors.every(({ got }) => got === 'nothing'));
}
