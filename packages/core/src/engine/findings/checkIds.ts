/**
 * Every check of a setup by its stable id, in the order in which they are told. `front` meets the tractor's link ends,
 * `rear` the coupler's hooks; `pickUp`, `work`, `contact` and `lift` go through the lift; `shaft` is
 * the drive shaft’s; `balance` the axles’; `limit` stands beside the verdict.
 */
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
  'pickUp.height',
  'work.height',
  'work.attitude',
  'contact.tyre',
  'contact.machines',
  'lift.linkage',
  'lift.height',
  'lift.force',
  'shaft.splines',
  'shaft.speed',
  'shaft.direction',
  'shaft.power',
  'shaft.series',
  'shaft.bottoming',
  'shaft.overlap',
  'shaft.apart',
  'shaft.tractorJoint',
  'shaft.implementJoint',
  'shaft.tractorJointRaised',
  'shaft.implementJointRaised',
  'shaft.passage',
  'balance.frontShare',
  'balance.rearShare',
  'limit.shields',
  'limit.limiter',
  'limit.clearance',
  'limit.hooks',
  'limit.couplerLoad',
  'limit.pinLoad',
  'limit.frontOfTotal',
  'limit.frontAxle',
  'limit.rearAxle',
  'limit.totalMass',
  'limit.frontTyres',
  'limit.rearTyres',
  'limit.frontBracket',
  'limit.powerMost',
  'limit.draft',
  'limit.width',
  'limit.remotes',
  'limit.flow',
  'limit.pressure',
] as const;

/** One of `checkIds`. */
export type CheckId = (typeof checkIds)[number];

/** The answers that checks decide. */
export type Topic = 'hooksUp' | 'runs' | 'lifts' | 'staysUpright';

const topics: Readonly<Record<string, Topic>> = { shaft: 'runs', lift: 'lifts', balance: 'staysUpright' };

/**
 * The answer that a check belongs to.
 *
 * @param id the check [id]
 * @returns lifts for what the lift has to do, runs for the drive, stays upright for the axles, else hooksUp [name]
 */
export function topicOf(id: CheckId): Topic {
  return topics[id.slice(0, id.indexOf('.'))] ?? 'hooksUp';
}
