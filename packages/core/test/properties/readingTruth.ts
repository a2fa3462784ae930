import fc from 'fast-check';
import { readingOf, type Tool } from '../../src/engine/advice/index.ts';
import { fieldRules, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import {
  categories,
  classFields,
  classRange,
  linkageClassFields,
  linkageClassRange,
  type Category,
} from '../../src/tables/index.ts';

/** A machine of which everything is known, by field path [canonical unit]. */
export type Truth = ReadonlyMap<string, number>;

/** A share from 0 to 1, and one from −1 to 1. */
export const share = fc.double({ min: 0, max: 1, noNaN: true });
export const eitherWay = fc.double({ min: -1, max: 1, noNaN: true });

export const category = fc.constantFrom(...categories);

/** The range of its class; null where no class says. */
export function classRoom(of: Category, path: string): { low: number; high: number } | null {
  const link = linkageClassFields.find((one) => one === path);
  if (link !== undefined) return linkageClassRange(of, link);
  const named = classFields.find((one) => one === path.replace(/^coupler\.front\./, 'implement.'));
  return named === undefined ? null : classRange(of, named);
}

/** The range that a field of a true machine is drawn from: its class where it has one, else the middle half of what it accepts. */
function roomOf(of: Category, path: string): { low: number; high: number } {
  const rule = fieldRules.get(path);
  if (rule === undefined) throw new Error(path);
  const quarter = (rule.max - rule.min) / 4;
  return classRoom(of, path) ?? { low: rule.min + quarter, high: rule.max - quarter };
}

const paths = [...fieldRules.keys()];

/** A hole through a pin, and what stands beyond it, take at least this much [mm]. */
const holeAndEnd = 12;

/** A true machine of a category: every figure inside its class, and figures that go together. */
export function truthOf(of: Category): fc.Arbitrary<Truth> {
  return fc.array(share, { minLength: paths.length, maxLength: paths.length }).map((shares) => {
    const truth = new Map(
      paths.map((path, i) => {
        const { low, high } = roomOf(of, path);
        return [path, low + (shares[i] as number) * (high - low)] as const;
      }),
    );
    const at = (path: string): number => truth.get(path) as number;
    const within = (path: string, low: number, high: number): void => {
      truth.set(path, low + (shares[paths.indexOf(path)] as number) * (high - low));
    };
    for (const pins of ['implement', 'implement.secondRow', 'coupler.front'])
      truth.set(`${pins}.standOut`, Math.max(at(`${pins}.standOut`), at(`${pins}.shoulderToHole`) + holeAndEnd));
    within('shaft.closedLength', 350, 1400);
    const outside = Math.min(110 + (at('shaft.closedOverlap') % 150), 0.5 * at('shaft.closedLength'));
    truth.set('shaft.closedOverlap', at('shaft.closedLength') - outside);
    within('tractor.frontAxleMass', 0.28 * at('tractor.mass'), 0.57 * at('tractor.mass'));
    return truth;
  });
}

/** What is written of some fields: the truth within a tolerance, or nothing. */
export function documentOf(of: Category, truth: Truth, known: (path: string) => boolean, off = 0): SetupDocument {
  const machine = { category: of };
  const empty = { hitchwright: 1, tractor: machine, implement: machine, coupler: { ...machine, kind: 'uFrame' } };
  const edits = [...truth]
    .filter(([path]) => known(path) && !settable.has(path))
    .map(([path, value]): Edit => ({ path, value: writtenOf(path, value, off) }));
  return withEdits(empty, edits);
}

/** What is always given by the ends that it can be set to. */
const settable = new Set(['tractor.ballSpan', 'tractor.topLinkLength']);

/** A true figure as a careful person has it in the document: read a little off, and said so. */
function writtenOf(path: string, value: number, off: number): unknown {
  const { accuracy } = readingOf(path, value);
  const plusMinus = accuracy === 0 ? 0.001 * Math.abs(value) : accuracy;
  return { between: [value - plusMinus * (1 + off), value + plusMinus * (1 - off)] };
}

/** A true figure as a tool shows it: off by a share of what the tool may be off. */
export function shownBy(path: string, truth: number, off: number, tool?: Tool): number {
  const { accuracy } = readingOf(path, truth, tool);
  const shown = truth + off * accuracy;
  return Math.abs(shown - truth) <= readingOf(path, shown, tool).accuracy ? shown : truth;
}
