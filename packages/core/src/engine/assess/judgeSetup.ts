import type { Setup } from '../../records/index.ts';
import {
  checkIds,
  judgeLines,
  openQuestion,
  type Depth,
  type Judgement,
  type Line,
  type Question,
  type Reason,
} from '../findings/index.ts';
import { balanceLines, openBalance, type BalanceQuestion } from '../balance/index.ts';
import { hookupLines } from '../hookup/index.ts';
import { openLedger, type Ledger } from '../inputs/index.ts';
import { openJoint, type Joint } from '../joint/index.ts';
import { liftLines, openLift, swingOf, type LiftQuestion } from '../lift/index.ts';
import { workLines } from '../power/index.ts';
import { openShaft, shaftLines, type ShaftQuestion } from '../shaft/index.ts';

/** A setup ready to be judged: its inputs, its joints, its lift, its drive and its axle loads, and every check of them. */
export interface SetupQuestion extends Question {
  readonly ledger: Ledger;
  readonly joint: Joint;
  readonly lift: LiftQuestion;
  readonly shaft: ShaftQuestion;
  readonly balance: BalanceQuestion;
}

/** How much of a setup is judged: everything, or only the checks at the two joints, of the lift, of the drive, or of the axle loads. */
export type Scope = 'everything' | 'joints' | 'lift' | 'drive' | 'balance';

/** A setup judged, with what a drawing or a report needs to read the same numbers again. */
export interface SetupJudgement extends Judgement {
  readonly question: SetupQuestion;
}

/**
 * Opens the ledger of a setup and finds what each check reads.
 *
 * @param setup a setup that was read [record]
 * @param scope everything, or only the checks at the two joints, of the lift, of the drive, or of the axle loads [name]
 * @returns inputs, checks and what can vary [mm, deg, kg]
 */
export function prepareSetup(setup: Setup, scope: Scope = 'everything'): SetupQuestion {
  const ledger = openLedger(setup);
  const joint = openJoint(setup, ledger);
  const lift = openLift(joint);
  const shaft = openShaft(lift);
  const balance = openBalance(lift);
  const parts: Readonly<Record<Scope, () => Line<Reason>[]>> = {
    joints: () => hookupLines(joint, swingOf(lift)),
    lift: () => liftLines(lift),
    drive: () => shaftLines(shaft),
    balance: () => balanceLines(balance),
    everything: () => [...parts.joints(), ...parts.lift(), ...parts.drive(), ...parts.balance(), ...workLines(joint)],
  };
  const lines = parts[scope]().sort((a, b) => checkIds.indexOf(a.id) - checkIds.indexOf(b.id));
  return { ...openQuestion(ledger, lines), ledger, joint, lift, shaft, balance };
}

/**
 * Judges every check of a setup by proof.
 *
 * @param setup a setup that was read [record]
 * @param depth how much to work out [flags]
 * @returns one finding for each id of `checkIds`, in that order [mm, deg, kg]
 */
export function judgeSetup(setup: Setup, depth: Depth): SetupJudgement {
  const question = prepareSetup(setup);
  return { ...judgeLines(question, depth), question };
}
