import { add, interval, multiply, subtract } from '../geometry/index.ts';
import { again, asIs, between, only, told, turned, type WayQuestion } from './way.ts';

/** What a brochure’s mass leaves out or counts too much: 3 % less to 15 % more. Common practice, no source. */
const brochure = interval(0.97, 1.15);
/** A mass that was only judged by eye: a quarter either way. Our own. */
const judged = interval(0.75, 1.25);
/** A centre of gravity that was only judged by eye: 6 in either way [mm]. Our own. */
const guessed = interval(-152.4, 152.4);

const papersOr = (weighed: string): WayQuestion['ways'] => [
  asIs('scale', weighed),
  told('papers', 'from its plate, a brochure or a listing', 'papers', (read) => multiply(read, brochure)),
  told('guess', 'a guess', 'word', (read) => multiply(read, judged)),
];

const carriedByHitch = again(
  'carried',
  'on a scale, hitch still holding it',
  'Lower the hitch until the links hang loose, then read the scale.',
);

const implementOn = again(
  'implementOn',
  'a scale, implement hung on',
  'Take the implement off, then read the scale again.',
);

const centre: WayQuestion = {
  ask: 'How was it found?',
  ways: [asIs('balanced', 'hung or balanced'), told('guess', 'judged by eye', 'word', (read) => add(read, guessed))],
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

const closedEnds: WayQuestion = {
  ask: 'From where to where?',
  ways: [
    between('crossCentre', 'cross centre to cross centre, pushed right together'),
    between('pinToPin', 'lock pin to lock pin, pushed right together'),
    between('yokeEnds', 'yoke end to yoke end, pushed right together'),
    again('drawnOut', 'not pushed right together', 'Push it together as far as it goes, then read it.'),
    again('guard', 'over the guard', 'Guards are shorter than the shaft. Read from joint to joint.'),
  ],
};

const ballFaces: WayQuestion = {
  ask: 'From where to where?',
  ways: [
    between('ballCentre', 'ball centre to ball centre'),
    between('innerFaces', 'inner face to inner face of the balls'),
    between('outerFaces', 'outer face to outer face of the balls'),
  ],
};

const hookFaces: WayQuestion = {
  ask: 'From where to where?',
  ways: [
    asIs('centres', 'middle of one hook to middle of the other'),
    turned('innerFaces', 'inner face to inner face of the hooks', ['hookWidth'], (read, beside) =>
      add(read, only(beside)),
    ),
    turned('outerFaces', 'outer face to outer face of the hooks', ['hookWidth'], (read, beside) =>
      subtract(read, only(beside)),
    ),
  ],
};

const topHookPoint: WayQuestion = {
  ask: 'Up to which part of the top hook?',
  ways: [
    asIs('pinCentre', 'the centre of a pin that lies in it'),
    again('lip', 'its lip, or the edge of its plate', 'Lay a pin in the hook and read to the centre of the pin.'),
    again('seat', 'the bottom of its seat', 'Lay a pin in the hook and read to the centre of the pin.'),
  ],
};

/** Questions about readings of tractor, coupler, implement and shaft that pins have no part in, by path. */
export const machineWays: Readonly<Record<string, WayQuestion>> = {
  'implement.mass': {
    ask: 'Where is it from?',
    ways: [...papersOr('a scale, implement free of the hitch'), carriedByHitch],
  },
  'tractor.mass': {
    ask: 'Where is it from?',
    ways: [
      ...papersOr('a scale, implement and driver off'),
      turned('driverOn', 'a scale, with the driver on', ['driverMass'], (read, beside) => subtract(read, only(beside))),
      implementOn,
    ],
  },
  'tractor.frontAxleMass': {
    ask: 'What was on it?',
    ways: [
      asIs('bare', 'front wheels on the scale, driver off, implement off'),
      again('driverOn', 'a driver sat on it', 'Read it again with the driver off: the driver is counted apart.'),
      implementOn,
    ],
  },
  'implement.centreBehind': centre,
  'coupler.centreBehind': centre,
  'coupler.hookSpan': hookFaces,
  'coupler.topHookHeight': topHookPoint,
  'tractor.ballSpan': ballFaces,
  'tractor.stubBehindAxle': splineEnd,
  'implement.inputBehind': splineEnd,
  'shaft.closedLength': closedEnds,
  'shaft.yokeReachFront': reachEnd,
  'shaft.yokeReachRear': reachEnd,
};
