import { checkIds, type CheckId } from '../findings/index.ts';
import type { Hold } from '../joint/index.ts';

/** The checks at the two joints, where balls, hooks, pins and mast meet. */
export const hookupIds: readonly CheckId[] = checkIds.filter(
  (id) => id === 'mounting' || (/^(front|rear)\./.test(id) && id !== 'front.topLink'),
);

const frontFrame: readonly CheckId[] = [
  'front.lowerPin',
  'front.bushingBore',
  'front.bushingLength',
  'front.span',
  'front.retention',
  'front.upperPin',
  'front.upperBushing',
  'front.clevis',
];
const frontTopLink: readonly CheckId[] = ['front.upperPin', 'front.upperBushing', 'front.clevis'];
const hooks: readonly CheckId[] = [
  'rear.lowerPin',
  'rear.bushingBore',
  'rear.bushingLength',
  'rear.shoulders',
  'rear.pinSeat',
  'rear.retention',
  'rear.room',
];

/** Which checks at the joints apply to which way of holding the implement; every other one is not needed there. */
export const checksByHold: Readonly<Record<Hold, readonly CheckId[]>> = {
  bareBalls: ['mounting', ...frontFrame],
  uFrame: ['mounting', ...frontFrame, ...hooks, 'rear.upperPin', 'rear.upperBushing', 'rear.clevis', 'rear.mast'],
  triangle: ['mounting', ...frontFrame, 'rear.receiver', 'rear.receiverAngle', 'rear.receiverWidth'],
  clawEnds: ['mounting', 'front.span', ...frontTopLink, 'rear.claw', 'rear.ballOnPin', 'rear.retention', 'rear.room'],
  bar: [
    'mounting',
    'front.lowerPin',
    'front.bushingBore',
    'front.bushingLength',
    'front.span',
    'front.retention',
    ...frontTopLink,
    'rear.receiver',
    'rear.jaw',
    'rear.jawSpan',
  ],
  hookEnds: ['mounting', 'front.lowerPin', 'front.retention', 'front.span', ...frontTopLink, ...hooks],
};
