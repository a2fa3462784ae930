import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assess } from '@hitchwright/core/assess';
import { readSetup, withEdits, type SetupDocument } from '@hitchwright/core/records';
import { bundledFonts } from '../src/index.ts';
import type { Judged, SheetOptions } from '../src/index.ts';

/** A setup of the examples. */
export function example(name: string): SetupDocument {
  const path = fileURLToPath(new URL(`../../../examples/setups/${name}.json`, import.meta.url));
  return JSON.parse(readFileSync(path, 'utf8')) as SetupDocument;
}

/** The setup with its answer. */
export function judged(document: SetupDocument): Judged {
  const reading = readSetup(document);
  const assessment = assess(document);
  if (!reading.ok || !assessment.ok) throw new Error('the setup can’t be read');
  return { document, setup: reading.setup, answer: assessment.answer };
}

/** A sheet as the tests print it, unless something else is said. */
export const usual: SheetOptions = {
  fonts: bundledFonts,
  paper: 'letter',
  system: 'us',
  date: '2026-11-26',
  number: '2417',
  revision: 'B',
};

/** The setup with other names for its machines. */
export function renamed(
  document: SetupDocument,
  names: { readonly tractor?: string; readonly coupler?: string; readonly implement?: string },
): SetupDocument {
  const edits = Object.entries(names).map(([machine, value]) => ({ path: `${machine}.name`, value }));
  return withEdits(document, edits);
}

const words =
  'extra heavy duty orchard and vineyard rotary tiller with side shift and rear roller, second hand, blue paint, shed 3 ';

/** A name as long as a record may have. */
export const longName = words.repeat(2).slice(0, 200);

/** Parts of which each cures the box blade: as many as asked for. */
function plates(count: number): SetupDocument[] {
  return Array.from({ length: count }, (_, i) => ({
    kind: 'upperPinPlate',
    name: `upper-pin plate number ${i + 1} with a hole for the top hook of the quick coupler`,
    mastHeight: 440 + (i % 20),
    mastSetback: 0,
    price: { amount: 80 + i, currency: 'USD' },
  }));
}

/** Every reading of the machines says who took it, how and when. */
function allMeasured(document: SetupDocument): SetupDocument {
  const machines = ['tractor', 'coupler', 'implement'].map((machine): [string, unknown] => {
    const record = (document[machine] ?? {}) as Record<string, unknown>;
    const entries = Object.entries(record).map(([key, value]): [string, unknown] => {
      const isFigure =
        typeof value === 'number' &&
        ![
          'ptoType',
          'inputType',
          'remotes',
          'frontTyreIndex',
          'rearTyreIndex',
          'liftCylinders',
          'tools',
          'inputSpeed',
        ].includes(key);
      const source = {
        method: 'tape, read twice',
        who: 'R. Oakes',
        when: '2026-11-12',
        note: 'in the yard, on concrete',
      };
      return [key, isFigure ? { value, plusMinus: 1.5, ...source } : value];
    });
    return [machine, Object.fromEntries(entries)];
  });
  return { ...document, ...Object.fromEntries(machines) };
}

const hostile =
  '<script>alert(1)</script> =HYPERLINK("http://x") ../../etc/passwd \\P{\\H9;x} %%c ^J & "q" \u202eabc\u0007 🚜🚜';

/** The sample setups by name. */
export const samples: Readonly<Record<string, () => SetupDocument>> = {
  'box-blade-on-coupler': () => example('box-blade-on-coupler'),
  'tiller-driven-on-coupler': () => example('tiller-driven-on-coupler'),
  'flail-measure-first': () => example('flail-measure-first'),
  'stone-burier-direct': () => example('stone-burier-direct'),
  'category-only': () => ({ hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } }),
  'long-names': () =>
    renamed(example('tiller-driven-on-coupler'), { tractor: longName, coupler: longName, implement: longName }),
  'no-parts': () => withEdits(example('box-blade-on-coupler'), [{ path: 'parts', value: [] }]),
  'forty-parts': () => withEdits(example('box-blade-on-coupler'), [{ path: 'parts', value: plates(40) }]),
  'greek-and-cyrillic': () =>
    renamed(example('rake-on-coupler'), {
      tractor: 'Δράκων 35 – τρακτέρ του Ἀνέστη',
      coupler: 'Зчіплення №2 „Їжак“',
      implement: 'Грабли-ворошилки Ёлка, široké hrábě Łąka',
    }),
  'all-measured': () => allMeasured(example('box-blade-on-coupler')),
  hostile: () =>
    renamed(example('auger-on-coupler'), {
      tractor: hostile,
      implement: `中文犁 ${hostile}`,
      coupler: 'محراث',
    }),
};
