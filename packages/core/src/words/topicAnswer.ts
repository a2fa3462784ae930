import type { Answer } from '../engine/assess/index.ts';
import type { Finding } from '../engine/findings/index.ts';
import { printMarginSize, type UnitSystem } from '../units/index.ts';
import { topicLine, type topicWords } from './answer.ts';
import { driveLead, driveSpare } from './drive.ts';
import { shortOf } from './findings.ts';

type Topic = keyof typeof topicWords;

/** What an answer has to spare where it is yes, and what is wrong where it is not; null where there is nothing to add. */
interface Telling {
  readonly spare: (answer: Answer, system: UnitSystem) => string | null;
  readonly wrong: (answer: Answer) => Finding | null;
}

const tellings: Readonly<Record<Topic, Telling | null>> = {
  hooksUp: null,
  runs: { spare: driveSpare, wrong: driveWrong },
  lifts: { spare: liftSpare, wrong: ({ findings }) => failing(findings, 'lift.') },
  staysUpright: { spare: frontSpare, wrong: ({ findings }) => failing(findings, 'balance.') },
};

/**
 * What stands under one of the four answers: what there is to spare or what is wrong, else the plain word.
 *
 * @param answer the answer [record]
 * @param topic which of the four [name]
 * @param system unit system to write in [us | metric]
 * @returns a few words [text]
 */
export function topicAnswer(answer: Answer, topic: Topic, system: UnitSystem): string {
  const plain = topicLine(answer, topic);
  const telling = tellings[topic];
  const spare = telling?.spare(answer, system) ?? null;
  if (spare !== null) return spare;
  const wrong = telling?.wrong(answer) ?? null;
  return wrong === null ? plain : `${plain}: ${shortOf(wrong, system)}`;
}

/** `919 lb (417 kg) to spare`, at worst; null where it does not lift or no force was compared. */
function liftSpare({ findings, outcomes }: Answer, system: UnitSystem): string | null {
  return outcomes.lifts === 'works' ? massToSpare(findings, 'lift.force', system) : null;
}

/** `184 lb (83 kg) to spare in front`, at worst; null where the front axle is short or not known. */
function frontSpare({ findings, outcomes }: Answer, system: UnitSystem): string | null {
  const spare = outcomes.staysUpright === 'works' ? massToSpare(findings, 'balance.frontShare', system) : null;
  return spare === null ? null : `${spare} in front`;
}

function massToSpare(findings: Answer['findings'], which: Finding['id'], system: UnitSystem): string | null {
  const low = findings.find(({ id, status }) => id === which && status === 'pass')?.margin?.low ?? null;
  return low === null || low < 0 ? null : `${printMarginSize(low, 'mass', system)} to spare`;
}

/** What fails, or would without a part. */
function failing(findings: Answer['findings'], beginning: string): Finding | null {
  return findings.find(({ id, status }) => id.startsWith(beginning) && ['fail', 'cured'].includes(status)) ?? null;
}

/** What fails, or would without a part; what is merely open is told by the notes. */
function driveWrong(answer: Answer): Finding | null {
  const lead = driveLead(answer);
  return lead === null || lead.status === 'undecided' ? null : lead;
}
