import type { Target } from '@hitchwright/core/exchange';
import { partSizesOf, type FieldRule } from '@hitchwright/core/records';
import { couplerKinds } from '@hitchwright/core/tables';
import { groupsOf } from '../dimensions/groups.ts';
import { fieldName, ruleOfField } from '../history/valueWords.ts';
import { partKinds, weightKinds } from '../records/kinds.ts';

/** What a column may be about: something of the row as a whole, or a field. */
export interface SubjectGroup {
  readonly title: string;
  readonly subjects: readonly (readonly [value: string, words: string])[];
}

/** What stands in a column of its own beside a figure, or beside every figure of the row. */
const companions = [
  ['who', 'who read it'],
  ['when', 'when it was read'],
  ['method', 'how it was read'],
  ['tool', 'what it was read with'],
  ['source', 'where it comes from'],
  ['note', 'a note on it'],
  ['grade', 'how well it is founded'],
  ['unit', 'its unit'],
  ['from', 'its reference points'],
] as const;

const figureParts = [
  ['field', 'the figure'],
  ['low', 'its smallest'],
  ['high', 'its largest'],
  ['plusMinus', 'its tolerance, ±'],
  ...companions,
  ['default', 'what it is where nothing is set'],
] as const;

type Companion = Exclude<(typeof figureParts)[number][0], 'field' | 'low' | 'high'>;

/** What a column of the row as a whole may hold. */
const rowSubjects: readonly (readonly [string, string])[] = [
  ['ignore', 'nothing: leave it out'],
  ['extra', 'kept as it stands, under its heading'],
  ['name', 'the name'],
  ['id', 'the stock number'],
  ['recordKind', 'what kind of record the row is'],
  ['row', 'something of every figure of the row'],
];

/** What is written on records of a kind beside what is measured or chosen. */
const written: Readonly<Record<string, readonly string[]>> = {
  shaft: ['fits'],
  weight: ['kind', 'count', 'fits'],
  part: ['kind', 'fits'],
  customer: ['contact.phone', 'contact.email', 'contact.address'],
};

/** What a column of a sheet of this kind may be about, by topic. */
export function subjectsFor(kind: string): readonly SubjectGroup[] {
  const more = [...(written[kind] ?? []), ...(kind === 'customer' ? [] : ['price']), 'note'];
  return [
    { title: 'Of the row', subjects: rowSubjects },
    ...topicsOf(kind).map(({ title, fields }) => ({ title, subjects: fields.map((field) => subject(kind, field)) })),
    { title: 'More', subjects: more.map((field) => subject(kind, field)) },
  ];
}

function subject(kind: string, field: string): readonly [string, string] {
  return [`field ${field}`, fieldName(kind, field)];
}

interface Topic {
  readonly title: string;
  readonly fields: readonly string[];
}

function topicsOf(kind: string): readonly Topic[] {
  const side = (['tractor', 'coupler', 'implement', 'shaft'] as const).find((one) => one === kind);
  if (side === undefined) return shelfTopics(kind);
  const groups = couplerKinds.flatMap((coupler) => groupsOf(side, coupler));
  const taken = new Set<string>(['name']);
  return groups
    .map(({ title, at, fields }) => ({
      title,
      fields: fields
        .filter((field) => !field.startsWith('rules.'))
        .map((field) => `${at}.${field}`.slice(side.length + 1))
        .filter((field) => !taken.has(field) && taken.add(field).size > 0),
    }))
    .filter(({ fields }) => fields.length > 0);
}

function shelfTopics(kind: string): readonly Topic[] {
  const shelf = kind === 'part' ? partKinds : kind === 'weight' ? weightKinds : [];
  const fields = [...new Set(shelf.flatMap(([one]) => Object.keys(partSizesOf(one))))];
  return fields.length === 0 ? [] : [{ title: 'Figures', fields }];
}

/** What a target is about, and which part of it. */
export function partsOfTarget(target: Target): { readonly subject: string; readonly part: string } {
  if (!('field' in target)) return { subject: target.role, part: '' };
  return { subject: target.field === null ? 'row' : `field ${target.field}`, part: target.role };
}

/** The target for what was chosen. */
export function targetFor(subjectChosen: string, part: string): Target {
  if (subjectChosen === 'row') return { role: companionOf(part) ?? 'who', field: null };
  if (subjectChosen.startsWith('field ')) {
    const field = subjectChosen.slice('field '.length);
    const companion = companionOf(part);
    if (companion !== null) return { role: companion, field };
    return { role: part === 'low' || part === 'high' ? part : 'field', field };
  }
  return { role: subjectChosen as 'ignore' | 'id' | 'name' | 'recordKind' | 'extra' };
}

function companionOf(part: string): Companion | null {
  const known = figureParts.find(([role]) => role === part)?.[0];
  return known === undefined || known === 'field' || known === 'low' || known === 'high' ? null : known;
}

/** Which parts of a subject a column may hold. */
export function partsFor(kind: string, subjectChosen: string): readonly (readonly [string, string])[] {
  if (subjectChosen === 'row') return companions;
  return ruleOfSubject(kind, subjectChosen) === undefined ? [] : figureParts;
}

/** The rule of a subject that is a figure. */
export function ruleOfSubject(kind: string, subjectChosen: string): FieldRule | undefined {
  return subjectChosen.startsWith('field ') ? ruleOfField(kind, subjectChosen.slice('field '.length)) : undefined;
}

/** What a column is taken for, in words. */
export function targetWords(kind: string, target: Target): string {
  if (!('field' in target)) return rowSubjects.find(([role]) => role === target.role)?.[1] ?? target.role;
  const part = figureParts.find(([role]) => role === target.role)?.[1] ?? target.role;
  if (target.field === null) return `${part}, for every figure of the row`;
  const name = fieldName(kind, target.field);
  return target.role === 'field' ? name : `${name}: ${part}`;
}

const unitsOf: Readonly<Record<FieldRule['dimension'], readonly (readonly [string, string])[]>> = {
  length: [
    ['in', 'inches'],
    ['mm', 'millimetres'],
    ['cm', 'centimetres'],
    ['ft', 'feet'],
    ['m', 'metres'],
  ],
  mass: [
    ['lb', 'pounds'],
    ['kg', 'kilograms'],
  ],
  force: [
    ['lbf', 'pounds of force'],
    ['N', 'newtons'],
  ],
  power: [
    ['hp', 'horsepower'],
    ['kW', 'kilowatts'],
  ],
  torque: [
    ['lb·ft', 'pound-feet'],
    ['N·m', 'newton metres'],
  ],
  speed: [
    ['mph', 'miles per hour'],
    ['km/h', 'kilometres per hour'],
  ],
  rotation: [['rpm', 'turns per minute']],
  flow: [
    ['gpm', 'gallons per minute'],
    ['L/min', 'litres per minute'],
  ],
  pressure: [
    ['psi', 'psi'],
    ['bar', 'bar'],
  ],
  angle: [['deg', 'degrees']],
};

const currencies = ['USD', 'CAD', 'EUR', 'GBP', 'AUD', 'NZD', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'ZAR'];

/** Units that figures of a column without one may be in; currencies for a price. */
export function unitsFor(kind: string, subjectChosen: string): readonly (readonly [string, string])[] {
  if (subjectChosen === 'field price') return currencies.map((code) => [code, code]);
  const rule = ruleOfSubject(kind, subjectChosen);
  return rule === undefined ? [] : unitsOf[rule.dimension];
}

/** `inches` for `in`. */
export function unitWord(unit: string): string {
  return (
    Object.values(unitsOf)
      .flat()
      .find(([code]) => code === unit)?.[1] ?? unit
  );
}
