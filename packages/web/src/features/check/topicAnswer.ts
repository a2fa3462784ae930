import type { Answer } from '@hitchwright/core/assess';
import { printMarginSize, type UnitSystem } from '@hitchwright/core/units';
import { shortOf, topicLine, type topicWords } from '@hitchwright/core/words';

/** What stands under one of the four answers: what the lift has to spare or is short of, else the plain word. */
export function topicAnswer(answer: Answer, topic: keyof typeof topicWords, system: UnitSystem): string {
  const plain = topicLine(answer, topic);
  if (topic !== 'lifts') return plain;
  if (answer.outcomes.lifts === 'works') return spareOf(answer, system) ?? plain;
  const failing = answer.findings.find(({ id, status }) => id.startsWith('lift.') && status === 'fail');
  return failing === undefined ? plain : `${plain}: ${shortOf(failing, system)}`;
}

/** `919 lb (417 kg) to spare`, at worst; null where no force was compared. */
function spareOf({ findings }: Answer, system: UnitSystem): string | null {
  const low = findings.find(({ id, status }) => id === 'lift.force' && status === 'pass')?.margin?.low ?? null;
  return low === null || low < 0 ? null : `${printMarginSize(low, 'mass', system)} to spare`;
}
