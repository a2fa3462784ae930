import { add, interval, scale, square, squareRoot, subtract, type Interval } from '../geometry/index.ts';
import { again, asIs, between, turned, type WayQuestion } from './way.ts';

/** Two collars beyond the plates: up to 12 mm each [mm]. Common practice, no source. */
const collars = interval(0, 24);
/** Paint and rust on a pin [mm]. Common practice, no source. */
const coating = interval(0.2, 0.8);
/** What the shiny band of a worn pin has lost [mm]. Common practice, no source. */
const wear = interval(0, 2);

const half = (range: Interval | undefined): Interval => scale(range ?? interval(0, 0), 0.5);
const first = ([range]: readonly Interval[]): Interval => range ?? interval(0, 0);

/** Square up from a length along a mast that leans by its setback. */
function uprightOf(along: Interval, setback: Interval): Interval {
  return squareRoot(subtract(square(along), square(setback)));
}

const pinEdges = {
  ask: 'To which part of the pins?',
  ways: [
    asIs('centres', 'centre of the lower pins to centre of the upper pin’s hole'),
    turned(
      'bottoms',
      'bottom of the lower pins to bottom of the upper pin',
      ['lowerPinDiameter', 'upperPinDiameter'],
      (read, [lower, upper]) => subtract(add(read, half(upper)), half(lower)),
    ),
    turned(
      'tops',
      'top of the lower pins to top of the upper pin',
      ['lowerPinDiameter', 'upperPinDiameter'],
      (read, [lower, upper]) => subtract(add(read, half(lower)), half(upper)),
    ),
    turned(
      'outside',
      'bottom of the lower pins to top of the upper pin',
      ['lowerPinDiameter', 'upperPinDiameter'],
      (read, [lower, upper]) => subtract(read, add(half(lower), half(upper))),
    ),
    turned(
      'inside',
      'top of the lower pins to bottom of the upper pin',
      ['lowerPinDiameter', 'upperPinDiameter'],
      (read, [lower, upper]) => add(read, add(half(lower), half(upper))),
    ),
    turned('alongMast', 'along the mast, centre to centre', ['mastSetback'], (read, beside) =>
      uprightOf(read, first(beside)),
    ),
    again(
      'plateEdge',
      'to the edge of the plate or the lip of a hook',
      'The edge of a plate lies anywhere round the hole. Read to the centre of the hole.',
    ),
  ],
} as const satisfies WayQuestion;

const heightEdges: WayQuestion = {
  ask: 'From the ground to which part of the pins?',
  ways: [
    asIs('centre', 'to the centre'),
    turned('bottom', 'to the bottom', ['lowerPinDiameter'], (read, beside) => add(read, half(first(beside)))),
    turned('top', 'to the top', ['lowerPinDiameter'], (read, beside) => subtract(read, half(first(beside)))),
  ],
};

const bareness = (bushing: string): WayQuestion => ({
  ask: 'What was under the caliper?',
  ways: [
    asIs('bare', 'the bare pin, wiped clean'),
    turned('coated', 'the pin with paint or rust on it', [], (read) => subtract(read, coating)),
    turned('worn', 'the shiny band where it is worn', [], (read) => add(read, wear)),
    {
      key: 'bushing',
      words: 'a bushing or sleeve on the pin',
      kind: 'other',
      field: bushing,
      hint: 'That is the bushing’s outside. Pull it off and read the bare pin.',
    },
  ],
});

/** Questions about the readings of pins, by field of the machine that has them. */
export const pinWays: Readonly<Record<string, WayQuestion>> = {
  shoulderSpan: {
    ask: 'From where to where?',
    ways: [
      between('shoulder', 'from the step on one pin to the step on the other'),
      between('ballCentre', 'centre to centre of balls pushed against the steps'),
      turned('pinTips', 'from tip to tip of the pins', ['standOut'], (read, beside) =>
        subtract(read, scale(first(beside), 2)),
      ),
      turned('insidePlates', 'between the inner faces of the plates', ['plateThickness'], (read, beside) =>
        add(read, add(scale(first(beside), 2), collars)),
      ),
      between('unsaid', 'I can’t say'),
    ],
  },
  standOut: {
    ask: 'From the step to where?',
    ways: [
      asIs('tip', 'to the tip of the pin'),
      {
        key: 'hole',
        words: 'to the near edge of the retaining-pin hole',
        kind: 'other',
        field: 'shoulderToHole',
        hint: 'That is the step to the hole. Now read from the step to the tip.',
      },
      again('plate', 'from the plate, not from the step', 'Read from the step that the ball or hook rubs on.'),
    ],
  },
  shoulderToHole: {
    ask: 'To which edge of the hole?',
    ways: [
      asIs('near', 'the near edge, toward the step'),
      again('centre', 'the centre of the hole', 'Read to the near edge: what lies beyond it can’t be used.'),
      again('far', 'the far edge, or to the clip', 'Read to the near edge: what lies beyond it can’t be used.'),
      {
        key: 'tip',
        words: 'to the tip of the pin',
        kind: 'other',
        field: 'standOut',
        hint: 'That is the stand-out of the pin. Now read from the step to the near edge of the hole.',
      },
    ],
  },
  lowerPinDiameter: bareness('lowerBushingOutside'),
  upperPinDiameter: bareness('upperBushingOutside'),
  mastHeight: pinEdges,
  parkedPinHeight: heightEdges,
  workPinHeight: heightEdges,
};
