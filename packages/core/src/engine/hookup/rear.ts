import { absolute, exactly, greater, hypotenuse, negate, subtract } from '../geometry/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import { atLeastZero, playWithin, type NamedCheck } from '../findings/index.ts';
import { betweenCentres, pastHook, type Joint } from '../joint/index.ts';
import { limits } from './limits.ts';
import { roomCheck, type Turns } from './room.ts';

/** The checks where a coupler's hooks, claws, bar or frame meet the implement. */
export function rearChecks(joint: Joint, turns: Turns | null): NamedCheck[] {
  const { rear, coupler, implement } = joint;
  return [
    playWithin('rear.lowerPin', limits.lowerPlay, coupler('hookSeat'), rear.lowerOver),
    playWithin('rear.bushingBore', limits.bushingPlay, rear.bushingInside, rear.lower),
    atLeastZero('rear.bushingLength', 1, (at) =>
      subtract(subtract(rear.toHole(at), rear.washer(at)), rear.bushingLength(at)),
    ),
    atLeastZero('rear.shoulders', 5, (at) => shouldersInside(joint, at)),
    atLeastZero(
      'rear.pinSeat',
      5,
      pinsPast(joint, joint.setup.implement.lowerPinPlates === 'double' ? implement('doublePlateGap') : rear.standOut),
    ),
    atLeastZero('rear.retention', 5, joint.hold === 'clawEnds' ? clawRetention(joint) : hookRetention(joint)),
    playWithin('rear.upperPin', limits.topHookPlay, coupler('topHookThroat'), rear.upperOver),
    playWithin('rear.upperBushing', limits.bushingPlay, rear.upperBushingInside, rear.upper),
    clevisCheck(joint),
    mastCheck(joint),
    roomCheck(joint, turns),
    twoSided('rear.claw', limits.clawPlay, 1, (at) =>
      subtract(implement('pinBallDiameter')(at), coupler('clawSize')(at)),
    ),
    playWithin('rear.ballOnPin', limits.lowerPlay, implement('pinBallBore'), rear.lower),
    {
      ...twoSided('rear.receiverAngle', limits.receiverAngle, 1, (at) =>
        subtract(implement('receiverAngle')(at), coupler('frameAngle')(at)),
      ),
      unit: 'deg',
    },
    playWithin('rear.receiverWidth', limits.receiverPlay, implement('receiverWidth'), coupler('frameWidth')),
    playWithin('rear.jaw', limits.jawPlay, implement('jawOpening'), coupler('barDiameter')),
    atLeastZero('rear.jawSpan', 5, (at) => subtract(coupler('barLength')(at), implement('jawSpan')(at))),
  ];
}

function twoSided(id: NamedCheck['id'], most: number, scale: number, difference: Term): NamedCheck {
  return {
    id,
    unit: 'mm',
    scale,
    measure: (at) => ({ quantity: difference(at), low: exactly(-most), high: exactly(most) }),
  };
}

/** Centres of the hooks: fixed on a frame, set with the links' spread where the hooks sit on the link ends. */
function hookCentres(joint: Joint): Term {
  return joint.hold === 'hookEnds'
    ? betweenCentres(joint)(joint.ledger.adjuster('tractor.ballSpan').setting)
    : joint.coupler('hookSpan');
}

/** Inner float H − w − S ≥ 0 (S − H − w where the pins point inward). */
function shouldersInside(joint: Joint, at: Reading) {
  const shoulders = joint.rear.shoulders(joint.tractor('lowerBallWidth'))(at);
  const sign = joint.rear.sign(at);
  const gap = subtract(hookCentres(joint)(at), shoulders);
  return subtract(sign === 1 ? gap : negate(gap), joint.coupler('hookWidth')(at));
}

function pinsPast(joint: Joint, reach: Term): Term {
  const { rear, coupler, tractor } = joint;
  const shoulders = rear.shoulders(tractor('lowerBallWidth'));
  const centres = hookCentres(joint);
  return (at) => pastHook(shoulders(at), reach(at), centres(at), coupler('hookWidth')(at), rear.sign(at));
}

/** S + 2s − (H + w) − 2·washer ≥ 0: the retaining hole lies outside hook and washer. */
function hookRetention(joint: Joint): Term {
  const { rear } = joint;
  return pinsPast(joint, (at) => subtract(rear.toHole(at), rear.washer(at)));
}

function clawRetention({ rear, implement }: Joint): Term {
  return (at) => subtract(subtract(rear.toHole(at), implement('pinBallWidth')(at)), rear.washer(at));
}

/** A hook goes between the mast plates; one with two cheeks goes outside them. */
function clevisCheck({ ledger, rear, coupler }: Joint): NamedCheck {
  return ledger.given('coupler.topHookCheekGap')
    ? atLeastZero('rear.clevis', 2, (at) => subtract(coupler('topHookCheekGap')(at), rear.clevisOuter(at)))
    : atLeastZero('rear.clevis', 2, (at) => subtract(rear.clevisGap(at), coupler('topHookThickness')(at)));
}

/** √(e² + h²) − √(e2² + h2²) within the hook's play: positive where the upper pin is too high. */
function mastCheck({ ledger, rear, coupler }: Joint): NamedCheck {
  const stated = ledger.given('coupler.topHookPlay');
  const play: Term = stated
    ? coupler('topHookPlay')
    : (at) => greater(exactly(0), subtract(coupler('topHookThroat')(at), rear.upperOver(at)));
  return {
    id: 'rear.mast',
    unit: 'mm',
    scale: 3,
    measure: (at) => {
      const implement = hypotenuse(rear.mastSetback(at), rear.mastHeight(at));
      const hook = hypotenuse(coupler('topHookBehind')(at), coupler('topHookHeight')(at));
      const most = absolute(play(at));
      return { quantity: subtract(implement, hook), low: negate(most), high: most };
    },
  };
}
