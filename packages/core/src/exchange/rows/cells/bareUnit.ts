import type { FieldRule } from '../../../records/index.ts';
import { readQuantity, type Dimension, type UnitSystem } from '../../../units/index.ts';
import { hasFraction, type Figure } from './figure.ts';

/** Units in which figures without one are likely to be, by what they measure; the first holds where there is no other. */
const likelyUnits: Readonly<Record<Dimension, readonly (readonly [unit: string, system: UnitSystem | 'both'])[]>> = {
  length: [
    ['mm', 'metric'],
    ['in', 'us'],
    ['cm', 'metric'],
    ['m', 'metric'],
    ['ft', 'us'],
  ],
  mass: [
    ['kg', 'metric'],
    ['lb', 'us'],
  ],
  force: [
    ['N', 'metric'],
    ['lbf', 'us'],
  ],
  power: [
    ['kW', 'metric'],
    ['hp', 'us'],
  ],
  torque: [
    ['N·m', 'metric'],
    ['lb·ft', 'us'],
  ],
  speed: [
    ['km/h', 'metric'],
    ['mph', 'us'],
  ],
  rotation: [['rpm', 'both']],
  flow: [
    ['L/min', 'metric'],
    ['gpm', 'us'],
  ],
  pressure: [
    ['bar', 'metric'],
    ['psi', 'us'],
  ],
  angle: [['deg', 'both']],
};

/** Feet and metres are for what is longer than a person [mm]. */
const longFrom = 2000;

/** Units that a figure of a field may be in without saying so, in one system or in both. */
export function unitsFor({ dimension, max }: FieldRule, system: UnitSystem | null): readonly string[] {
  const isShort = dimension === 'length' && max < longFrom;
  return likelyUnits[dimension]
    .filter(([unit]) => !isShort || (unit !== 'ft' && unit !== 'm'))
    .filter(([, of]) => system === null || of === 'both' || of === system)
    .map(([unit]) => unit);
}

/** Nobody measures these in fractions. */
const neverInFractions: ReadonlySet<string> = new Set(['mm', 'cm', 'm']);

/** The units among some in which all of the figures lie in the range of their field; units in which they come to the same count once. */
export function fittingUnits(digits: readonly string[], rule: FieldRule, units: readonly string[]): string[] {
  const { dimension, min, max } = rule;
  const seen = new Set<string>();
  const isFraction = digits.some((each) => hasFraction({ digits: each }));
  return units.filter((unit) => {
    if (isFraction && neverInFractions.has(unit)) return false;
    const readings = digits.map((each) =>
      readQuantity(`${each} ${unit}`, { dimension, range: { min, max }, assume: 'metric' }),
    );
    if (!readings.every((reading) => reading.ok)) return false;
    const values = readings.map((reading) => reading.value).join(' ');
    if (seen.has(values)) return false;
    seen.add(values);
    return true;
  });
}

/** Where the unit of a column’s bare figures comes from; `ask` where several are as likely and a person has to say. */
export type UnitFrom = 'heading' | 'person' | 'row' | 'figures' | 'ask';

/** What is known of the unit of figures without one. */
export interface UnitSaid {
  readonly unit: string | null;
  readonly unitFrom: UnitFrom | null;
  /** The system that a person chose for figures without a unit. */
  readonly system: UnitSystem | null;
  /** The unit that most figures of the column are in by the look of them, where nobody has said; a guess against it is none. */
  readonly usual: string | null;
}

/** The unit of bare figures, and whether it was guessed from the figures; or the units that may all be meant. */
export type BareUnit =
  { readonly unit: string; readonly guessed: boolean } | { readonly unit: null; readonly rivals: readonly string[] };

/** Decides the unit of figures that stand without one. What the heading or a person says holds whatever the figures are. */
export function bareUnit(figures: readonly Figure[], rule: FieldRule, said: UnitSaid): BareUnit {
  const [first = 'mm'] = unitsFor(rule, null);
  const isSaid = said.unitFrom === 'heading' || said.unitFrom === 'person' || said.unitFrom === 'row';
  if (said.unit !== null && isSaid) return { unit: said.unit, guessed: false };
  const digits = figures.map((figure) => figure.digits);
  if (said.unit !== null && fittingUnits(digits, rule, [said.unit]).length > 0)
    return { unit: said.unit, guessed: false };
  const likely = fittingUnits(digits, rule, unitsFor(rule, null));
  const [only] = likely;
  if (only !== undefined && likely.length === 1 && figures.some(hasFraction)) return { unit: only, guessed: true };
  if (said.unitFrom === 'ask' && likely.length > 0) return { unit: null, rivals: likely };
  return oneOf(likely, said, first, rule);
}

function oneOf(fitting: readonly string[], said: UnitSaid, first: string, rule: FieldRule): BareUnit {
  const usual = unitsFor(rule, null).length > 1;
  if (fitting.length === 0) return { unit: said.unit ?? unitsFor(rule, said.system)[0] ?? first, guessed: false };
  if (fitting.length === 1) return { unit: fitting[0] as string, guessed: usual };
  const chosen = fitting.filter((unit) => unitsFor(rule, said.system).includes(unit));
  if (said.system !== null && chosen.length === 1) return { unit: chosen[0] as string, guessed: false };
  return { unit: null, rivals: chosen.length === 0 ? fitting : chosen };
}

const unitWords: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
  ft: 'feet',
  kg: 'kilograms',
  lb: 'pounds',
  kW: 'kilowatts',
  hp: 'horsepower',
  deg: 'degrees',
};

/** What a unit is called in a sentence. */
export function unitWord(unit: string): string {
  return (Object.hasOwn(unitWords, unit) ? unitWords[unit] : undefined) ?? unit;
}
