import type { FieldRule } from '../../../records/index.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { catalogues } from '../catalogue/catalogue.ts';
import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import { pointText } from '../headings/points.ts';
import { nameOfKind, rowKinds } from '../kinds.ts';
import type { ProposedReading, ProposedRecord } from '../reading/record.ts';
import { leafText } from './leafText.ts';
import { plainValueText } from './plainText.ts';

/** What can stand beside a figure, in the order of its columns, with what the columns are headed. */
const besideHeadings = [
  ['from', 'measured between'],
  ['method', 'method'],
  ['tool', 'tool'],
  ['who', 'who'],
  ['when', 'when'],
  ['source', 'source'],
  ['note', 'note'],
  ['default', 'usual by'],
  ['grade', 'grade'],
] as const;

/** A column to be written: its heading, and what a record says in it. */
interface Written {
  readonly heading: string;
  readonly text: (record: ProposedRecord) => string;
}

/**
 * Records as a table with headings, to be written as CSV or XLSX: one column for each field that any of them has, in a cell of text that
 * `guessMapping` and `readRows` read back to the same record. What stands beside a figure has columns of its own; what is not known stays empty.
 *
 * @param records records, of one kind or of several [list]
 * @param options `units`: whose units figures without one are in; US where it is left out, as in a setup [record]
 * @returns headings and rows [rows of cells]
 */
export function tableOf(records: readonly ProposedRecord[], options: { readonly units?: UnitSystem } = {}): string[][] {
  const units = options.units ?? 'us';
  const hasIds = records.some(({ id }) => id !== null);
  const columns: Written[] = [
    { heading: 'record', text: ({ kind }) => nameOfKind(kind) },
    ...(hasIds ? [{ heading: 'id', text: ({ id }: ProposedRecord) => id ?? '' }] : []),
    { heading: 'name', text: ({ name }) => name },
    ...fieldsIn(records).flatMap((field) => fieldColumns(field, records, units)),
    ...extraColumns(records),
  ];
  return [columns.map(({ heading }) => heading), ...records.map((record) => columns.map(({ text }) => text(record)))];
}

type Extra = readonly { readonly label: string; readonly text: string }[];

function extraColumns(records: readonly ProposedRecord[]): Written[] {
  const extraOf = ({ fields }: ProposedRecord): Extra => (fields['extra'] ?? []) as Extra;
  const labels = [...new Set(records.flatMap((record) => extraOf(record).map(({ label }) => label)))];
  return labels.map((label) => ({
    heading: `extra: ${label}`,
    text: (record) => extraOf(record).find((each) => each.label === label)?.text ?? '',
  }));
}

interface UsedField {
  readonly path: string;
  readonly spec: FieldSpec;
}

/** The fields that any record has, in the order of their kinds’ catalogues; a field that two kinds call the same has one column. */
function fieldsIn(records: readonly ProposedRecord[]): UsedField[] {
  const used = new Map<string, UsedField>();
  for (const kind of rowKinds) {
    const paths = new Set(
      records
        .filter((record) => record.kind === kind)
        .flatMap(({ fields, readings }) => [...Object.keys(fields), ...Object.keys(readings)]),
    );
    for (const [path, spec] of catalogues[kind]) {
      const key = `${path} ${spec.label}`;
      if (paths.has(path) && !used.has(key)) used.set(key, { path, spec });
    }
  }
  return [...used.values()];
}

function fieldColumns({ path, spec }: UsedField, records: readonly ProposedRecord[], units: UnitSystem): Written[] {
  const isMine = ({ kind }: ProposedRecord): boolean => catalogues[kind].get(path)?.label === spec.label;
  if (spec.form !== 'quantity') {
    const text = (record: ProposedRecord): string => {
      const value = isMine(record) ? record.fields[path] : undefined;
      return value === undefined ? '' : plainValueText(value, spec);
    };
    return [{ heading: spec.label, text }];
  }
  const readingOf = (record: ProposedRecord): ProposedReading | undefined =>
    isMine(record) ? record.readings[path] : undefined;
  const figure: Written = {
    heading: headingOf(spec.rule, spec.label),
    text: (record) => {
      const reading = readingOf(record);
      return reading === undefined ? '' : leafText(reading.leaf, spec.rule, units);
    },
  };
  const beside = besideHeadings
    .map(([role, heading]): Written => ({
      heading: `${spec.label}: ${heading}`,
      text: (record) => besideText(readingOf(record), role),
    }))
    .filter(({ text }) => records.some((record) => text(record) !== ''));
  return [figure, ...beside];
}

/** The heading names the points that figures are taken between where a field knows several: a sheet has to say it. */
function headingOf({ from }: FieldRule, label: string): string {
  const [own] = from ?? [];
  return own === undefined ? label : `${label} (${pointText(own)})`;
}

function besideText(reading: ProposedReading | undefined, role: (typeof besideHeadings)[number][0]): string {
  if (reading === undefined) return '';
  if (role === 'grade') return reading.grade === gradeWithoutSaying(reading.leaf) ? '' : reading.grade;
  const text = (reading.leaf as Readonly<Record<string, unknown>> | null)?.[role];
  if (typeof text !== 'string') return '';
  return role === 'from' ? pointText(text) : text;
}

/** The grade that reading gives where no column says one. */
function gradeWithoutSaying(leaf: unknown): ProposedReading['grade'] {
  const form = (leaf ?? {}) as Readonly<Record<string, unknown>>;
  return ['method', 'tool', 'who'].some((key) => form[key] !== undefined) ? 'measured' : 'listed';
}
