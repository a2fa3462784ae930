import type { Answer } from '../engine/assess/index.ts';
import { printBoth, type Rounding, type UnitSystem } from '../units/index.ts';
import { steeringRuleWords } from './rules.ts';

type Balance = NonNullable<Answer['balance']>;

/**
 * What is worth saying of the axle loads beside their findings: where the front axle has least to spare and what it carries
 * there, whether its wheels lift, what front weights it takes, and what a loader needs behind.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @returns sentences, none where the axle loads are not known [texts]
 */
export function balanceRemarks(answer: Answer, system: UnitSystem): string[] {
  const { balance } = answer;
  if (balance === null) return [];
  return [
    worstRemark(balance, system),
    liftsRemark(balance),
    ballastRemark(balance, system),
    listRemark(answer),
    liquidRemark(answer),
    counterweightRemark(balance, system),
  ].filter((remark) => remark !== null);
}

function mass(value: number, system: UnitSystem, round: Rounding): string {
  return printBoth(value, 'mass', { system, round });
}

function length(value: number, system: UnitSystem): string {
  return printBoth(value, 'length', { system });
}

function worstRemark({ worst, rule }: Balance, system: UnitSystem): string {
  const { low } = worst.front;
  const carries = low > 0 ? `at least ${mass(low, system, 'down')} is left on it` : 'nothing may be left on it';
  const base = steeringRuleWords[rule].toLowerCase();
  return `With the balls ${length(worst.ballHeight, system)} above the ground the front axle has least to spare: ${carries}. The rule wants ${mass(worst.wanted, system, 'up')}, ${base}.`;
}

function liftsRemark({ wheelsLift, worst }: Balance): string | null {
  if (wheelsLift) return 'Raised, it takes the front wheels off the ground: it can’t be steered and may rear up.';
  return worst.front.low <= 0 ? 'Raised, it may take the front wheels off the ground.' : null;
}

function ballastRemark({ ballast }: Balance, system: UnitSystem): string {
  if (ballast === null) return 'It needs no front weights.';
  const { enough, ahead } = ballast;
  return `It needs front weights: ${mass(enough, system, 'up')} altogether, hung ${length(ahead, system)} ahead of the front axle, meet the rule.`;
}

/** What a loader needs behind; worked out at the middle of every range. */
function counterweightRemark({ counterweight }: Balance, system: UnitSystem): string | null {
  if (counterweight === null) return null;
  return `With the loader so, about ${mass(counterweight, system, 'up')} more has to hang on the lower links for the rear axle to keep its share.`;
}

type Front = Answer['findings'][number] | undefined;

function frontShareOf({ findings }: Pick<Answer, 'findings'>): Front {
  return findings.find(({ id }) => id === 'balance.frontShare');
}

/** Weights on the list are tried as cures: where none was offered, none will do. */
function listRemark(answer: Answer): string | null {
  const isOffered = answer.cures.some(
    ({ kind, cures }) => kind === 'frontWeights' && cures.includes('balance.frontShare'),
  );
  if (frontShareOf(answer)?.status !== 'fail' || isOffered) return null;
  return 'No front weight on the list can meet it, as many as there are and as the bracket holds.';
}

/** Said where the front axle is short, or may be: it is what people reach for, and it helps the rear axle alone. */
function liquidRemark(answer: Answer): string | null {
  const front = frontShareOf(answer);
  const isShort = front !== undefined && ['fail', 'cured', 'undecided'].includes(front.status);
  return isShort ? 'Liquid in the rear tyres does not load the front axle.' : null;
}
