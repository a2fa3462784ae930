import {
  add,
  cosine,
  exactly,
  hypotenuse,
  multiply,
  negate,
  scale,
  sine,
  square,
  squareRoot,
  subtract,
  type Interval,
} from '../geometry/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import { atLeastZero, playWithin, type HookupCheck, type Joint } from './joint.ts';
import { limits } from './limits.ts';
import { ballCentres } from './pins.ts';

/** The checks where the tractor's link ends meet a coupler's front, or the implement itself. */
export function frontChecks(joint: Joint): HookupCheck[] {
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
    topLinkCheck(joint),
  ];
}

/** Where the links' balls must stand apart, against how far apart they can be set, stabilisers included. */
function spanCheck(joint: Joint): HookupCheck {
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

/** Where the ball centres stand: set to suit under hook ends, else where the pins want them. */
function centresInUse(joint: Joint): Term {
  if (joint.hold !== 'hookEnds') return wantedCentres(joint);
  return betweenCentres(joint)(joint.ledger.adjuster('tractor.ballSpan').setting);
}

/** Ball centres wanted: the balls against the shoulders; on claws, the balls are the implement's own. */
function wantedCentres(joint: Joint): Term {
  return ballCentres(
    joint.frontLower,
    joint.hold === 'clawEnds' ? joint.implement('pinBallWidth') : joint.tractor('lowerBallWidth'),
  );
}

/** Turns a reading of the links' spread into ball centres, by the points it was taken between. */
export function betweenCentres(joint: Joint): (spread: Term) => Term {
  const width = joint.tractor('lowerBallWidth');
  const from = joint.ledger.value('tractor.ballSpan')?.provenance.from;
  if (from === 'innerFaces') return (spread) => (at) => add(spread(at), width(at));
  if (from === 'outerFaces') return (spread) => (at) => subtract(spread(at), width(at));
  return (spread) => spread;
}

/** Pin to pin along the top link with the lower links level and the implement standing level, against what it reaches. */
function topLinkCheck(joint: Joint): HookupCheck {
  const { lowest, highest } = joint.ledger.adjuster('tractor.topLinkLength');
  return {
    id: 'front.topLink',
    unit: 'mm',
    scale: 10,
    measure: (at) => ({ quantity: topLinkWanted(joint, at), low: lowest(at), high: highest(at) }),
  };
}

function topLinkWanted(joint: Joint, at: Reading): Interval {
  const { tractor } = joint;
  const upper = upperPoint(joint, at);
  const fromPivot = subtract(tractor('lowerLinkPivotBehindAxle')(at), tractor('topLinkPivotBehindAxle')(at));
  const run = add(add(fromPivot, levelReach(joint, at)), upper.x);
  const rise = add(subtract(tractor('lowerLinkPivotHeight')(at), tractor('topLinkPivotHeight')(at)), upper.z);
  return hypotenuse(run, rise);
}

/** Horizontal reach of a level lower link: √(L² − ((ball centres − pivots)/2)²) [mm]. */
function levelReach(joint: Joint, at: Reading): Interval {
  const splay = scale(subtract(centresInUse(joint)(at), joint.tractor('lowerLinkPivotSpan')(at)), 0.5);
  return squareRoot(subtract(square(joint.tractor('lowerLinkLength')(at)), square(splay)));
}

/** The upper point that the top link holds, from the lower-link ball centres, with the implement standing level [mm]. */
function upperPoint(joint: Joint, at: Reading): { x: Interval; z: Interval } {
  const height = joint.frontUpper.mastHeight(at);
  const setback = joint.frontUpper.mastSetback(at);
  if (joint.hold === 'uFrame') return turnedBack(setback, height, negate(joint.turn(at)));
  const [behind, rise] = pinsBehindEnds(joint, at);
  return { x: add(behind, setback), z: add(rise, height) };
}

/** The frame leans by −δ so that the implement in it stands level. */
function turnedBack(x: Interval, z: Interval, lean: Interval): { x: Interval; z: Interval } {
  const c = cosine(lean);
  const s = sine(lean);
  return { x: subtract(multiply(x, c), multiply(z, s)), z: add(multiply(x, s), multiply(z, c)) };
}

/** Where the lower pins sit from the link ends, when hooks or a bar carry them and the top link holds the implement. */
function pinsBehindEnds(joint: Joint, at: Reading): readonly [Interval, Interval] {
  if (joint.hold !== 'hookEnds' && joint.hold !== 'bar') return [exactly(0), exactly(0)];
  return [joint.coupler('hookBehind')(at), joint.coupler('hookRise')(at)];
}
