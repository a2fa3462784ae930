import type { PinSet, Setup } from '../../records/index.ts';
import { add, hull, scale, subtract, type Interval } from '../geometry/index.ts';
import type { Ledger } from '../inputs/index.ts';
import type { Reading, Term } from '../proof/index.ts';

/** The pins that meet a ball or hook: an implement's (whichever row is taken) or those on the front of a coupler [mm]. */
export interface Pins {
  /** Record the pins belong to: `implement` or `coupler.front`. */
  readonly path: string;
  readonly lower: Term;
  /** The lower pin as it meets the seat: over the bushing where one is fitted. */
  readonly lowerOver: Term;
  readonly hasBushing: boolean;
  readonly bushingInside: Term;
  readonly bushingLength: Term;
  readonly standOut: Term;
  readonly toHole: Term;
  readonly washer: Term;
  /** +1 where the pins point outward, −1 inward. */
  readonly sign: (at: Reading) => 1 | -1;
  /** Shoulder to shoulder, given the width of the ball that a ball-centre reading was taken on. */
  readonly shoulders: (ballWidth: Term) => Term;
  readonly upper: Term;
  /** The upper pin as it meets the ball or hook: over the bushing where one is fitted. */
  readonly upperOver: Term;
  readonly hasUpperBushing: boolean;
  readonly upperBushingInside: Term;
  readonly clevisGap: Term;
  readonly clevisOuter: Term;
  readonly mastHeight: Term;
  readonly mastSetback: Term;
}

/** The pins of the implement; a second row is a choice. */
export function implementPins(setup: Setup, ledger: Ledger): Pins {
  const second = setup.implement.secondRow;
  const first = pinsAt('implement', setup.implement, ledger);
  return second === undefined ? first : eitherRow(first, pinsAt('implement.secondRow', second, ledger), ledger);
}

/** The pins on the front of the coupler. */
export function couplerPins(setup: Setup, ledger: Ledger): Pins {
  return pinsAt('coupler.front', setup.coupler?.front ?? {}, ledger);
}

function pinsAt(path: string, record: PinSet, ledger: Ledger): Pins {
  const term = (key: string): Term => ledger.later(`${path}.${key}`);
  const given = (key: string): boolean => ledger.given(`${path}.${key}`);
  const sign = record.pinsPoint === 'in' ? -1 : 1;
  const over = (pin: string, bushing: string): Term => (given(bushing) ? term(bushing) : term(pin));
  return {
    path,
    lower: term('lowerPinDiameter'),
    lowerOver: over('lowerPinDiameter', 'lowerBushingOutside'),
    hasBushing: given('lowerBushingOutside'),
    bushingInside: term('lowerBushingInside'),
    bushingLength: term('lowerBushingLength'),
    standOut: term('standOut'),
    toHole: term('shoulderToHole'),
    washer: term('washer'),
    sign: () => sign,
    shoulders: (ballWidth) =>
      fromShoulders(term('shoulderSpan'), record.shoulderSpan?.provenance.from, sign, ballWidth),
    upper: term('upperPinDiameter'),
    hasUpperBushing: given('upperBushingOutside'),
    upperBushingInside: term('upperBushingInside'),
    upperOver: over('upperPinDiameter', 'upperBushingOutside'),
    clevisGap: term('clevisGap'),
    clevisOuter: term('clevisOuterWidth'),
    mastHeight: term('mastHeight'),
    mastSetback: term('mastSetback'),
  };
}

/** A reading between ball centres is one ball width wider than the shoulders (narrower, where the pins point inward). */
function fromShoulders(span: Term, from: string | undefined, sign: 1 | -1, ballWidth: Term): Term {
  const converted: Term = (at) => (sign === 1 ? subtract(span(at), ballWidth(at)) : add(span(at), ballWidth(at)));
  if (from === 'ballCentre') return converted;
  return from === 'unsaid' ? (at) => hull(span(at), converted(at)) : span;
}

function eitherRow(first: Pins, second: Pins, ledger: Ledger): Pins {
  const row = ledger.choice('implement.pinRow', 2);
  const takesFirst = (at: Reading): boolean => row(at).low === 0;
  const either =
    (pick: (pins: Pins) => Term): Term =>
    (at) =>
      pick(takesFirst(at) ? first : second)(at);
  const lowered = (pick: (pins: Pins) => Term, by: string): Term => {
    const shift = ledger.later(`implement.secondRow.${by}`);
    return (at) => (takesFirst(at) ? pick(first)(at) : subtract(pick(first)(at), shift(at)));
  };
  return {
    ...first,
    lower: either((pins) => pins.lower),
    lowerOver: either((pins) => pins.lowerOver),
    hasBushing: first.hasBushing || second.hasBushing,
    bushingInside: either((pins) => (pins.hasBushing ? pins.bushingInside : pins.lower)),
    bushingLength: either((pins) => (pins.hasBushing ? pins.bushingLength : () => ({ low: 0, high: 0 }))),
    standOut: either((pins) => pins.standOut),
    toHole: either((pins) => pins.toHole),
    washer: either((pins) => pins.washer),
    sign: (at) => (takesFirst(at) ? first : second).sign(at),
    shoulders: (ballWidth) => either((pins) => pins.shoulders(ballWidth)),
    mastHeight: lowered((pins) => pins.mastHeight, 'rise'),
    mastSetback: lowered((pins) => pins.mastSetback, 'behind'),
  };
}

/**
 * Ball centre to ball centre with the balls against the shoulders [mm].
 *
 * @param pins the pins [mm]
 * @param ballWidth width of a ball along the pin [mm]
 * @returns a term [mm]
 */
export function ballCentres(pins: Pins, ballWidth: Term): Term {
  const shoulders = pins.shoulders(ballWidth);
  return (at) => add(shoulders(at), scale(ballWidth(at), pins.sign(at)));
}

/** How far the pins, counted from their shoulders by `reach` on each side, pass a hook of the given centres and width. */
export function pastHook(
  shoulders: Interval,
  reach: Interval,
  hookSpan: Interval,
  hookWidth: Interval,
  sign: 1 | -1,
): Interval {
  return subtract(add(scale(subtract(shoulders, hookSpan), sign), scale(reach, 2)), hookWidth);
}
