import type { Dimension } from './dimensions.ts';
import { knownUnits, type Unit } from './known.ts';

const unitOfSpelling: ReadonlyMap<string, Unit> = new Map(
  knownUnits.flatMap((unit) => unit.spellings.map((spelling) => [spelling, unit] as const)),
);

const unitOfName: ReadonlyMap<string, Unit> = new Map(knownUnits.map((unit) => [unit.name, unit]));

/** Upper and lower case are the same here but for the one pair that differs by 10⁹ within a dimension: mPa is not MPa. */
const millipascal = /^mPa/;

function spellingKey(written: string): string {
  return written
    .replace(/\.$/, '')
    .replace(/[ .*⋅•∙×·-]+/g, '·')
    .toLowerCase();
}

/** The unit that a person wrote, e.g. `ft-lb` or `inches`; undefined where no unit is spelled so. */
export function findUnit(written: string): Unit | undefined {
  return millipascal.test(written) ? undefined : unitOfSpelling.get(spellingKey(written));
}

/** The unit with this name; the name is one of ours, so a miss is a broken internal. */
export function unitNamed(name: string): Unit {
  const unit = unitOfName.get(name);
  if (unit === undefined) throw new Error(`No unit is named ${name}`);
  return unit;
}

/** Names of the units in which a dimension is read, in the order of the list. */
export function unitNamesOf(dimension: Dimension): readonly string[] {
  return knownUnits.filter((unit) => unit.dimension === dimension).map((unit) => unit.name);
}
