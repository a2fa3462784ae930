import { excerpt } from '../../../records/index.ts';
import { categories, type Category } from '../../../tables/index.ts';
import type { FieldSpec, Option, Said } from '../catalogue/fieldSpec.ts';
import { currencyOf } from '../headings/headingUnit.ts';
import { folded } from '../headings/words.ts';
import { dateShown } from './dates.ts';
import { isMissing } from './missing.ts';
import type { CellError, Told } from './told.ts';

/** A plain value as a record keeps it [JSON]. */
export type Plain = Said | readonly unknown[] | Readonly<Record<string, unknown>>;

/** What came of a cell of a plain field. */
export type PlainReading =
  | { readonly kind: 'missing' }
  | { readonly kind: 'refused'; readonly error: CellError }
  | { readonly kind: 'read'; readonly value: Plain; readonly told: readonly Told[] };

type PlainSpec = Exclude<FieldSpec, { form: 'quantity' }>;
type SpecOf<Form extends FieldSpec['form']> = Extract<FieldSpec, { form: Form }>;

/** Reads one cell of a column that is chosen or written, not measured. `unit` is the currency that a heading names. */
export function plainCell(text: string, isDate: boolean, spec: PlainSpec, unit: string | null): PlainReading {
  if (text === '' || (isMissing(text) && spec.form !== 'text')) return { kind: 'missing' };
  if (spec.form === 'text') return textCell(text, spec);
  if (isDate)
    return refused(
      'not-a-choice',
      spec.label,
      text,
      'The spreadsheet made a date of it: set the column to text and type it again.',
    );
  switch (spec.form) {
    case 'choice':
      return choiceCell(text, spec);
    case 'category':
      return categoryCell(text);
    case 'count':
      return countCell(text, spec);
    case 'speed':
      return speedCell(text);
    case 'speeds':
      return speedsCell(text);
    case 'price':
      return priceCell(text, unit);
    case 'names':
      return namesCell(text, spec.label);
    case 'json':
      return jsonCell(text, spec.label);
  }
}

function read(value: Plain, ...told: readonly Told[]): PlainReading {
  return { kind: 'read', value, told };
}

function refused(code: CellError['code'], expected: string, got: string, hint: string): PlainReading {
  return { kind: 'refused', error: { code, expected, got: excerpt(got), hint } };
}

function textCell(text: string, { label, longest }: SpecOf<'text'>): PlainReading {
  if (text.length <= longest) return read(text);
  return refused(
    'out-of-range',
    `${label} of at most ${longest} characters`,
    `${text.length} characters`,
    'Shorten it.',
  );
}

const spelled = (text: string): string => folded(text) || text.trim().toLowerCase();

function choiceCell(text: string, { label, options }: SpecOf<'choice'>): PlainReading {
  const said = spelled(text);
  const names = (option: Option): readonly string[] => [String(option.said), ...option.spellings];
  const option = options.find((each) => names(each).some((name) => spelled(name) === said));
  const first = (each: Option): string => each.spellings[0] ?? String(each.said);
  if (option === undefined) {
    const expected = `${label}: one of ${options.map(first).join(', ')}`;
    return refused('not-a-choice', expected, text, 'Choose one of those, or leave it empty.');
  }
  const isPlain =
    said === spelled(first(option)) || (typeof option.said !== 'number' && said === spelled(String(option.said)));
  if (isPlain) return read(option.said);
  const sentence = `“${excerpt(text)}” was taken for ${first(option)}.`;
  return read(option.said, { about: 'spelling', taken: first(option), sentence });
}

const romans: Readonly<Record<string, string>> = { i: '1', ii: '2', iii: '3', iv: '4' };
const oneCategory =
  /^(?:iso )?(?:cat(?:egory)?\.? ?)?(limited )?(?:cat(?:egory)?\.? ?)?([0-4]|iv|i{1,3})(?:\.0+)? ?-?(n|narrow|limited|l)?$/i;
const severalCategories =
  /(?<!\d)(?:[0-4]|iv|i{1,3})n? ?(?:\/|,|;|&|\+|-|and|or|to) ?(?:cat(?:egory)?\.? ?)?(?:[0-4]|iv|i{1,3})n?\b/i;

function categoryCell(text: string): PlainReading {
  const plain = text.replace(/\s+/g, ' ').trim();
  const bracket = /^(.*?) ?\(([^()]*)\)$/.exec(plain);
  const [, before, digits, behind = ''] = oneCategory.exec(bracket?.[1] ?? plain) ?? [];
  if (digits === undefined) return noCategory(plain);
  const category = `${romans[digits.toLowerCase()] ?? digits}${/^n/i.test(behind) ? 'N' : ''}` as Category;
  if (!categories.includes(category)) return refused('not-a-choice', anyCategory, text, 'There is no such category.');
  return read(category, ...categoryTold(text, category, before !== undefined || /^l/i.test(behind), bracket?.[2]));
}

const anyCategory = `one of ${categories.join(', ')}`;

function noCategory(text: string): PlainReading {
  const keep = 'keep the category that its pins have now.';
  if (dateShown(text) !== null)
    return refused('ambiguous', anyCategory, text, `A spreadsheet makes dates of 1/2: ${keep}`);
  if (severalCategories.test(text))
    return refused('ambiguous', anyCategory, text, `Two categories stand here: ${keep}`);
  return refused('not-a-choice', anyCategory, text, 'Write it as 1, 2N or Cat 1.');
}

function categoryTold(text: string, category: Category, isLimited: boolean, note: string | undefined): Told[] {
  if (!isLimited && note === undefined) return [];
  const lost = isLimited ? 'that it is limited' : `“${excerpt(note ?? '')}”`;
  const sentence = `“${excerpt(text)}” was taken for category ${category}; ${lost} is not kept.`;
  return [{ about: 'spelling', taken: category, sentence }];
}

function countCell(text: string, { label, min, max }: SpecOf<'count'>): PlainReading {
  const [, digits] = /^(\d{1,9})(?:\.0+)?$/.exec(text) ?? [];
  const expected = `${label}: a whole number from ${min} to ${max}`;
  const value = Number(digits ?? NaN);
  if (Number.isNaN(value)) return refused('wrong-type', expected, text, 'Write the number alone.');
  return value < min || value > max ? refused('out-of-range', expected, text, 'Check the number.') : read(value);
}

const oneSpeed = /^(\d{3,4})(?:\.0+)? ?(e|eco)? ?(?:rpm|r\/min|min-1)?$/i;
const speedExpected = 'a shaft speed from 100 to 3000 rpm';

function speedOf(text: string): { value: number; isEconomy: boolean } | null {
  const [, digits, economy] = oneSpeed.exec(text.trim()) ?? [];
  const value = Number(digits ?? NaN);
  return value >= 100 && value <= 3000 ? { value, isEconomy: economy !== undefined } : null;
}

function speedCell(text: string): PlainReading {
  const speed = speedOf(text);
  if (speed === null) return refused('not-a-quantity', speedExpected, text, 'Write one speed, such as 540 rpm.');
  return read(speed.value, ...economyTold(text, speed.isEconomy));
}

function speedsCell(text: string): PlainReading {
  const speeds = text.split(/ ?(?:\/|,|;|&|\+|\band\b) ?/i).map(speedOf);
  const values = [...new Set(speeds.map((speed) => speed?.value ?? NaN))];
  if (values.some(Number.isNaN) || values.length > 6)
    return refused('not-a-quantity', `${speedExpected}, or several`, text, 'Write them as 540; 1000.');
  return read(
    values,
    ...economyTold(
      text,
      speeds.some((speed) => speed?.isEconomy === true),
    ),
  );
}

function economyTold(text: string, isEconomy: boolean): Told[] {
  const sentence = `“${excerpt(text)}”: an economy speed turns the shaft as fast at less engine speed, so it is kept as that speed.`;
  return isEconomy ? [{ about: 'spelling', taken: text, sentence }] : [];
}

function priceCell(text: string, unit: string | null): PlainReading {
  const expected = 'an amount with its currency, such as 129.50 USD';
  const [, before = '', digits = '', behind = ''] =
    /^([^\d\s-]{0,4}) ?(\d[\d.,' ]*?) ?([^\d\s]{0,4})$/.exec(text.trim()) ?? [];
  const amount = amountOf(digits);
  if (amount === null) return refused('not-a-quantity', expected, text, 'Write digits, with a point before cents.');
  const signs = [before, behind].filter((sign) => sign !== '' && sign !== '$');
  const written = signs.map((sign) => currencyOf(sign) ?? (/^[A-Z]{3}$/.test(sign) ? sign : null));
  const currency = written.length === 0 ? unit : (written[0] ?? null);
  if (currency === null || written.length > 1)
    return refused(
      'ambiguous',
      expected,
      text,
      'Which currency? Write its code, as in 129.50 USD, put it into the heading, or choose one for the column.',
    );
  if (amount > 1_000_000) return refused('out-of-range', expected, text, 'Check the amount.');
  const sentence = `“${digits}” was taken for ${amount}: three digits behind a point or comma are thousands.`;
  const isGrouped = /^\d{1,3}[.,]\d{3}$/.test(digits);
  return read(
    { amount, currency },
    ...(isGrouped ? [{ about: 'separator', taken: String(amount), sentence } as const] : []),
  );
}

/** Cents are two digits behind a point or comma; three are thousands. */
function amountOf(digits: string): number | null {
  const plain = digits.replace(/[' ]/g, '');
  if (/^\d+(?:[.,](?:\d{1,2}|\d{4,}))?$/.test(plain)) return Number(plain.replace(',', '.'));
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d{1,2})?$/.test(plain)) return Number(plain.replace(/,/g, ''));
  if (/^\d{1,3}(?:\.\d{3})+(?:,\d{1,2})?$/.test(plain)) return Number(plain.replace(/\./g, '').replace(',', '.'));
  return null;
}

/** Names with a semicolon between them; a list in JSON where a name has one itself. */
function namesCell(text: string, label: string): PlainReading {
  if (!text.startsWith('[')) return read(text.split(/;\s*/).filter((name) => name !== ''));
  const reading = jsonCell(text, label);
  const isNames =
    reading.kind === 'read' && Array.isArray(reading.value) && reading.value.every((name) => typeof name === 'string');
  return isNames ? reading : refused('not-json', label, text, 'Write the names with semicolons between them.');
}

function jsonCell(text: string, label: string): PlainReading {
  const hint = 'It is written by an export; leave it empty or as it was.';
  try {
    const value = JSON.parse(text) as unknown;
    if (typeof value === 'object' && value !== null) return read(value as Plain);
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
  }
  return refused('not-json', label, text, hint);
}
