import type { Answer } from '../engine/assess/index.ts';
import type { CheckId } from '../engine/findings/index.ts';

/** Which meeting is drawn: of the tractor's link ends with what they hold, or of a coupler with the implement. */
export type Meeting = 'front' | 'rear';

const lowerFront: readonly CheckId[] = [
  'front.lowerPin',
  'front.bushingBore',
  'front.bushingLength',
  'front.span',
  'front.retention',
];

/** The meeting where the lead finding is, else the one at the implement. */
export function meetingOf({ hold, lead }: Answer): Meeting {
  if (hold === 'bareBalls' || hold === 'clawEnds') return 'rear';
  if (lead === null || !lead.id.startsWith('front.')) return 'rear';
  return lowerFront.includes(lead.id) || hold === 'uFrame' || hold === 'triangle' ? 'front' : 'rear';
}
