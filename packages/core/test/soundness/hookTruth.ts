import type { CheckId } from '../../src/engine/findings/index.ts';
import { limits } from '../../src/engine/hookup/index.ts';
import { couplerPins, implementPins, type Sources, type TruePins } from './pinTruth.ts';
import { atLeast, atMost, lazily, less, within, type Figures, type Margin, type TrueFigure } from './truth.ts';

type Made = Readonly<Partial<Record<CheckId, () => Margin>>>;

/**
 * Margins of the checks at the two joints on plain numbers, from docs/method/hookup.md: nothing of the engine but the width
 * of its bands. Room between outlines is told apart.
 */
export function hookMargins(sources: Sources): Made {
  const { question, figures } = sources;
  const { hold } = question.joint;
  const rear = implementPins(sources);
  const front = hold === 'bareBalls' || hold === 'clawEnds' ? rear : couplerPins(sources);
  const upper = hold === 'uFrame' || hold === 'triangle' ? front : rear;
  const later = (path: string): TrueFigure => lazily(() => figures.of(path));
  return {
    ...frontMargins(sources, { front, upper }, later),
    ...rearMargins(sources, rear, later),
  };
}

type Later = Figures['of'];

function frontMargins(sources: Sources, { front, upper }: Record<'front' | 'upper', TruePins>, later: Later): Made {
  const width = later('tractor.lowerBallWidth');
  const spread = spreadOf(sources, later);
  const [narrowest, widest] = [0, 1].map((end) => spread(later(`tractor.ballSpan.adjustable.between.${end}`)));
  const balls = sources.question.joint.hold === 'clawEnds' ? later('implement.pinBallWidth') : width;
  const shoulders = front.shoulders(balls);
  const centres: TrueFigure = (truth) => shoulders(truth) + front.sign(truth) * balls(truth);
  const wanted = sources.question.joint.hold === 'hookEnds' ? spread(later('tractor.ballSpan')) : centres;
  return {
    'front.lowerPin': () => within(0, limits.lowerPlay, less(later('tractor.lowerBallBore'), front.overPin)),
    'front.bushingBore': () => within(0, limits.bushingPlay, less(front.bushingInside, front.pin)),
    'front.bushingLength': () => atLeast(0, less(front.toHole, front.washer, front.bushingLength)),
    'front.span': () => within(narrowest as TrueFigure, widest as TrueFigure, wanted),
    'front.retention': () => atLeast(0, less(front.toHole, width, front.washer)),
    'front.upperPin': () => within(0, limits.upperPlay, less(later('tractor.upperBallBore'), upper.overUpperPin)),
    'front.upperBushing': () => within(0, limits.bushingPlay, less(upper.upperBushingInside, upper.upperPin)),
    'front.clevis': () => within(0, limits.clevisPlay, less(upper.clevisGap, later('tractor.upperBallWidth'))),
  };
}

/** A reading of how far the balls stand apart as the distance of their centres. */
function spreadOf({ question }: Sources, later: Later): (reading: TrueFigure) => TrueFigure {
  const from = question.ledger.value('tractor.ballSpan')?.provenance.from;
  const width = later('tractor.lowerBallWidth');
  if (from === 'innerFaces') return (reading) => (truth) => reading(truth) + width(truth);
  return (reading) => (from === 'outerFaces' ? less(reading, width) : reading);
}

function rearMargins(sources: Sources, rear: TruePins, later: Later): Made {
  const { joint } = sources.question;
  const centres =
    joint.hold === 'hookEnds' ? spreadOf(sources, later)(later('tractor.ballSpan')) : later('coupler.hookSpan');
  const shoulders = rear.shoulders(later('tractor.lowerBallWidth'));
  const hook = later('coupler.hookWidth');
  /** How far the shoulders stand outside of the hooks' centres, the way the pins point. */
  const outside: TrueFigure = (truth) => rear.sign(truth) * (shoulders(truth) - centres(truth));
  const past =
    (reach: TrueFigure): TrueFigure =>
    (truth) =>
      outside(truth) + 2 * reach(truth) - hook(truth);
  const toHole = less(rear.toHole, rear.washer);
  const isDouble = joint.setup.implement.lowerPinPlates === 'double';
  const claw = (key: string): TrueFigure => later(`implement.${key}`);
  return {
    'rear.lowerPin': () => within(0, limits.lowerPlay, less(later('coupler.hookSeat'), rear.overPin)),
    'rear.bushingBore': () => within(0, limits.bushingPlay, less(rear.bushingInside, rear.pin)),
    'rear.bushingLength': () => atLeast(0, less(rear.toHole, rear.washer, rear.bushingLength)),
    'rear.shoulders': () => (truth) => -outside(truth) - hook(truth),
    'rear.pinSeat': () => atLeast(0, past(isDouble ? later('implement.doublePlateGap') : rear.toTip)),
    'rear.retention': () =>
      atLeast(0, joint.hold === 'clawEnds' ? less(rear.toHole, claw('pinBallWidth'), rear.washer) : past(toHole)),
    'rear.upperPin': () => within(0, limits.topHookPlay, less(later('coupler.topHookThroat'), rear.overUpperPin)),
    'rear.upperBushing': () => within(0, limits.bushingPlay, less(rear.upperBushingInside, rear.upperPin)),
    'rear.clevis': () => clevisMargin(sources, rear, later),
    'rear.mast': () => mastMargin(sources, rear, later),
    'rear.claw': () =>
      within(-limits.clawPlay, limits.clawPlay, less(claw('pinBallDiameter'), later('coupler.clawSize'))),
    'rear.ballOnPin': () => within(0, limits.lowerPlay, less(claw('pinBallBore'), rear.pin)),
    'rear.receiverAngle': () =>
      within(-limits.receiverAngle, limits.receiverAngle, less(claw('receiverAngle'), later('coupler.frameAngle'))),
    'rear.receiverWidth': () =>
      within(0, limits.receiverPlay, less(claw('receiverWidth'), later('coupler.frameWidth'))),
    'rear.jaw': () => within(0, limits.jawPlay, less(claw('jawOpening'), later('coupler.barDiameter'))),
    'rear.jawSpan': () => atMost(later('coupler.barLength'), claw('jawSpan')),
  };
}

/** A hook goes between the mast plates; one with two cheeks goes outside them. */
function clevisMargin({ question }: Sources, rear: TruePins, later: Later): Margin {
  return question.ledger.given('coupler.topHookCheekGap')
    ? less(later('coupler.topHookCheekGap'), rear.clevisOuter)
    : less(rear.clevisGap, later('coupler.topHookThickness'));
}

/** How far the upper pin and the top hook are from as far off the lower pins, against the play of the hook. */
function mastMargin({ question }: Sources, rear: TruePins, later: Later): Margin {
  const [height, behind] = [later('coupler.topHookHeight'), later('coupler.topHookBehind')];
  const isSaid = question.ledger.given('coupler.topHookPlay');
  const play: TrueFigure = isSaid
    ? later('coupler.topHookPlay')
    : less(later('coupler.topHookThroat'), rear.overUpperPin);
  return (truth) => {
    const pin = Math.hypot(rear.mastSetback(truth), rear.mastHeight(truth));
    const hook = Math.hypot(behind(truth), height(truth));
    return Math.max(0, play(truth)) - Math.abs(pin - hook);
  };
}
