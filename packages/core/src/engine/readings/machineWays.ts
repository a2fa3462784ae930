import { add, interval, multiply } from '../geometry/index.ts';
import { again, asIs, between, turned, type WayQuestion } from './way.ts';

/** What a brochure’s mass leaves out or counts too much: 3 % less to 15 % more. Common practice, no source. */
const brochure = interval(0.97, 1.15);
/** A mass that was only judged by eye: a quarter either way. Our own. */
const judged = interval(0.75, 1.25);
/** A centre of gravity that was only judged by eye: 6 in either way [mm]. Our own. */
const guessed = interval(-150, 150);

const papersOr = (weighed: string): WayQuestion['ways'] => [
  asIs('scale', weighed),
  turned('papers', 'from its plate, a brochure or a listing', [], (read) => multiply(read, brochure)),
  turned('guess', 'a guess', [], (read) => multiply(read, judged)),
];

const carriedByHitch = again(
  'carried',
  'on a scale, hitch still holding it',
  'Lower the hitch until the links hang loose, then read the scale.',
);

const centre: WayQuestion = {
  ask: 'How was it found?',
  ways: [asIs('balanced', 'hung or balanced'), turned('guess', 'judged by eye', [], (read) => add(read, guessed))],
};

const splineEnd: WayQuestion = {
  ask: 'Back to which part of the shaft?',
  ways: [
    between('groove', 'the groove round it'),
    between('shaftEnd', 'its end'),
    between('crossCentre', 'the cross centre of the joint on it'),
  ],
};

const reachEnd: WayQuestion = {
  ask: 'From which part of the shaft?',
  ways: [between('shaftEnd', 'its end'), between('groove', 'the groove round it')],
};

/** Questions about readings of tractor, implement and shaft that pins have no part in, by path. */
export const machineWays: Readonly<Record<string, WayQuestion>> = {
  'implement.mass': {
    ask: 'Where is it from?',
    ways: [...papersOr('a scale, implement free of the hitch'), carriedByHitch],
  },
  'tractor.mass': {
    ask: 'Where is it from?',
    ways: [
      ...papersOr('a scale, implement off'),
      again('implementOn', 'a scale, implement hung on', 'Take the implement off, then read the scale.'),
    ],
  },
  'tractor.frontAxleMass': {
    ask: 'What was on it?',
    ways: [
      asIs('bare', 'front wheels on the scale, driver off, implement off'),
      again('driverOn', 'a driver sat on it', 'Read it again with the driver off: the driver is counted apart.'),
      again('implementOn', 'an implement hung on', 'Take the implement off, then read the scale.'),
    ],
  },
  'implement.centreBehind': centre,
  'coupler.centreBehind': centre,
  'tractor.ballSpan': {
    ask: 'From where to where?',
    ways: [
      between('ballCentre', 'ball centre to ball centre'),
      between('innerFaces', 'inner face to inner face of the balls'),
      between('outerFaces', 'outer face to outer face of the balls'),
    ],
  },
  'tractor.stubBehindAxle': splineEnd,
  'implement.inputBehind': splineEnd,
  'shaft.closedLength': {
    ask: 'From where to where?',
    ways: [
      between('crossCentre', 'cross centre to cross centre, pushed right together'),
      between('pinToPin', 'lock pin to lock pin, pushed right together'),
      between('yokeEnds', 'yoke end to yoke end, pushed right together'),
      again('drawnOut', 'not pushed right together', 'Push it together as far as it goes, then read it.'),
      again('guard', 'over the guard', 'Guards are shorter than the shaft. Read from joint to joint.'),
    ],
  },
  'shaft.yokeReachFront': reachEnd,
  'shaft.yokeReachRear': reachEnd,
};
