import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { PinSet } from '../../src/records/index.ts';
import { lazily, less, pointOf, type Figures, type TrueFigure, type Unknowns } from './truth.ts';

/** The pins of a machine as numbers, whichever row is in use; written without the engine’s own terms. */
export interface TruePins {
  readonly pin: TrueFigure;
  /** The lower pin as it meets its seat, over a bushing where there is one. */
  readonly overPin: TrueFigure;
  readonly bushingInside: TrueFigure;
  readonly bushingLength: TrueFigure;
  readonly toTip: TrueFigure;
  readonly toHole: TrueFigure;
  readonly washer: TrueFigure;
  /** 1 where the pins point outward, −1 inward. */
  readonly sign: TrueFigure;
  /** Shoulder to shoulder, by the width of the ball that a reading between ball centres was taken on. */
  readonly shoulders: (ballWidth: TrueFigure) => TrueFigure;
  readonly upperPin: TrueFigure;
  readonly overUpperPin: TrueFigure;
  readonly upperBushingInside: TrueFigure;
  readonly clevisGap: TrueFigure;
  readonly clevisOuter: TrueFigure;
  readonly mastHeight: TrueFigure;
  readonly mastSetback: TrueFigure;
}

/** What pins are read from. */
export interface Sources {
  readonly question: SetupQuestion;
  readonly figures: Figures;
  readonly unknowns: Unknowns;
  /** Places of the lift that a truth is looked at. */
  readonly places: number;
}

/** The pins of the implement: of a second row, the one that is taken. */
export function implementPins(sources: Sources): TruePins {
  const { implement } = sources.question.joint.setup;
  const first = rowOf(sources, 'implement', implement);
  if (implement.secondRow === undefined) return first;
  const second = rowOf(sources, 'implement.secondRow', implement.secondRow);
  const row = lazily(() => sources.figures.option('implement.pinRow'));
  const shift = (by: string): TrueFigure => lazily(() => sources.figures.of(`implement.secondRow.${by}`));
  const [rise, behind] = [shift('rise'), shift('behind')];
  const taken =
    (pick: (pins: TruePins) => TrueFigure): TrueFigure =>
    (truth) =>
      pick(row(truth) === 0 ? first : second)(truth);
  return {
    ...first,
    pin: taken((pins) => pins.pin),
    overPin: taken((pins) => pins.overPin),
    bushingInside: taken((pins) => pins.bushingInside),
    bushingLength: taken((pins) => pins.bushingLength),
    toTip: taken((pins) => pins.toTip),
    toHole: taken((pins) => pins.toHole),
    washer: taken((pins) => pins.washer),
    sign: taken((pins) => pins.sign),
    shoulders: (width) => taken((pins) => pins.shoulders(width)),
    mastHeight: (truth) => first.mastHeight(truth) - row(truth) * rise(truth),
    mastSetback: (truth) => first.mastSetback(truth) - row(truth) * behind(truth),
  };
}

/** The pins on the front of a coupler. */
export function couplerPins(sources: Sources): TruePins {
  return rowOf(sources, 'coupler.front', sources.question.joint.setup.coupler?.front ?? {});
}

function rowOf({ question, figures, unknowns }: Sources, path: string, record: PinSet): TruePins {
  const of = (key: string): TrueFigure => lazily(() => figures.of(`${path}.${key}`));
  const given = (key: string): boolean => question.ledger.given(`${path}.${key}`);
  const has = given('lowerBushingOutside');
  const sign = record.pinsPoint === 'in' ? -1 : 1;
  // Nobody said which points an unsaid span lies between: it is the one or the other.
  const convention = pointOf(unknowns.beside({ low: 0, high: 1 }));
  const from = record.shoulderSpan?.provenance.from;
  const isBetweenBalls: TrueFigure = (truth) =>
    from === 'ballCentre' || (from === 'unsaid' && convention(truth) > 0.5) ? 1 : 0;
  const span = of('shoulderSpan');
  return {
    pin: of('lowerPinDiameter'),
    overPin: has ? of('lowerBushingOutside') : of('lowerPinDiameter'),
    bushingInside: has ? of('lowerBushingInside') : of('lowerPinDiameter'),
    bushingLength: has ? of('lowerBushingLength') : () => 0,
    toTip: of('standOut'),
    toHole: of('shoulderToHole'),
    washer: of('washer'),
    sign: () => sign,
    shoulders: (width) => less(span, (truth) => isBetweenBalls(truth) * sign * width(truth)),
    upperPin: of('upperPinDiameter'),
    overUpperPin: given('upperBushingOutside') ? of('upperBushingOutside') : of('upperPinDiameter'),
    upperBushingInside: of('upperBushingInside'),
    clevisGap: of('clevisGap'),
    clevisOuter: of('clevisOuterWidth'),
    mastHeight: of('mastHeight'),
    mastSetback: of('mastSetback'),
  };
}
