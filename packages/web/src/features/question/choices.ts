import type { SetupDocument } from '@hitchwright/core/records';
import { categories } from '@hitchwright/core/tables';
import { nameOf, recordsOf, type Machine } from '../yard/sampleYard.ts';

/** One line of the search panel. */
export interface Choice {
  readonly id: string;
  readonly name: string;
  /** What stands beside the name. */
  readonly note: string;
  readonly record: SetupDocument | null;
  /** Where it has to be fetched first. */
  readonly fetched?: () => Promise<Picked>;
  /** True where the dimensions are to be typed next. */
  readonly typed?: boolean;
}

/** What was fetched: the record as a setup has it, its id, and what lies on the shelf for it. */
export interface Picked {
  readonly id: string;
  /** A state that is laid over the tractor. */
  readonly state?: string;
  readonly record: SetupDocument;
  readonly beside: { readonly parts?: unknown; readonly shaft?: unknown };
}

/** Choices under one heading. */
export interface ChoiceGroup {
  readonly heading: string;
  readonly choices: readonly Choice[];
}

/** Where nothing else can be answered. */
export type OnlyFrom = 'samples' | 'records';

/** What the panel lists for a machine when this has been typed. */
export function choicesFor(
  machine: Machine,
  typed: string,
  only: OnlyFrom | null,
  ofYard: ChoiceGroup | null,
): ChoiceGroup[] {
  const words = typed
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);
  const matches = ({ name, note }: Choice): boolean =>
    words.every((word) => `${name} ${note}`.toLowerCase().includes(word));
  const yard: ChoiceGroup = { heading: 'Sample yard, invented', choices: samples(machine).filter(matches) };
  if (only !== null) return only === 'samples' ? [yard] : ofYard === null ? [] : [ofYard];
  const groups: ChoiceGroup[] = [
    ...(machine === 'coupler' ? [{ heading: 'Nothing between', choices: [withoutCoupler].filter(matches) }] : []),
    ...(ofYard === null ? [] : [ofYard]),
    yard,
    { heading: 'Known only by its category', choices: byCategory(machine, typed) },
    { heading: 'With a tape in your hand', choices: [byTape(machine, typed)] },
  ];
  return groups.filter(({ heading, choices }) => choices.length > 0 || heading === ofYard?.heading);
}

const withoutCoupler: Choice = { id: 'none', name: 'No coupler', note: 'straight on the lower links', record: null };

function samples(machine: Machine): Choice[] {
  return recordsOf(machine).map((record, i) => ({
    id: `sample-${i}`,
    name: nameOf(record, `${machine} ${i + 1}`),
    note: 'sample',
    record,
  }));
}

/** `2 40 hp` or `cat 1` narrows to a category; a power goes into the tractor's record. */
function byCategory(machine: Machine, typed: string): Choice[] {
  const power = machine === 'tractor' ? (/(\d+(?:\.\d+)?)\s*(hp|kw)\b/i.exec(typed)?.[0] ?? null) : null;
  const rest = typed.replace(power ?? '', ' ').toLowerCase();
  const words = rest.split(/[\s,]+/).filter(Boolean);
  const said = categories.filter((category) => words.includes(category.toLowerCase()));
  return (said.length > 0 ? said : categories)
    .map((category) => {
      const name = `Category ${category} ${machine === 'coupler' ? 'frame coupler' : machine}`;
      const kind = machine === 'coupler' ? { kind: 'uFrame' } : {};
      const enginePower = power === null ? {} : { enginePower: power };
      const note = power ?? 'nothing measured yet';
      return { id: `category-${category}`, name, note, record: { ...kind, category, ...enginePower } };
    })
    .filter(({ name }) => words.every((word) => name.toLowerCase().includes(word)));
}

function byTape(machine: Machine, typed: string): Choice {
  const name = typed.trim().slice(0, 200);
  const kind = machine === 'coupler' ? { kind: 'uFrame' } : {};
  return {
    id: 'typed',
    name: name === '' ? 'Type its dimensions' : `“${name}”: type its dimensions`,
    note: 'every figure is optional',
    record: { ...(name === '' ? {} : { name }), ...kind },
    typed: true,
  };
}
