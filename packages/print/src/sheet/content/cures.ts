import {
  alternativeText,
  asksOf,
  cureText,
  labelOf,
  openFindings,
  ruledText,
  sentenceCase,
  setPriceText,
  steeredText,
} from '@hitchwright/core/words';
import type { Judged, SheetOptions } from '../options.ts';
import { readingsOf } from './readings.ts';

/** A list of the sheet under its heading. */
export interface ListOf {
  readonly heading: string;
  readonly entries: readonly string[];
  /** Entries to choose from are lettered a, b, c ...; a caution has its sign. */
  readonly mark: 'letters' | 'caution' | null;
}

/** What cures it, what may, other ways, what to measure; lists without an entry are left out. */
export function cureLists({ answer }: Judged, { system }: SheetOptions): ListOf[] {
  const price = setPriceText(answer.cures);
  const searched = answer.everySetTried ? [] : ['Not every combination of what is on the list was tried.'];
  const cures = answer.cures.map((cure) => cureText(cure, system) + (cure.inSmallestSet ? ' Counted on.' : ''));
  return [
    list('What cures it', cures, 'letters'),
    list('About the cures', [...(price === null ? [] : [price]), ...(cures.length === 0 ? [] : searched)]),
    list(
      'May cure it, once more is known',
      (answer.perhaps?.cures ?? []).map((cure) => cureText(cure, system)),
    ),
    list(
      'Other ways',
      answer.alternatives.map((one) => alternativeText(one, system)),
    ),
    // How it is measured stands on the worksheet.
    list(
      'To measure',
      asksOf(openFindings(answer), system).map(({ text }) => text),
    ),
  ].filter(({ entries }) => entries.length > 0);
}

/** What was taken for granted, and the rules that sources disagree on and that were gone by. */
export function basisLists({ answer, setup }: Judged, { system }: SheetOptions): ListOf[] {
  const drive = answer.otherRules.filter(({ chosen }) => chosen).map((ruled) => ruledText(ruled, system));
  const steering = answer.steeringRules.filter(({ chosen }) => chosen).map((steered) => steeredText(steered, system));
  const lift = answer.liftBasis === 'none' ? [] : [allowances[setup.rules?.liftAllowance ?? 'tenPercentOff']];
  const { others } = readingsOf(setup, system);
  return [
    list('Taken for granted', [...assumedTexts(answer), ...othersText(others)]),
    list('Rules gone by', [...drive, ...steering, ...lift]),
  ].filter(({ entries }) => entries.length > 0);
}

/** Figures that rest on the same are told together. */
function assumedTexts({ assumed }: Judged['answer']): string[] {
  const labels = new Map<string, string[]>();
  for (const { path, basis } of assumed)
    if (basis !== null) labels.set(basis, [...(labels.get(basis) ?? []), labelOf(path)]);
  return [...labels].map(([basis, names]) => sentenceCase(`${names.join(', ')}: ${basis}.`));
}

/** Figures without a source are in the setup that the sheet leads to: here they are counted. */
function othersText(others: number): string[] {
  if (others === 0) return [];
  const end = 'in the setup, which does not say who read';
  return others === 1
    ? [`One more figure is taken as it stands ${end} it, how or when.`]
    : [`${others} more figures are taken as they stand ${end} them, how or when.`];
}

const allowances = {
  tenPercentOff: 'Of a lift rating nine tenths are counted on.',
  asRated: 'A lift rating is counted on in full.',
} as const;

function list(heading: string, entries: readonly string[], mark: ListOf['mark'] = null): ListOf {
  return { heading, entries, mark };
}
