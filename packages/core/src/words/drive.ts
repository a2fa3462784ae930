import type { Answer, Outcome } from '../engine/assess/index.ts';
import { topicOf, type Finding } from '../engine/findings/index.ts';
import { printMarginSize, type UnitSystem } from '../units/index.ts';
import { shortOf } from './findings.ts';

/** What a drive is told from. */
export type Driven = Pick<Answer, 'findings' | 'outcomes'>;

/** What is asked where nobody said whether there is a drive. */
export const sayWhether = 'say whether a shaft drives it';

/**
 * Does the answer wait for somebody to say whether a shaft drives the implement?
 *
 * @param answer the answer, or its findings [record]
 * @returns true where that is asked [flag]
 */
export function asksWhetherDriven({ findings }: Pick<Answer, 'findings'>): boolean {
  return findings.some(({ asks }) => asks.some(({ path }) => path === 'implement.driven'));
}

/** What a drive shaft comes to for one implement, by how the drive stands. */
export const serveWords: Readonly<Record<Outcome, string>> = {
  works: 'serves',
  withParts: 'serves with parts',
  measureFirst: 'measure first',
  willNot: 'does not serve',
  notChecked: 'not checked',
  notNeeded: 'needs no drive',
};

/**
 * The finding that gives the drive its reason: the first that fails, else the first that is open, else the first that is cured.
 *
 * @param answer the answer [record]
 * @returns the finding, or null where nothing stands against the drive [finding]
 */
export function driveLead({ findings }: Pick<Answer, 'findings'>): Finding | null {
  const core = findings.filter(({ id, core }) => core && topicOf(id) === 'runs');
  const first = (status: Finding['status']): Finding | undefined => core.find((finding) => finding.status === status);
  return first('fail') ?? first('undecided') ?? first('cured') ?? null;
}

/**
 * What the overlap of the drive has to spare at worst: `1 3/16 in (30 mm) of overlap to spare`.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words, or null where the drive does not run as it stands or no overlap was compared [text]
 */
export function driveSpare({ findings, outcomes }: Driven, system: UnitSystem): string | null {
  if (outcomes.runs !== 'works') return null;
  const low = findings.find(({ id, status }) => id === 'shaft.overlap' && status === 'pass')?.margin?.low ?? null;
  return low === null || low < 0 ? null : `${printMarginSize(low, 'length', system)} of overlap to spare`;
}

/**
 * What one shaft comes to for one implement, with the shortest reason: `serves`, `with parts: shaft 3/4 in (19 mm) too long`.
 *
 * @param answer the answer with this shaft in the setup [record]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function serveText(answer: Driven, system: UnitSystem): string {
  const { runs } = answer.outcomes;
  const lead = driveLead(answer);
  if (asksWhetherDriven(answer)) return sayWhether;
  if (lead === null) return serveWords[runs];
  return `${shortly[runs] ?? serveWords[runs]}: ${shortOf(atWorst(lead), system)}`;
}

/** A finding with its miss at the worst only: a cell has no room for a range. */
function atWorst(finding: Finding): Finding {
  const { margin } = finding;
  return margin === null || margin.low === null ? finding : { ...finding, margin: { ...margin, high: margin.low } };
}

/** How the drive stands, before its reason. */
const shortly: Readonly<Partial<Record<Outcome, string>>> = { withParts: 'with parts', willNot: 'no' };
