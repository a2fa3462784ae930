import { subtract } from '../geometry/index.ts';
import { atLeastZero, playWithin, type NamedCheck } from '../findings/index.ts';
import { betweenCentres, centresInUse, type Joint } from '../joint/index.ts';
import { limits } from './limits.ts';

/** The checks where the tractor's link ends meet a coupler's front, or the implement itself. */
export function frontChecks(joint: Joint): NamedCheck[] {
  const { frontLower: lower, frontUpper: upper, tractor } = joint;
  const width = tractor('lowerBallWidth');
  return [
    playWithin('front.lowerPin', limits.lowerPlay, tractor('lowerBallBore'), lower.lowerOver),
    playWithin('front.bushingBore', limits.bushingPlay, lower.bushingInside, lower.lower),
    atLeastZero('front.bushingLength', 1, (at) =>
      subtract(subtract(lower.toHole(at), lower.washer(at)), lower.bushingLength(at)),
    ),
    spanCheck(joint),
    atLeastZero('front.retention', 1, (at) => subtract(subtract(lower.toHole(at), width(at)), lower.washer(at))),
    playWithin('front.upperPin', limits.upperPlay, tractor('upperBallBore'), upper.upperOver),
    playWithin('front.upperBushing', limits.bushingPlay, upper.upperBushingInside, upper.upper),
    playWithin('front.clevis', limits.clevisPlay, upper.clevisGap, tractor('upperBallWidth')),
  ];
}

/** Where the links' balls must stand apart, against how far apart they can be set, stabilisers included. */
function spanCheck(joint: Joint): NamedCheck {
  const { lowest, highest } = joint.ledger.adjuster('tractor.ballSpan');
  const centred = betweenCentres(joint);
  const wanted = centresInUse(joint);
  return {
    id: 'front.span',
    unit: 'mm',
    scale: 5,
    measure: (at) => ({ quantity: wanted(at), low: centred(lowest)(at), high: centred(highest)(at) }),
  };
}
