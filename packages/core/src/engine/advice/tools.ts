import { fieldRules, type FieldRule } from '../../records/index.ts';

/** What a figure is read with. */
export type Tool = 'tape' | 'caliper' | 'plumbLine' | 'scale' | 'protractor' | 'papers' | 'word';

/** How a figure is read: with what, how long that takes, and how far the reading may be off either way [min, canonical unit]. */
export interface Reading {
  readonly tool: Tool;
  readonly minutes: number;
  readonly accuracy: number;
}

/** A part of what is read may count as well as a whole: a share of the figure, where that is more. */
interface ToolFacts {
  readonly minutes: number;
  readonly accuracy: number;
  readonly share?: number;
}

/** Time and accuracy by tool: common practice, no source; lengths in mm, masses as a share, angles in degrees. */
const tools: Readonly<Record<Tool, ToolFacts>> = {
  tape: { minutes: 1.5, accuracy: 1.5 },
  caliper: { minutes: 1, accuracy: 0.1 },
  plumbLine: { minutes: 4, accuracy: 4 },
  scale: { minutes: 25, accuracy: 5, share: 0.01 },
  protractor: { minutes: 3, accuracy: 1 },
  papers: { minutes: 3, accuracy: 0, share: 0.02 },
  word: { minutes: 0.5, accuracy: 0 },
};

/** Sizes that a caliper spans and a tape reads too coarsely. */
const caliperFields = /(Diameter|Bore|Inside|Outside|hookSeat|topHookThroat|Thickness|hookWidth|Rod)$/;
const plumbFields = /(BehindAxle|mastSetback|Behind|Ahead|Aside)$/;
/** What nobody measures: it stands on a plate, in a manual or in papers. */
const paperFields =
  /(rated|Rated|Limit|liftAt|Power|powerMost|Pressure|pressure|flow|Flow|cylinder|Wanted|torque|Torque|liftTest|loaderMass|centreHeight|work(Speed|Depth))/;

const byDimension: Readonly<Partial<Record<FieldRule['dimension'], Tool>>> = { mass: 'scale', angle: 'protractor' };

/** The field that a path belongs to: ends and holes of what can be set lie below it. */
function fieldOf(path: string): string {
  return path.split('.adjustable.')[0] ?? path;
}

function toolFor(path: string, rule: FieldRule): Tool {
  const key = path.slice(path.lastIndexOf('.') + 1);
  if (paperFields.test(key)) return 'papers';
  const other = byDimension[rule.dimension];
  if (other !== undefined) return other;
  if (rule.dimension !== 'length') return 'papers';
  if (caliperFields.test(key) && rule.max <= 150) return 'caliper';
  return plumbFields.test(key) ? 'plumbLine' : 'tape';
}

/** How far a tape may be off on what wants a caliper: laid over a round, aslant [mm]. Common practice, no source. */
const tapeOverRound = 3;

/**
 * How a figure is read.
 *
 * @param path field path, with dots [text]
 * @param about the figure, roughly [canonical unit]
 * @param instead another tool that is at hand, where it isn’t the usual one [name]
 * @returns tool, time and accuracy; a word where the path is no quantity [min, canonical unit]
 * @source common practice, no source
 */
export function readingOf(path: string, about: number, instead?: Tool): Reading {
  const field = fieldOf(path);
  const rule = fieldRules.get(field);
  const usual = rule === undefined ? 'word' : toolFor(field, rule);
  const tool = instead ?? usual;
  const { minutes, accuracy, share } = tools[tool];
  const least = usual === 'caliper' && tool === 'tape' ? tapeOverRound : accuracy;
  return { tool, minutes, accuracy: Math.max(least, (share ?? 0) * Math.abs(about)) };
}

/**
 * What a figure can be read with, the usual tool first: where a caliper is wanted a tape can stand in, and the other way round
 * on short lengths; a mass may stand in papers.
 *
 * @param path field path, with dots [text]
 * @returns tools [names]
 */
export function toolsFor(path: string): readonly Tool[] {
  const { tool } = readingOf(path, 0);
  const rule = fieldRules.get(fieldOf(path));
  if (tool === 'caliper') return ['caliper', 'tape'];
  return tool === 'tape' && rule !== undefined && rule.max <= caliperReach ? ['tape', 'caliper'] : [tool];
}

/** Longest that an ordinary caliper spans [mm]. */
const caliperReach = 300;
