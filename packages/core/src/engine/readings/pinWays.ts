import { add, scale, square, squareRoot, subtract, type Interval } from '../geometry/index.ts';
import { collars, coating, wear } from './usual.ts';
import { again, another, asIs, between, only, turned, type WayQuestion } from './way.ts';

/** Lower and upper pin of a mast, half of each: what lies between their edges and their centres. */
const bothPins = ['lowerPinDiameter', 'upperPinDiameter'];

function halves(ranges: readonly Interval[]): readonly [Interval, Interval] {
  const [lower, upper] = ranges as readonly [Interval, Interval];
  return [scale(lower, 0.5), scale(upper, 0.5)];
}

/** Square up from a length along a mast that leans by its setback. */
function uprightOf(along: Interval, setback: Interval): Interval {
  return squareRoot(subtract(square(along), square(setback)));
}

const pinEdges: WayQuestion = {
  ask: 'To which part of the pins?',
  ways: [
    asIs('centres', 'centre of the lower pins to centre of the upper pin’s hole'),
    turned('bottoms', 'bottom of the lower pins to bottom of the upper pin', bothPins, (read, { ranges }) => {
      const [lower, upper] = halves(ranges);
      return subtract(add(read, upper), lower);
    }),
    turned('tops', 'top of the lower pins to top of the upper pin', bothPins, (read, { ranges }) => {
      const [lower, upper] = halves(ranges);
      return subtract(add(read, lower), upper);
    }),
    turned('outside', 'bottom of the lower pins to top of the upper pin', bothPins, (read, { ranges }) => {
      const [lower, upper] = halves(ranges);
      return subtract(read, add(lower, upper));
    }),
    turned('inside', 'top of the lower pins to bottom of the upper pin', bothPins, (read, { ranges }) => {
      const [lower, upper] = halves(ranges);
      return add(read, add(lower, upper));
    }),
    turned('alongMast', 'along the mast, centre to centre', ['mastSetback'], (read, beside) =>
      uprightOf(read, only(beside)),
    ),
    again(
      'plateEdge',
      'to the edge of the plate or the lip of a hook',
      'The edge of a plate lies anywhere round the hole. Read to the centre of the hole.',
    ),
  ],
};

const heightEdges: WayQuestion = {
  ask: 'From the ground to which part of the pins?',
  ways: [
    asIs('centre', 'to the centre'),
    turned('bottom', 'to the bottom', ['lowerPinDiameter'], (read, beside) => add(read, scale(only(beside), 0.5))),
    turned('top', 'to the top', ['lowerPinDiameter'], (read, beside) => subtract(read, scale(only(beside), 0.5))),
  ],
};

const bareness = (bushing: string): WayQuestion => ({
  ask: 'What was under the caliper?',
  ways: [
    asIs('bare', 'the bare pin, wiped clean'),
    turned('coated', 'the pin with paint or rust on it', [], (read) => subtract(read, coating)),
    turned('worn', 'the shiny band where it is worn', [], (read) => add(read, wear)),
    another(
      'bushing',
      'a bushing or sleeve on the pin',
      bushing,
      'That is the bushing’s outside. Pull it off and read the bare pin.',
    ),
  ],
});

/** Outward pins stand on the outer faces of their plates, inward ones on the inner faces. */
const spanPoints: WayQuestion = {
  ask: 'From where to where?',
  ways: [
    between('shoulder', 'from the step on one pin to the step on the other'),
    between('ballCentre', 'centre to centre of balls pushed against the steps'),
    turned('pinTips', 'from tip to tip of the pins', ['standOut'], (read, beside) =>
      subtract(read, scale(only(beside), 2 * beside.sign)),
    ),
    turned('insidePlates', 'between the inner faces of the plates', ['plateThickness'], (read, beside) =>
      beside.sign === 1 ? add(read, add(scale(only(beside), 2), collars)) : subtract(read, collars),
    ),
    turned('outsidePlates', 'over the outer faces of the plates', ['plateThickness'], (read, beside) =>
      beside.sign === 1 ? add(read, collars) : subtract(read, add(scale(only(beside), 2), collars)),
    ),
    between('unsaid', 'I can’t say'),
  ],
};

/** Questions about the readings of pins, by field of the machine that has them. */
export const pinWays: Readonly<Record<string, WayQuestion>> = {
  shoulderSpan: spanPoints,
  standOut: {
    ask: 'From the step to where?',
    ways: [
      asIs('tip', 'to the tip of the pin'),
      another(
        'hole',
        'to the near edge of the retaining-pin hole',
        'shoulderToHole',
        'That is the step to the hole. Now read from the step to the tip.',
      ),
      again('plate', 'from the plate, not from the step', 'Read from the step that the ball or hook rubs on.'),
    ],
  },
  shoulderToHole: {
    ask: 'To which edge of the hole?',
    ways: [
      asIs('near', 'the near edge, toward the step'),
      again('centre', 'the centre of the hole', 'Read to the near edge: what lies beyond it can’t be used.'),
      again('far', 'the far edge, or to the clip', 'Read to the near edge: what lies beyond it can’t be used.'),
      another(
        'tip',
        'to the tip of the pin',
        'standOut',
        'That is the stand-out of the pin. Now read from the step to the near edge of the hole.',
      ),
    ],
  },
  lowerPinDiameter: bareness('lowerBushingOutside'),
  upperPinDiameter: bareness('upperBushingOutside'),
  mastHeight: pinEdges,
  parkedPinHeight: heightEdges,
  workPinHeight: heightEdges,
};
