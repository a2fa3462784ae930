import type { CouplerKind } from '../../records/index.ts';

/** How the implement is held: by the bare ends of the tractor's linkage, or by one kind of coupler. */
export type Hold = 'bareBalls' | CouplerKind;

/** Every check of the hook-up by its stable id: `front` meets the tractor's link ends, `rear` the coupler's hooks. */
export const checkIds = [
  'mounting',
  'front.lowerPin',
  'front.bushingBore',
  'front.bushingLength',
  'front.span',
  'front.retention',
  'front.upperPin',
  'front.upperBushing',
  'front.clevis',
  'front.topLink',
  'rear.lowerPin',
  'rear.bushingBore',
  'rear.bushingLength',
  'rear.shoulders',
  'rear.pinSeat',
  'rear.retention',
  'rear.upperPin',
  'rear.upperBushing',
  'rear.clevis',
  'rear.mast',
  'rear.room',
  'rear.claw',
  'rear.ballOnPin',
  'rear.receiver',
  'rear.receiverAngle',
  'rear.receiverWidth',
  'rear.jaw',
  'rear.jawSpan',
  'limit.couplerLoad',
  'limit.pinLoad',
] as const;

/** One of `checkIds`. */
export type CheckId = (typeof checkIds)[number];

const frontFrame: readonly CheckId[] = [
  'front.lowerPin',
  'front.bushingBore',
  'front.bushingLength',
  'front.span',
  'front.retention',
  'front.upperPin',
  'front.upperBushing',
  'front.clevis',
  'front.topLink',
];
const frontTopLink: readonly CheckId[] = ['front.upperPin', 'front.upperBushing', 'front.clevis', 'front.topLink'];
const hooks: readonly CheckId[] = [
  'rear.lowerPin',
  'rear.bushingBore',
  'rear.bushingLength',
  'rear.shoulders',
  'rear.pinSeat',
  'rear.retention',
  'rear.room',
];

/** Which checks apply to which way of holding the implement; every other one is not needed there. */
export const checksByHold: Readonly<Record<Hold, readonly CheckId[]>> = {
  bareBalls: ['mounting', ...frontFrame],
  uFrame: [
    'mounting',
    ...frontFrame,
    ...hooks,
    'rear.upperPin',
    'rear.upperBushing',
    'rear.clevis',
    'rear.mast',
    'limit.couplerLoad',
  ],
  triangle: [
    'mounting',
    ...frontFrame,
    'rear.receiver',
    'rear.receiverAngle',
    'rear.receiverWidth',
    'limit.couplerLoad',
  ],
  clawEnds: [
    'mounting',
    'front.span',
    ...frontTopLink,
    'rear.claw',
    'rear.ballOnPin',
    'rear.retention',
    'rear.room',
    'limit.couplerLoad',
  ],
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
    'limit.couplerLoad',
  ],
  hookEnds: [
    'mounting',
    'front.lowerPin',
    'front.retention',
    'front.span',
    ...frontTopLink,
    ...hooks,
    'limit.couplerLoad',
  ],
};
