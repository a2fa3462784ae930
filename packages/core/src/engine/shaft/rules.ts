import { driveRules, type DriveRuleName } from '../../tables/index.ts';
import type { Line, Reason } from '../findings/index.ts';
import { ruledLines } from './lines.ts';
import { isPlaced, type ShaftQuestion } from './question.ts';

/**
 * The checks that a rule set decides, under another set than the chosen one.
 *
 * @param question the drive of a setup [question]
 * @param rules the other set [name]
 * @returns their lines; none where nothing is driven or its ends are not placed [lines]
 */
export function linesUnder(question: ShaftQuestion, rules: DriveRuleName): Line<Reason>[] {
  if (!isPlaced(question)) return [];
  return ruledLines({ ...question, rules: driveRules(rules) });
}
