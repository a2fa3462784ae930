import type { ReadOptions, Refused } from './attempt.ts';
import { unitNameIn, type Dimension } from './dimensions.ts';
import { unitNamed, unitNamesOf } from './findUnit.ts';
import { figureIn, type Figure } from './figure.ts';
import type { Unit } from './known.ts';
import { isPrintedTwice, printQuantity } from './print.ts';

const anExample: Readonly<Record<Dimension, string>> = {
  length: 'a length such as 26 7/8 in or 683 mm',
  mass: 'a mass such as 950 lb or 431 kg',
  force: 'a force such as 2500 lbf or 11.1 kN',
  power: 'a power such as 28 hp or 21 kW',
  torque: 'a torque such as 250 lb·ft or 340 N·m',
  speed: 'a speed such as 3 mph or 5 km/h',
  rotation: 'a shaft speed such as 540 rpm',
  flow: 'a flow such as 7.5 gpm or 28 L/min',
  pressure: 'a pressure such as 2500 psi or 172 bar',
  angle: 'an angle such as 12.5°',
};

const pluralOf: Readonly<Record<string, string>> = {
  in: 'inches',
  cm: 'centimetres',
  m: 'metres',
  mm: 'millimetres',
  lb: 'pounds',
  kg: 'kilograms',
  hp: 'horsepower',
  kW: 'kilowatts',
};

/** What would have been accepted: the field's range where it has one, else an example; to who typed in US units in those first. */
export function expectedText({ dimension, range, assume }: ReadOptions): string {
  if (range === undefined) return anExample[dimension];
  const metric = rangeText(range, unitNameIn('metric', dimension));
  const isUs = assume === 'us' && isPrintedTwice(dimension) && isBounded(range);
  return isUs ? `${rangeInUs(range, dimension)} (${metric})` : metric;
}

interface Range {
  readonly min: number;
  readonly max: number;
}

function isBounded({ min, max }: Range): boolean {
  return Number.isFinite(min) && Number.isFinite(max);
}

/** Rounded inward: what is named is taken. */
function rangeInUs({ min, max }: Range, dimension: Dimension): string {
  const limit = (value: number, round: 'up' | 'down'): string =>
    printQuantity(value, dimension, { system: 'us', round });
  return `${limit(min, 'up')} to ${limit(max, 'down')}`;
}

function rangeText({ min, max }: Range, unit: string): string {
  if (min === -Infinity && max === Infinity) return `any number of ${unit}`;
  if (max === Infinity) return `${limitText(min)} ${unit} or more`;
  if (min === -Infinity) return `${limitText(max)} ${unit} or less`;
  return min < 0 ? `${limitText(min)} to ${limitText(max)} ${unit}` : `${limitText(min)}–${limitText(max)} ${unit}`;
}

function limitText(limit: number): string {
  return String(Number(limit.toPrecision(10))).replace('-', '−');
}

/** Whether a value lies in the field's range; a field without one takes all. */
export function isInRange(value: number, { range }: ReadOptions): boolean {
  return range === undefined || (value >= range.min && value <= range.max);
}

/** Asks whether another unit was meant, where the same figure in it would be in range. */
export function outOfRangeHint(figure: Figure, sign: number, read: Unit, options: ReadOptions): string {
  const meant = suspectsOf(options).find(
    (unit) => unit.name !== read.name && isInRange(sign * figureIn(figure, unit), options),
  );
  return meant === undefined
    ? 'Check the figure and its unit.'
    : `Was it typed in ${pluralOf[meant.name] ?? meant.name}?`;
}

/** Nobody who types inches means metres. */
function suspectsOf({ dimension, assume }: ReadOptions): readonly Unit[] {
  const lengths = assume === 'us' ? ['in', 'cm', 'mm'] : ['in', 'cm', 'm', 'mm'];
  const names = dimension === 'length' ? lengths : [unitNameIn('us', dimension), unitNameIn('metric', dimension)];
  return names.map(unitNamed);
}

/** Refuses text that holds no figure, with advice on fractions where one was tried. */
export function refuseFigure(text: string, dimension: Dimension): Refused {
  const hint = /\d.*\/|\/.*\d/.test(text)
    ? 'Write a fraction as 26 7/8: whole number, space, then a fraction below one.'
    : `Write ${anExample[dimension]}.`;
  return { code: 'not-a-quantity', hint };
}

/** Refuses a unit that isn't one of the dimension's. */
export function refuseUnit(written: string, found: Unit | undefined, dimension: Dimension): Refused {
  const names = unitNamesOf(dimension);
  const choice = `${dimension} is read in ${names.slice(0, -1).join(', ')} or ${names.at(-1)}.`;
  const trouble =
    found === undefined ? `${written} isn't a unit known here` : `${found.name} is a unit of ${found.dimension}`;
  return { code: 'wrong-unit', hint: `${trouble}; ${choice}` };
}
