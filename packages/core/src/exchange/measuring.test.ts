import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { assess, type Answer } from '../engine/assess/index.ts';
import { mergeOf } from '../engine/readings/index.ts';
import {
  setupFrom,
  withEdits,
  type MeasuringReply,
  type MeasuringRequest,
  type SetupDocument,
  type YardDocument,
} from '../records/index.ts';
import { readReplyLink, readRequestLink, replyLinkOf, requestLinkOf } from './measuring.ts';
import { longestQrText } from './qr.ts';

const yard = JSON.parse(
  readFileSync(new URL('../../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;

/** Every pairing of the yard. */
const setups = yard.tractors.flatMap((tractor) =>
  [null, ...yard.couplers].flatMap((coupler) =>
    yard.implements.map((implement) => setupFrom(yard, tractor, coupler, implement)),
  ),
);

function requestFor(setup: SetupDocument): MeasuringRequest {
  return {
    hitchwrightRequest: 1,
    id: 'q7m2x9ab',
    asks: 'Yard desk',
    of: 'a customer',
    when: '2026-11-25T08:30Z',
    fields: ['implement.shoulderSpan', 'implement.mastHeight', 'implement.mastSetback', 'implement.mass'],
    setup,
  };
}

function answerTo(document: SetupDocument): Answer {
  const assessment = assess(document, { full: false });
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return assessment.answer;
}

function setupSent(setup: SetupDocument): SetupDocument {
  const reading = readRequestLink(`#${requestLinkOf(requestFor(setup))}`);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.value.setup;
}

describe('requests as links', () => {
  test('everything but what stays at home comes back', () => {
    const request = requestFor(setups[0] as SetupDocument);
    const reading = readRequestLink(requestLinkOf(request));
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    expect(reading.value).toMatchObject({ ...request, setup: { hitchwright: 1, units: 'us' } });
    expect(reading.value.setup['parts']).toBeUndefined();
    expect(JSON.stringify(reading.value.setup)).not.toMatch(/"(?:who|when|method|note|source)":/);
    expect(JSON.stringify(reading.value.setup)).toContain('"from":"shaftEnd"');
  });
  test('what stays at home changes no finding and no verdict but by the parts', () => {
    const some = setups.filter((_, i) => i % 17 === 3);
    expect(some.length).toBeGreaterThan(12);
    for (const setup of some) {
      const [here, there] = [
        answerTo(withEdits(setup, [{ path: 'parts', value: undefined }])),
        answerTo(setupSent(setup)),
      ];
      const told = ({ verdict, outcomes, findings }: Answer) => ({
        verdict,
        outcomes,
        findings: findings.map(({ id, status, side, margin }) => ({ id, status, side, margin })),
      });
      expect(told(there)).toEqual(told(here));
    }
  });
});

describe('requests of the sample yard as codes', () => {
  let lengths: readonly number[] = [];
  const address = 60;
  beforeAll(() => {
    lengths = setups.map((setup) => requestLinkOf(requestFor(setup)).length).sort((a, b) => a - b);
  });
  test('every pairing fits into one code, with 60 characters of address before it', () => {
    expect(lengths.length).toBe(yard.tractors.length * (yard.couplers.length + 1) * yard.implements.length);
    expect((lengths.at(-1) as number) + address).toBeLessThanOrEqual(longestQrText);
  });
  test('who, when and how stay at home: a figure takes up the same room with them', () => {
    const said = withEdits(setups[3] as SetupDocument, [
      {
        path: 'implement.mass',
        value: { value: 318, plusMinus: 6, method: 'on the crane scale by the gate', who: 'Jo' },
      },
    ]);
    const plain = withEdits(said, [{ path: 'implement.mass', value: { value: 318, plusMinus: 6 } }]);
    expect(requestLinkOf(requestFor(said))).toBe(requestLinkOf(requestFor(plain)));
  });
});

const reply: MeasuringReply = {
  hitchwrightReply: 1,
  request: 'q7m2x9ab',
  who: 'Иван 犁',
  when: '2026-11-26T17:05:30Z',
  readings: [
    { path: 'implement.mastHeight', value: { value: '18 1/16 in', plusMinus: 1.5, tool: 'tape', when: '2026-11-26' } },
    {
      path: 'tractor.ballSpan',
      value: {
        adjustable: {
          between: [
            { value: 640, plusMinus: 1.5 },
            { value: 760, plusMinus: 1.5 },
          ],
        },
      },
    },
    { path: 'implement.mounting', value: 'threePoint' },
    { path: 'tractor.ptoSpeeds', value: [540, 1000] },
    { path: 'implement.driven', value: false },
  ],
  left: ['implement.mass'],
};

describe('replies as links', () => {
  test('come back whole, photos left out', () => {
    const photo = { path: 'implement.mastHeight', jpeg: 'data:image/jpeg;base64,AAAA' };
    expect(readReplyLink(`#${replyLinkOf({ ...reply, photos: [photo] })}`)).toEqual({ ok: true, value: reply });
  });
  test('and what they say is taken over once: a second time there is nothing new', () => {
    const reading = readReplyLink(replyLinkOf(reply));
    const { readings } = (reading as { value: MeasuringReply }).value;
    const setup = setups[1] as SetupDocument;
    expect(mergeOf(setup, readings).map(({ state }) => state)).toEqual([
      'agrees',
      'agrees',
      'same',
      'differs',
      'differs',
    ]);
    const after = withEdits(setup, readings);
    expect(mergeOf(after, readings).map(({ state }) => state)).toEqual(readings.map(() => 'same'));
  });
  test('one is not read as the other', () => {
    expect(readReplyLink(requestLinkOf(requestFor(setups[0] as SetupDocument))).ok).toBe(false);
    expect(readRequestLink(replyLinkOf(reply)).ok).toBe(false);
  });
});
