import { add, subtract } from '../geometry/index.ts';
import type { Term } from '../proof/index.ts';
import type { Joint } from './joint.ts';
import { ballCentres } from './pins.ts';

/** Ball centres wanted: the balls against the shoulders; on claws, the balls are the implement's own [mm]. */
function wantedCentres(joint: Joint): Term {
  return ballCentres(
    joint.frontLower,
    joint.hold === 'clawEnds' ? joint.implement('pinBallWidth') : joint.tractor('lowerBallWidth'),
  );
}

/** Turns a reading of the links' spread into ball centres, by the points it was taken between [mm]. */
export function betweenCentres(joint: Joint): (spread: Term) => Term {
  const width = joint.tractor('lowerBallWidth');
  const from = joint.ledger.value('tractor.ballSpan')?.provenance.from;
  if (from === 'innerFaces') return (spread) => (at) => add(spread(at), width(at));
  if (from === 'outerFaces') return (spread) => (at) => subtract(spread(at), width(at));
  return (spread) => spread;
}

/** Where the ball centres stand: set to suit under hook ends, else where the pins want them [mm]. */
export function centresInUse(joint: Joint): Term {
  if (joint.hold !== 'hookEnds') return wantedCentres(joint);
  return betweenCentres(joint)(joint.ledger.adjuster('tractor.ballSpan').setting);
}
