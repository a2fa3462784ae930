import { describe, expect, test } from 'vitest';
import { setupSchema, leafRules } from '../../../records/index.ts';
import { plainCell, type Plain } from '../cells/plainCell.ts';
import { guessHeading } from '../headings/guessHeading.ts';
import { rowKinds, type RowKind } from '../kinds.ts';
import { plainValueText } from '../writing/plainText.ts';
import { catalogues } from './catalogue.ts';

interface Schema {
  readonly _zod: {
    readonly def: {
      readonly type: string;
      readonly innerType?: Schema;
      readonly shape?: Readonly<Record<string, Schema>>;
      readonly element?: Schema;
      readonly options?: readonly Schema[];
      readonly values?: readonly unknown[];
      readonly entries?: Readonly<Record<string, unknown>>;
    };
  };
}

function opened(schema: Schema): Schema {
  return schema._zod.def.innerType === undefined ? schema : opened(schema._zod.def.innerType);
}

/** Every path of a schema, objects opened where their fields are fields of a record, with what is allowed there. */
function pathsOf(schema: Schema, below = ''): Map<string, Schema> {
  const { shape } = opened(schema)._zod.def;
  return new Map(
    Object.entries(shape ?? {}).flatMap(([key, value]): [string, Schema][] => {
      const path = below + key;
      const isRow = key === 'front' || key === 'secondRow';
      return isRow ? [...pathsOf(value, `${path}.`)] : [[path, opened(value)]];
    }),
  );
}

const shapes = opened(setupSchema('metric') as unknown as Schema)._zod.def.shape ?? {};
const parts = opened(opened(shapes['parts'] as Schema)._zod.def.element as Schema)._zod.def.options ?? [];
const kindOf = (part: Schema): string => String(opened(pathsOf(part).get('kind') as Schema)._zod.def.values?.[0]);
const weightKinds = ['frontWeights', 'wheelWeights'];

/** What the schema of setups has for each kind of row. */
function schemaPaths(kind: RowKind): Map<string, Schema> {
  if (kind === 'weight' || kind === 'part') {
    const mine = parts.filter(
      (part) => kindOf(part) !== 'driveShaft' && weightKinds.includes(kindOf(part)) === (kind === 'weight'),
    );
    return new Map(mine.flatMap((part) => [...pathsOf(part)]));
  }
  return kind === 'customer' ? new Map() : pathsOf(shapes[kind] as Schema);
}

describe('the catalogue', () => {
  const besideSetup = ['price', 'fits', 'note', 'contact.phone', 'contact.email', 'contact.address'];

  test.each(rowKinds)('of a %s has every field that a setup has, and no other', (kind) => {
    if (kind === 'customer') return;
    const wanted = [...schemaPaths(kind).keys()].filter((path) => path !== 'name').sort();
    const got = [...catalogues[kind].keys()]
      .filter((path) => wanted.includes(path) || !besideSetup.includes(path))
      .sort();
    expect(got).toEqual(wanted);
  });

  test.each(rowKinds)(
    'of a %s takes a quantity where the setup takes one, with the same limits or those of several parts',
    (kind) => {
      for (const [path, schema] of schemaPaths(kind)) {
        const spec = catalogues[kind].get(path);
        const rule = leafRules.get(schema);
        expect(spec?.form === 'quantity', path).toBe(rule !== undefined);
        if (spec?.form === 'quantity' && rule !== undefined) {
          expect(spec.rule.dimension).toBe(rule.dimension);
          expect(spec.rule.min <= rule.min && spec.rule.max >= rule.max, path).toBe(true);
        }
      }
    },
  );

  test.each(rowKinds)('of a %s has every choice of the setup, each written so that it reads back', (kind) => {
    for (const [path, spec] of catalogues[kind]) {
      if (spec.form !== 'choice') continue;
      const { entries, values, type } = (schemaPaths(kind).get(path) as Schema)._zod.def;
      const several = parts
        .map(kindOf)
        .filter((each) => each !== 'driveShaft' && weightKinds.includes(each) === (kind === 'weight'));
      const allowed =
        path === 'kind' && kind !== 'coupler'
          ? several
          : type === 'boolean'
            ? [true, false]
            : (values ?? Object.values(entries ?? {}));
      expect(spec.options.map(({ said }) => said).sort(), path).toEqual([...allowed].sort());
      for (const { said, spellings } of spec.options) {
        const written = plainValueText(said, spec);
        expect(plainCell(written, false, spec, null)).toEqual({ kind: 'read', value: said, told: [] });
        for (const spelling of spellings)
          expect(plainCell(spelling, false, spec, null), spelling).toMatchObject({ value: said });
      }
    }
  });

  test.each(rowKinds)('of a %s calls no two fields the same, and each label heads its own field', (kind) => {
    for (const [path, { label }] of catalogues[kind]) {
      const guess = guessHeading(label, kind);
      expect(guess, label).toMatchObject({ target: { role: 'field', field: path } });
      expect(guess.confidence, label).toBeGreaterThan(0.98);
      expect(guess.confidence, 'as sure as a person’s choice').toBeLessThan(1);
    }
  });

  test.each<[RowKind, string, Plain]>([
    ['part', 'price', { amount: 12.125, currency: 'USD' }],
    ['part', 'price', { amount: 1250, currency: 'XTS' }],
    ['part', 'fits', ['a; b', '[c']],
    ['tractor', 'ptoSpeeds', [540, 1000]],
    ['implement', 'inputSpeed', 540],
    ['implement', 'category', '1N'],
  ])('%s %s %j is written so that it reads back', (kind, path, value) => {
    const spec = catalogues[kind].get(path);
    if (spec === undefined || spec.form === 'quantity') throw new Error(path);
    expect(plainCell(plainValueText(value, spec), false, spec, null)).toMatchObject({ kind: 'read', value });
  });
});
