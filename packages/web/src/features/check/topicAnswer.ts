import type { Answer } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/findings';
import { printMarginSize, type UnitSystem } from '@hitchwright/core/units';
import { driveLead, driveSpare, shortOf, topicLine, type topicWords } from '@hitchwright/core/words';

/** What stands under one of the four answers: what there is to spare or what is wrong, else the plain word. */
export function topicAnswer(answer: Answer, topic: keyof typeof topicWords, system: UnitSystem): string {
  const plain = topicLine(answer, topic);
  if (topic !== 'lifts' && topic !== 'runs') return plain;
  const spare = topic === 'lifts' ? liftSpare(answer, system) : driveSpare(answer, system);
  if (spare !== null) return spare;
  const wrong = topic === 'lifts' ? liftWrong(answer) : driveWrong(answer);
  return wrong === null ? plain : `${plain}: ${shortOf(wrong, system)}`;
}

/** `919 lb (417 kg) to spare`, at worst; null where it does not lift or no force was compared. */
function liftSpare({ findings, outcomes }: Answer, system: UnitSystem): string | null {
  if (outcomes.lifts !== 'works') return null;
  const low = findings.find(({ id, status }) => id === 'lift.force' && status === 'pass')?.margin?.low ?? null;
  return low === null || low < 0 ? null : `${printMarginSize(low, 'mass', system)} to spare`;
}

function liftWrong({ findings }: Answer): Finding | null {
  return findings.find(({ id, status }) => id.startsWith('lift.') && status === 'fail') ?? null;
}

/** What fails, or would without a part; what is merely open is told by the notes. */
function driveWrong(answer: Answer): Finding | null {
  const lead = driveLead(answer);
  return lead === null || lead.status === 'undecided' ? null : lead;
}
