import { readSetup, type InputError } from '../../../records/index.ts';
import { partRules } from '../catalogue/partRules.ts';
import type { RowKind } from '../kinds.ts';
import { documentOf, type ProposedReading, type ProposedRecord } from './record.ts';
import type { Plain } from '../cells/plainCell.ts';

/** The fields and readings of a record that a setup takes, and what is wrong with the others. */
export interface Checked {
  readonly fields: Readonly<Record<string, Plain>>;
  readonly readings: Readonly<Record<string, ProposedReading>>;
  readonly errors: readonly (InputError & { readonly field: string })[];
  /** Whether it lacks something that no such record can be without. */
  readonly isIncomplete: boolean;
}

type Parts = Pick<ProposedRecord, 'kind' | 'name' | 'fields' | 'readings'>;

/** Rounds of dropping what is wrong; each can show what was hidden behind it. */
const mostRounds = 6;

/** Holds a record against the schema and the contradictions of setups, and drops what does not pass: the rest is one that every reader takes. */
export function checked(record: Parts): Checked {
  if (record.kind === 'customer') return { ...record, errors: [], isIncomplete: false };
  const errors: (InputError & { readonly field: string })[] = [];
  let { fields, readings } = record;
  for (let round = 0; round < mostRounds; round += 1) {
    const found = errorsIn({ ...record, fields, readings });
    errors.push(...found);
    const bad = new Set(found.flatMap(({ code, field }) => (code === 'swapped' ? [field, 'mastHeight'] : [field])));
    const [keptFields, keptReadings] = [without(fields, bad), without(readings, bad)];
    const isSame = keptFields.size + keptReadings.size === Object.keys(fields).length + Object.keys(readings).length;
    fields = Object.fromEntries(keptFields);
    readings = Object.fromEntries(keptReadings);
    if (found.length === 0 || isSame) break;
  }
  return { fields, readings, errors: distinct(errors), isIncomplete: errors.some(({ code }) => code === 'missing') };
}

function without<T>(values: Readonly<Record<string, T>>, bad: ReadonlySet<string>): Map<string, T> {
  return new Map(Object.entries(values).filter(([path]) => !bad.has(path)));
}

function distinct<T extends InputError>(errors: readonly T[]): T[] {
  const seen = new Set<string>();
  return errors.filter(({ code, path }) => !seen.has(`${code} ${path}`) && seen.add(`${code} ${path}`));
}

/** Where the record stands inside the setup that it is checked in, by its kind. */
const places: Readonly<Record<Exclude<RowKind, 'customer'>, string>> = {
  tractor: 'tractor',
  coupler: 'coupler',
  implement: 'implement',
  shaft: 'shaft',
  weight: 'parts.0',
  part: 'parts.0',
};

function errorsIn(record: Parts): (InputError & { readonly field: string })[] {
  const { kind } = record;
  if (kind === 'customer') return [];
  const needsKind = kind === 'coupler' || kind === 'weight' || kind === 'part';
  if (needsKind && record.fields['kind'] === undefined)
    return kind === 'coupler' ? withKindMissing(record) : [kindMissing(kind)];
  return insideSetup(record, kind);
}

function insideSetup(record: Parts, kind: Exclude<RowKind, 'customer'>): (InputError & { readonly field: string })[] {
  const place = places[kind];
  const document = { ...figuresNotKnown(record), ...documentOf({ ...record, fields: known(record) }) };
  const empty = { hitchwright: 1, units: 'metric', tractor: {}, implement: {} };
  const setup = place === 'parts.0' ? { ...empty, parts: [document] } : { ...empty, [place]: document };
  const reading = readSetup(setup);
  if (reading.ok) return [];
  return reading.errors
    .filter(({ path }) => path === place || path.startsWith(`${place}.`))
    .map((error) => {
      const below = error.path.slice(place.length + 1);
      return { ...error, path: below === '' ? kind : `${kind}.${below}`, field: fieldIn(record, below) };
    });
}

/** A part may lack figures that are not known yet; a setup wants to be told so. */
function figuresNotKnown({ kind, fields }: Parts): Readonly<Record<string, null>> {
  if (kind !== 'part' && kind !== 'weight') return {};
  const key = String(fields['kind']);
  const known = figuresOfKinds.get(key) ?? [...partRules((each) => each === key).keys()];
  figuresOfKinds.set(key, known);
  return Object.fromEntries(known.map((path) => [path, null]));
}

const figuresOfKinds = new Map<string, readonly string[]>();

/** What is kept beside what a setup knows of a record. */
const besideSetup = ['price', 'fits', 'extra'];
const besidePart = ['note', 'extra'];

function known({ kind, fields }: Parts): Parts['fields'] {
  const beside = kind === 'part' || kind === 'weight' ? besidePart : besideSetup;
  return Object.fromEntries(without(fields, new Set(beside)));
}

/** The field that an error is about: the longest path of the record that the error’s path starts with. */
function fieldIn({ fields, readings }: Parts, below: string): string {
  const paths = [...Object.keys(fields), ...Object.keys(readings)].filter(
    (path) => below === path || below.startsWith(`${path}.`),
  );
  return paths.sort((a, b) => b.length - a.length)[0] ?? below;
}

function kindMissing(kind: RowKind): InputError & { readonly field: string } {
  const expected = `what kind of ${kind} it is`;
  return {
    code: 'missing',
    path: `${kind}.kind`,
    field: 'kind',
    expected,
    got: 'nothing',
    hint: 'Add a column that says so.',
  };
}

/** A coupler of no known kind is checked as one of the commonest, so that its figures are looked at too. */
function withKindMissing(record: Parts): (InputError & { readonly field: string })[] {
  return [
    kindMissing('coupler'),
    ...insideSetup({ ...record, fields: { ...record.fields, kind: 'uFrame' } }, 'coupler'),
  ];
}
