import { describe, expect, test } from 'vitest';
import { errorLine, readSetup, type InputErrorCode } from '../../src/records/index.ts';

type Case = readonly [title: string, document: unknown, code: InputErrorCode, path: string];

const fine = { hitchwright: 1, tractor: {}, implement: {} };
const tractor = (fields: object) => ({ ...fine, tractor: fields });
const implement = (fields: object) => ({ ...fine, implement: fields });
const shaft = (fields: object) => ({ ...fine, shaft: fields });
const coupler = (fields: object) => ({ ...fine, coupler: { kind: 'uFrame', ...fields } });
const part = (fields: object) => ({ ...fine, parts: [{ name: 'part', ...fields }] });
const from = (value: number, point: unknown) => ({ value, from: point });

const points: readonly Case[] = [
  [
    'a stub read pin to pin',
    tractor({ stubBehindAxle: from(310, 'pinToPin') }),
    'not-a-choice',
    'tractor.stubBehindAxle.from',
  ],
  [
    'a height read to a groove',
    tractor({ stubHeight: from(560, 'groove') }),
    'not-a-choice',
    'tractor.stubHeight.from',
  ],
  [
    'an input shaft read to a ball centre',
    implement({ inputBehind: from(140, 'ballCentre') }),
    'not-a-choice',
    'implement.inputBehind.from',
  ],
  [
    'a closed shaft read to a shaft end',
    shaft({ closedLength: from(600, 'shaftEnd') }),
    'not-a-choice',
    'shaft.closedLength.from',
  ],
  [
    'a yoke’s reach read from its own cross',
    shaft({ yokeReachFront: from(60, 'crossCentre') }),
    'not-a-choice',
    'shaft.yokeReachFront.from',
  ],
  ['a number for a point', shaft({ closedLength: from(600, 7) }), 'wrong-type', 'shaft.closedLength.from'],
];

const ranges: readonly Case[] = [
  ['a closed length in inches', shaft({ closedLength: 18 }), 'out-of-range', 'shaft.closedLength'],
  ['a joint that binds at 200°', shaft({ bindAngle: 200 }), 'out-of-range', 'shaft.bindAngle'],
  ['a shield that misses', shaft({ shieldOverlapFront: -1 }), 'out-of-range', 'shaft.shieldOverlapFront'],
  ['series 12', shaft({ series: 12 }), 'out-of-range', 'shaft.series'],
  ['an opening of 6 mm', coupler({ windowWidth: 6 }), 'out-of-range', 'coupler.windowWidth'],
  ['a stub 900 mm aside', tractor({ stubAside: 900 }), 'out-of-range', 'tractor.stubAside'],
  ['no speed in the list', tractor({ ptoSpeeds: [] }), 'out-of-range', 'tractor.ptoSpeeds'],
  ['a speed of 5400 rpm', tractor({ ptoSpeeds: [540, 5400] }), 'out-of-range', 'tractor.ptoSpeeds.1'],
  ['a speed the other way round', implement({ inputSpeed: -540 }), 'out-of-range', 'implement.inputSpeed'],
  ['an input shaft turned by 60°', implement({ inputYaw: 60 }), 'out-of-range', 'implement.inputYaw'],
  ['a shift to the left that goes right', implement({ shiftLeft: -40 }), 'out-of-range', 'implement.shiftLeft'],
  ['no power wanted', implement({ powerWanted: 0 }), 'out-of-range', 'implement.powerWanted'],
  ['an extender of 4 mm', part({ kind: 'stubExtender', length: 4 }), 'out-of-range', 'parts.0.length'],
  [
    'a shelf shaft of 4 mm',
    part({ kind: 'driveShaft', shaft: { closedLength: 4 } }),
    'out-of-range',
    'parts.0.shaft.closedLength',
  ],
  [
    'a range the wrong way round',
    implement({ inputBehind: { between: [200, 100] } }),
    'wrong-order',
    'implement.inputBehind.between',
  ],
];

const types: readonly Case[] = [
  ['a list for a shaft', { ...fine, shaft: [] }, 'wrong-type', 'shaft'],
  ['a text for a shaft', { ...fine, shaft: 'long' }, 'wrong-type', 'shaft'],
  ['a series between two', shaft({ series: 3.5 }), 'wrong-type', 'shaft.series'],
  ['one speed that is no list', tractor({ ptoSpeeds: 540 }), 'wrong-type', 'tractor.ptoSpeeds'],
  ['a speed as a text', implement({ inputSpeed: '540' }), 'wrong-type', 'implement.inputSpeed'],
  ['a yes for whether it is driven', implement({ driven: 'yes' }), 'wrong-type', 'implement.driven'],
  [
    'a number for whether it turns raised',
    implement({ turnsWhileRaised: 1 }),
    'wrong-type',
    'implement.turnsWhileRaised',
  ],
  ['an extender without a length', part({ kind: 'stubExtender' }), 'wrong-type', 'parts.0.length'],
  ['an angle for a length', shaft({ closedLength: '600 deg' }), 'wrong-unit', 'shaft.closedLength'],
  ['a length for an angle', implement({ inputAngle: '3 mm' }), 'wrong-unit', 'implement.inputAngle'],
  ['a length for a torque', shaft({ limiterTorque: '900 mm' }), 'wrong-unit', 'shaft.limiterTorque'],
  ['a speed for a power', implement({ powerWanted: '540 rpm' }), 'wrong-unit', 'implement.powerWanted'],
  ['a shelf shaft that is none', part({ kind: 'driveShaft' }), 'missing', 'parts.0.shaft'],
];

const choices: readonly Case[] = [
  ['a fifth type of PTO', shaft({ tractorType: 5 }), 'not-a-choice', 'shaft.tractorType'],
  ['a type as a text', tractor({ ptoType: '1' }), 'not-a-choice', 'tractor.ptoType'],
  ['a direction by the hand', tractor({ ptoTurns: 'left' }), 'not-a-choice', 'tractor.ptoTurns'],
  ['a direction cut short', implement({ inputTurns: 'ccw' }), 'not-a-choice', 'implement.inputTurns'],
  ['a joint of no kind', shaft({ jointFront: 'double' }), 'not-a-choice', 'shaft.jointFront'],
  ['a limiter of no kind', shaft({ limiter: 'fuse' }), 'not-a-choice', 'shaft.limiter'],
  ['a rule set of one’s own', { ...fine, rules: { driveShaft: 'mine' } }, 'not-a-choice', 'rules.driveShaft'],
  ['a length that is no field', shaft({ length: 600 }), 'unknown-key', 'shaft.length'],
  ['a shaft’s field on the tractor', tractor({ closedLength: 600 }), 'unknown-key', 'tractor.closedLength'],
  ['an opening on the implement', implement({ windowWidth: 600 }), 'unknown-key', 'implement.windowWidth'],
];

const contradictions: readonly Case[] = [
  [
    'a stub that can be set anywhere',
    tractor({ stubBehindAxle: { adjustable: { between: [300, 400] } } }),
    'contradiction',
    'tractor.stubBehindAxle',
  ],
  [
    'a closed shaft that can be set anywhere',
    shaft({ closedLength: { adjustable: { between: [500, 700] } } }),
    'contradiction',
    'shaft.closedLength',
  ],
  [
    'halves that overlap by more than the shaft is long',
    shaft({ closedLength: 400, closedOverlap: 500 }),
    'contradiction',
    'shaft.closedOverlap',
  ],
  [
    'an opening whose bottom is above its top',
    coupler({ windowTop: -20, windowBottom: 40 }),
    'contradiction',
    'coupler.windowBottom',
  ],
  [
    'a tube wider than its cone',
    shaft({ guardTubeDiameter: 90, guardConeDiameter: 60 }),
    'contradiction',
    'shaft.guardTubeDiameter',
  ],
];

function errorsIn(document: unknown) {
  const reading = readSetup(document);
  return reading.ok ? [] : reading.errors;
}

for (const [title, cases] of [
  ['reference points of the drive', points],
  ['figures of the drive out of their range', ranges],
  ['entries of the drive of another kind', types],
  ['choices of the drive that there are not', choices],
  ['figures of the drive that contradict themselves', contradictions],
] as const) {
  describe(title, () => {
    for (const [what, document, code, path] of cases) {
      test(`${what}: ${code} at ${path}`, () => {
        expect(errorsIn(document).map((error) => `${error.code} ${error.path}`)).toEqual([`${code} ${path}`]);
      });
    }
  });
}

describe('hints', () => {
  const hint = (document: unknown): string => errorsIn(document).map(errorLine).join('\n');
  test('a length in the wrong unit asks whether it was typed in inches', () => {
    expect(hint(shaft({ closedLength: 18 }))).toContain('Was it typed in inches?');
  });
  test('a wrong point names the right ones', () => {
    expect(hint(shaft({ closedLength: from(600, 'shaftEnd') }))).toContain('one of crossCentre, pinToPin, yokeEnds');
  });
  test('an unknown field of a shaft names one that a shaft has', () => {
    expect(hint(shaft({ length: 600 }))).not.toContain('lowerBushingLength');
    expect(hint(shaft({ closedLenght: 600 }))).toContain('closedLength');
  });
});
