import { middle, scale, subtract, type Interval } from '../engine/geometry/index.ts';
import type { CheckId, Finding } from '../engine/findings/index.ts';
import type { Stage } from './stage.ts';

/** Which part of the drawing a finding is about. */
type Place = 'upper' | 'clevis' | 'lower' | 'seat' | 'topSeat' | 'bore' | 'topBore' | 'link' | 'angle';

/**
 * Where a finding's quantity lies in the drawing: an edge stands at `reference + direction · quantity / sides`, on the
 * right side and mirrored on the left where `sides` is 2.
 */
export interface Gauge {
  readonly finding: Finding;
  readonly place: Place;
  readonly reference: number;
  readonly direction: 1 | -1;
  readonly sides: 1 | 2;
  /** The same quantity worked out from the figures that are drawn; what is drawn must agree with what was found. */
  readonly drawn: Interval;
}

type Maker = (stage: Stage) => Omit<Gauge, 'finding'>;

const makers: Partial<Readonly<Record<CheckId, Maker>>> = {
  'rear.mast': ({ upper }) => {
    const hook = upper.hook?.distance ?? upper.distance;
    return upright('upper', hook.value, subtract(upper.distance, hook));
  },
  'rear.clevis': ({ upper }) =>
    upper.hook?.cheekGap == null
      ? across(
          'clevis',
          (upper.hook?.thickness.value ?? 0) / 2,
          subtract(upper.clevisGap, upper.hook?.thickness ?? upper.clevisGap),
        )
      : across('clevis', upper.clevisOuter.value / 2, subtract(upper.hook.cheekGap, upper.clevisOuter)),
  'front.clevis': ({ upper }) =>
    across(
      'clevis',
      (upper.ball?.width.value ?? 0) / 2,
      subtract(upper.clevisGap, upper.ball?.width ?? upper.clevisGap),
    ),
  'rear.shoulders': ({ pins, seats }) => ({
    ...across(
      'lower',
      nearFace(pins.sign, seats),
      subtract(scale(subtract(seats.centres, pins.shoulders), pins.sign), seats.width),
    ),
    direction: pins.sign === 1 ? -1 : 1,
  }),
  'rear.pinSeat': (stage) => pastHooks(stage, stage.pins.doubleGap ?? stage.pins.standOut),
  'rear.retention': (stage) =>
    stage.seats.kind === 'claws' ? pastBall(stage) : pastHooks(stage, subtract(stage.pins.toHole, stage.pins.washer)),
  'front.retention': (stage) => pastBall(stage),
  'rear.bushingLength': (stage) => pastBushing(stage),
  'front.bushingLength': (stage) => pastBushing(stage),
  'front.span': ({ seats }) => across('lower', 0, seats.centres),
  'rear.lowerPin': ({ pins, seats }) => hole('seat', subtract(seats.opening, pins.bushing?.outside ?? pins.diameter)),
  'front.lowerPin': ({ pins, seats }) => hole('bore', subtract(seats.opening, pins.bushing?.outside ?? pins.diameter)),
  'rear.bushingBore': ({ pins }) => hole('bore', subtract(pins.bushing?.inside ?? pins.diameter, pins.diameter)),
  'front.bushingBore': ({ pins }) => hole('bore', subtract(pins.bushing?.inside ?? pins.diameter, pins.diameter)),
  'rear.upperPin': ({ upper }) => hole('topSeat', subtract(upper.hook?.throat ?? upper.pin, upper.pin)),
  'front.upperPin': ({ upper }) => hole('topBore', subtract(upper.ball?.bore ?? upper.pin, upper.pin)),
  'rear.claw': ({ seats }) => hole('seat', subtract(seats.looseBall?.diameter ?? seats.opening, seats.opening)),
  'rear.ballOnPin': ({ seats, pins }) => hole('bore', subtract(seats.looseBall?.bore ?? pins.diameter, pins.diameter)),
  'rear.receiverWidth': ({ frame }) =>
    frame === null
      ? hole('lower', nothing)
      : across('lower', frame.frameWidth.value / 2, subtract(frame.receiverWidth, frame.frameWidth)),
  'front.topLink': ({ answer }) => hole('link', quantityOf(answer, 'front.topLink')),
  'rear.jaw': ({ bar }) => hole('seat', bar === null ? nothing : subtract(bar.opening, bar.diameter)),
  'rear.jawSpan': ({ bar }) =>
    bar === null ? hole('lower', nothing) : across('lower', bar.span.value / 2, subtract(bar.length, bar.span)),
};

/** Nothing in the view gives the length of the top link that is wanted: it is drawn as it was found. */
function quantityOf({ findings }: Stage['answer'], id: CheckId): Interval {
  const { low, high } = findings.find((finding) => finding.id === id)?.quantity ?? { low: null, high: null };
  return { low: low ?? 0, high: high ?? 0 };
}

const nothing: Interval = { low: 0, high: 0 };

function upright(place: Place, reference: number, drawn: Interval): Omit<Gauge, 'finding'> {
  return { place, reference, direction: 1, sides: 1, drawn };
}

function across(place: Place, reference: number, drawn: Interval): Omit<Gauge, 'finding'> {
  return { place, reference, direction: 1, sides: 2, drawn };
}

function hole(place: Place, drawn: Interval): Omit<Gauge, 'finding'> {
  return { place, reference: 0, direction: 1, sides: 1, drawn };
}

function nearFace(sign: 1 | -1, seats: Stage['seats']): number {
  return (seats.centres.value - sign * seats.width.value) / 2;
}

/** S + 2·reach − (H + w), or its mirror image where the pins point inward: an edge of the pin past the hook's far face. */
function pastHooks({ pins, seats }: Stage, reach: Interval): Omit<Gauge, 'finding'> {
  const span = scale(subtract(pins.shoulders, seats.centres), pins.sign);
  const drawn = subtract({ low: span.low + 2 * reach.low, high: span.high + 2 * reach.high }, seats.width);
  const farFace = (seats.centres.value + pins.sign * seats.width.value) / 2;
  return { place: 'lower', reference: farFace, direction: pins.sign, sides: 2, drawn };
}

/** s − washer − ball width: the retaining hole past a ball that stands against its shoulder, each side for itself. */
function pastBall({ pins, seats }: Stage): Omit<Gauge, 'finding'> {
  const drawn = subtract(subtract(pins.toHole, seats.width), pins.washer);
  const face = pins.shoulders.value / 2 + pins.sign * seats.width.value;
  return { place: 'lower', reference: face, direction: pins.sign, sides: 1, drawn };
}

function pastBushing({ pins }: Stage): Omit<Gauge, 'finding'> {
  const length = pins.bushing?.length ?? pins.toHole;
  const drawn = subtract(subtract(pins.toHole, pins.washer), length);
  return {
    place: 'lower',
    reference: pins.shoulders.value / 2 + pins.sign * middle(length),
    direction: pins.sign,
    sides: 1,
    drawn,
  };
}

/** The gauge of a finding that can be drawn; null where it has no place in the view, or where the figures drawn do not give what was found. */
export function gaugeOf(stage: Stage, finding: Finding): Gauge | null {
  const make = makers[finding.id];
  if (make === undefined || finding.quantity === null) return null;
  const gauge = { finding, ...make(stage) };
  return agrees(gauge.drawn.low, finding.quantity.low) && agrees(gauge.drawn.high, finding.quantity.high)
    ? gauge
    : null;
}

function agrees(drawn: number, found: number | null): boolean {
  return found !== null && Math.abs(drawn - found) < 0.001;
}

/** Where the gauge's edge stands at a value of its quantity [mm]. */
export function edgeAt({ reference, direction, sides }: Gauge, quantity: number): number {
  return reference + (direction * quantity) / sides;
}
