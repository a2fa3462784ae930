import { describe, expect, test } from 'vitest';
import { withEdits, type SetupDocument } from '../../records/index.ts';
import { mergeOf, type Merged } from './index.ts';

const known: SetupDocument = {
  hitchwright: 1,
  tractor: {
    category: '1',
    lowerBallWidth: 35,
    ptoSpeeds: [540],
    ballSpan: { adjustable: { between: [640, 760] } },
    topLinkPivotHeight: { adjustable: { at: [780, 820] } },
    wheelbase: null,
    tyreRadius: { unknown: true },
    stubHeight: { between: [400, 600], default: 'class practice' },
  },
  implement: {
    category: '1',
    mounting: 'threePoint',
    driven: false,
    shoulderSpan: { value: '26 7/8 in', plusMinus: '1/16 in' },
    mastHeight: { value: 457, plusMinus: 1.5, who: 'yard' },
  },
};

const stateOf = (path: string, value: unknown, document = known): Merged['state'] | undefined =>
  mergeOf(document, [{ path, value }])[0]?.state;

describe('what a reading from somebody else is to a setup', () => {
  test('new where nothing stood, or only an unknown or a range out of a class', () => {
    expect(stateOf('implement.standOut', 60)).toBe('new');
    expect(stateOf('tractor.wheelbase', '67 3/4 in')).toBe('new');
    expect(stateOf('tractor.tyreRadius', 520)).toBe('new');
    expect(stateOf('tractor.stubHeight', { value: 560, plusMinus: 1.5 })).toBe('new');
    expect(stateOf('implement.inputType', 1)).toBe('new');
  });
  test('same where it says nothing that does not stand here', () => {
    expect(stateOf('implement.mastHeight', { who: 'yard', plusMinus: 1.5, value: 457 })).toBe('same');
    for (const nothing of [null, { unknown: true }, { between: [440, 500], default: 'class practice' }])
      for (const path of ['implement.mastHeight', 'implement.standOut', 'tractor.wheelbase'])
        expect(stateOf(path, nothing), path).toBe('same');
    expect(stateOf('tractor.ptoSpeeds', [540])).toBe('same');
    expect(stateOf('implement.driven', false)).toBe('same');
  });
  test('agrees where both can be true, differs where they can’t', () => {
    expect(stateOf('implement.mastHeight', { value: 459, plusMinus: 1.5 })).toBe('agrees');
    expect(stateOf('implement.mastHeight', { value: 461, plusMinus: 1.5 })).toBe('differs');
    expect(stateOf('implement.mastHeight', 457)).toBe('agrees');
  });
  test('between other points it is turned first', () => {
    expect(stateOf('implement.shoulderSpan', { value: 718, plusMinus: 1.5, from: 'ballCentre' })).toBe('agrees');
    expect(stateOf('implement.shoulderSpan', { value: 718, plusMinus: 1.5 })).toBe('differs');
    expect(stateOf('implement.shoulderSpan', { value: 718, from: 'unsaid' })).toBe('agrees');
    const inward = withEdits(known, [{ path: 'implement.pinsPoint', value: 'in' }]);
    expect(stateOf('implement.shoulderSpan', { value: 648, plusMinus: 1.5, from: 'ballCentre' }, inward)).toBe(
      'agrees',
    );
  });
  test('a yoke that was read from the groove reaches the cross without what lies between groove and end', () => {
    const drive = withEdits(known, [
      { path: 'tractor.stubGrooveToEnd', value: 30 },
      { path: 'tractor.stubBehindAxle', value: { value: 280, plusMinus: 1, from: 'groove' } },
      { path: 'shaft', value: { yokeReachFront: { value: 87, from: 'groove' } } },
    ]);
    const cross = (value: number) => ({ value, plusMinus: 1, from: 'crossCentre' });
    expect(stateOf('tractor.stubBehindAxle', cross(367), drive)).toBe('agrees');
    expect(stateOf('tractor.stubBehindAxle', cross(397), drive)).toBe('differs');
    expect(stateOf('tractor.stubBehindAxle', { value: 310, plusMinus: 1, from: 'shaftEnd' }, drive)).toBe('agrees');
    expect(stateOf('shaft.yokeReachFront', { value: 57, plusMinus: 1 }, drive)).toBe('agrees');
  });
  test('what can be set is compared end by end, and hole by hole', () => {
    const spread = (low: number, high: number, from?: string) => ({ adjustable: { between: [low, high] }, from });
    const close = {
      adjustable: {
        between: [
          { value: 641, plusMinus: 1.5 },
          { value: 759, plusMinus: 1.5 },
        ],
      },
    };
    expect(stateOf('tractor.ballSpan', close)).toBe('agrees');
    expect(stateOf('tractor.ballSpan', spread(645, 755))).toBe('differs');
    expect(stateOf('tractor.ballSpan', spread(605, 725, 'innerFaces'))).toBe('agrees');
    const holes = (...at: number[]) => ({ adjustable: { at } });
    expect(stateOf('tractor.topLinkPivotHeight', holes(780, 820))).toBe('same');
    expect(stateOf('tractor.topLinkPivotHeight', holes(780, 821))).toBe('differs');
    expect(stateOf('tractor.topLinkPivotHeight', holes(780, 800, 820))).toBe('differs');
    expect(stateOf('tractor.topLinkPivotHeight', { between: [800, 805] })).toBe('agrees');
    expect(stateOf('tractor.topLinkPivotHeight', { between: [830, 840] })).toBe('differs');
  });
  test('another choice differs, whatever kind of word it is', () => {
    expect(stateOf('implement.mounting', 'armMower')).toBe('differs');
    expect(stateOf('implement.driven', true)).toBe('differs');
    expect(stateOf('tractor.ptoSpeeds', [540, 1000])).toBe('differs');
    expect(stateOf('tractor.ptoSpeeds', [1000])).toBe('differs');
  });
  test('a document in millimetres reads its own bare texts so', () => {
    const metric = { hitchwright: 1, units: 'metric', tractor: {}, implement: { mastHeight: '457' } };
    const us = { ...metric, units: 'us', implement: { mastHeight: '18' } };
    for (const document of [metric, us]) {
      expect(stateOf('implement.mastHeight', { value: '18 in', plusMinus: '1/16 in' }, document)).toBe('agrees');
      expect(stateOf('implement.mastHeight', { value: 470, plusMinus: 1.5 }, document)).toBe('differs');
    }
  });
  test('entries keep their order, and say what stood before', () => {
    const merged = mergeOf(known, [
      { path: 'implement.driven', value: true },
      { path: 'implement.standOut', value: 60 },
    ]);
    expect(merged).toEqual([
      { path: 'implement.driven', before: false, after: true, state: 'differs' },
      { path: 'implement.standOut', before: undefined, after: 60, state: 'new' },
    ]);
  });
});
