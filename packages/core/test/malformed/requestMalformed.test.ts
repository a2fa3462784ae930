import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergeOf } from '../../src/engine/readings/index.ts';
import { readReplyLink, readRequestLink, replyLinkOf, requestLinkOf } from '../../src/exchange/index.ts';
import {
  readReply,
  readRequest,
  withEdits,
  type InputError,
  type InputErrorCode,
  type MeasuringReply,
  type MeasuringRequest,
} from '../../src/records/index.ts';
import { setup } from '../scenarios/yard.ts';

const request: MeasuringRequest = {
  hitchwrightRequest: 1,
  id: 'q7m2x9ab',
  asks: 'Yard desk',
  when: '2026-11-25T08:30Z',
  fields: ['implement.mastHeight', 'tractor.ballSpan', 'implement.mounting', 'shaft.triedByHand'],
  setup: setup('35', 'U-28', 'tiller'),
};

const reply: MeasuringReply = {
  hitchwrightReply: 1,
  request: 'q7m2x9ab',
  who: 'Jo',
  when: '2026-11-25T17:05:30Z',
  readings: [
    { path: 'implement.mastHeight', value: { value: '18 1/16 in', plusMinus: 1.5, tool: 'tape' } },
    { path: 'tractor.ballSpan', value: { adjustable: { between: [640, { value: 760, plusMinus: 1.5 }] } } },
    { path: 'implement.mounting', value: 'threePoint' },
    { path: 'tractor.ptoSpeeds', value: [540, 1000] },
    { path: 'implement.driven', value: true },
    { path: 'coupler.kind', value: 'uFrame' },
  ],
  left: ['implement.mass'],
  photos: [{ path: 'implement.mastHeight', jpeg: 'data:image/jpeg;base64,AAAA' }],
};

type Case = readonly [title: string, part: Record<string, unknown>, code: InputErrorCode, path: string];
const reading = (path: string, value: unknown) => ({ readings: [{ path, value }] });
const long = 'x'.repeat(100_000);
const hostile = JSON.parse('{"__proto__":{"polluted":true},"value":457}') as unknown;

const requests: readonly Case[] = [
  ['another version', { hitchwrightRequest: 2 }, 'version', 'hitchwrightRequest'],
  ['no version', { hitchwrightRequest: undefined }, 'missing', 'hitchwrightRequest'],
  ['a reply for a request', { ...reply, hitchwrightRequest: undefined }, 'unknown-key', 'hitchwrightReply'],
  ['an id with capitals', { id: 'ABCD' }, 'wrong-type', 'id'],
  ['an id that is a number', { id: 1234 }, 'wrong-type', 'id'],
  ['a long name', { asks: long }, 'out-of-range', 'asks'],
  ['a day for a moment', { when: '2026-11-25' }, 'wrong-type', 'when'],
  ['no fields', { fields: [] }, 'out-of-range', 'fields'],
  ['81 fields', { fields: Array(81).fill('implement.mass') }, 'out-of-range', 'fields'],
  ['fields that are no list', { fields: 'implement.mass' }, 'wrong-type', 'fields'],
  ['a path to the prototype', { fields: ['implement.mass', 'tractor.__proto__'] }, 'wrong-type', 'fields.1'],
  ['a path to the constructor', { fields: ['implement.constructor'] }, 'unknown-key', 'fields.0'],
  ['a path through a list', { fields: ['parts.0.name'] }, 'wrong-type', 'fields.0'],
  ['a path without end', { fields: [`implement.${long}`] }, 'wrong-type', 'fields.0'],
  ['a field that there is not', { fields: ['implement.colour'] }, 'unknown-key', 'fields.0'],
  ['a path into a figure', { fields: ['implement.mastHeight.value'] }, 'unknown-key', 'fields.0'],
  ['a path into a choice', { fields: ['implement.mounting.word'] }, 'unknown-key', 'fields.0'],
  ['no setup', { setup: undefined }, 'missing', 'setup'],
  ['a list for a setup', { setup: [] }, 'wrong-type', 'setup'],
  [
    'a setup of another version',
    { setup: { hitchwright: 2, tractor: {}, implement: {} } },
    'version',
    'setup.hitchwright',
  ],
  [
    'a setup with a misspelt field',
    { setup: { hitchwright: 1, tractor: {}, implement: { mastHieght: 1 } } },
    'unknown-key',
    'setup.implement.mastHieght',
  ],
  [
    'a setup that reaches for the prototype',
    { setup: JSON.parse('{"hitchwright":1,"tractor":{},"implement":{},"__proto__":{"polluted":true}}') as unknown },
    'unknown-key',
    'setup.__proto__',
  ],
];

const replies: readonly Case[] = [
  ['another version', { hitchwrightReply: 9 }, 'version', 'hitchwrightReply'],
  ['an id of punctuation', { request: '../../etc' }, 'wrong-type', 'request'],
  ['81 readings', { readings: Array(81).fill({ path: 'implement.mass', value: 1 }) }, 'out-of-range', 'readings'],
  ['readings that are no list', { readings: { path: 'implement.mass' } }, 'wrong-type', 'readings'],
  ['a reading without a path', { readings: [{ value: 1 }] }, 'missing', 'readings.0.path'],
  [
    'a reading with more in it',
    { readings: [{ path: 'implement.mass', value: 300, run: 1 }] },
    'unknown-key',
    'readings.0.run',
  ],
  ['a path to the prototype', reading('implement.__proto__', 1), 'wrong-type', 'readings.0.path'],
  ['a path to the constructor', reading('implement.constructor', 'x'), 'unknown-key', 'implement.constructor'],
  ['a whole machine', reading('implement', {}), 'wrong-type', 'readings.0.path'],
  ['a whole row of pins', reading('implement.secondRow', { standOut: 60 }), 'wrong-type', 'implement.secondRow'],
  ['outlines', reading('tractor.outlines', [[0, 0]]), 'wrong-type', 'tractor.outlines'],
  ['a field that there is not', reading('implement.colour', 'red'), 'unknown-key', 'implement.colour'],
  ['a word for a length', reading('implement.mastHeight', 'tall'), 'not-a-quantity', 'implement.mastHeight'],
  ['a list for a length', reading('implement.mastHeight', [457]), 'wrong-type', 'implement.mastHeight'],
  ['no value', { readings: [{ path: 'implement.driven' }] }, 'missing', 'readings.0.value'],
  ['a length out of its range', reading('implement.mastHeight', 45_700), 'out-of-range', 'implement.mastHeight'],
  ['100,000 letters for a length', reading('implement.mastHeight', long), 'not-a-quantity', 'implement.mastHeight'],
  ['100,000 letters for a choice', reading('implement.mounting', long), 'wrong-type', 'implement.mounting'],
  ['a choice that there is not', reading('implement.mounting', 'glued'), 'not-a-choice', 'implement.mounting'],
  ['a word for yes or no', reading('implement.driven', 'yes'), 'wrong-type', 'implement.driven'],
  ['a speed that there is not', reading('tractor.ptoSpeeds', [5]), 'out-of-range', 'tractor.ptoSpeeds.0'],
  ['words for speeds', reading('tractor.ptoSpeeds', ['540']), 'wrong-type', 'tractor.ptoSpeeds'],
  ['a figure without its unit', reading('implement.mastHeight', '457'), 'ambiguous', 'implement.mastHeight'],
  [
    'a tolerance without its unit',
    reading('implement.mastHeight', { value: '457 mm', plusMinus: '1' }),
    'ambiguous',
    'implement.mastHeight',
  ],
  ['one figure for what is set', reading('tractor.ballSpan', 700), 'contradiction', 'tractor.ballSpan'],
  [
    'an adjuster where nothing is set',
    reading('implement.lowerPinDiameter', { adjustable: { between: [20, 24] } }),
    'contradiction',
    'implement.lowerPinDiameter',
  ],
  ['a path into a figure', reading('implement.mastHeight.value', 457), 'unknown-key', 'implement.mastHeight.value'],
  ['a path into a choice', reading('implement.mounting.word', 'x'), 'not-a-choice', 'implement.mounting'],
  [
    'a value that reaches for the prototype',
    reading('implement.mastHeight', hostile),
    'unknown-key',
    'implement.mastHeight.__proto__',
  ],
  [
    'one field twice',
    { readings: [457, 470].map((value) => ({ path: 'implement.mastHeight', value })) },
    'contradiction',
    'implement.mastHeight',
  ],
  ['a field left that there is not', { left: ['implement.colour'] }, 'unknown-key', 'left.0'],
  [
    'a picture that is none',
    { photos: [{ path: 'implement.mass', jpeg: 'data:text/html,<b>' }] },
    'wrong-type',
    'photos.0.jpeg',
  ],
  ['a name of 100,000 letters', { who: long }, 'out-of-range', 'who'],
];

function expectRefused(errors: readonly InputError[] | undefined, code: InputErrorCode, path: string): void {
  expect(errors?.map((error) => `${error.code} ${error.path}`)).toContain(`${code} ${path}`);
  for (const { expected, hint, got } of errors ?? []) {
    expect(expected).not.toBe('');
    expect(hint).not.toBe('');
    expect(got.length).toBeLessThanOrEqual(80);
  }
}

const errorsIn = (read: { ok: boolean; errors?: readonly InputError[] }) => (read.ok ? undefined : read.errors);

describe('malformed requests and replies', () => {
  test('the sound ones are read', () => {
    expect(readRequest(request)).toEqual({ ok: true, value: request });
    expect(readReply(reply)).toEqual({ ok: true, value: reply });
    const holes = { ...reply, readings: [{ path: 'implement.mastSetback', value: { adjustable: { at: [0, 10] } } }] };
    expect(readReply(holes)).toMatchObject({ ok: true });
  });
  for (const [title, part, code, path] of requests)
    test(`request, ${title}: ${code} at ${path}`, () => {
      expectRefused(errorsIn(readRequest({ ...request, ...part })), code, path);
    });
  for (const [title, part, code, path] of replies)
    test(`reply, ${title}: ${code} at ${path}`, () => {
      expectRefused(errorsIn(readReply({ ...reply, ...part })), code, path);
    });
  test('what is no object at all', () => {
    for (const raw of [null, undefined, 7, 'x', [], true])
      for (const read of [readRequest, readReply])
        expectRefused(errorsIn(read(raw)), raw === undefined ? 'missing' : 'wrong-type', '');
  });
  test('nothing of it reached a prototype', () => {
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

/** Something else in the place of a node: of another kind, hostile, or far too long. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(null, [], {}, '', long, -1, 1e308, true, '__proto__', hostile, [[]], { value: [] }),
  fc.anything({ maxDepth: 3, withNullPrototype: true }),
);

/** The same document with one node changed, taken away, doubled or added to. */
function mutated(document: unknown, pick: number, kind: number, instead: unknown): unknown {
  const paths = nodesOf(document);
  return changed(document, paths[pick % paths.length] ?? [], kind, instead);
}

function nodesOf(node: unknown): (readonly string[])[] {
  if (typeof node !== 'object' || node === null) return [[]];
  return [[], ...Object.entries(node).flatMap(([key, below]) => nodesOf(below).map((path) => [key, ...path]))];
}

function changed(node: unknown, [key, ...rest]: readonly string[], kind: number, instead: unknown): unknown {
  if (key === undefined)
    return kind % 4 === 3 && Array.isArray(node) ? [...(node as unknown[]), ...(node as unknown[])] : instead;
  const record = node as Record<string, unknown>;
  if (rest.length === 0 && kind % 4 === 1) {
    const others = Object.entries(record).filter(([name]) => name !== key);
    return Array.isArray(node) ? node.slice(1) : Object.fromEntries(others);
  }
  if (rest.length === 0 && kind % 4 === 2 && !Array.isArray(node)) return { ...record, [`${key}2`]: instead };
  const below = changed(record[key], rest, kind, instead);
  return Array.isArray(node)
    ? (node as unknown[]).map((one, i) => (String(i) === key ? below : one))
    : { ...record, [key]: below };
}

describe('broken at random', () => {
  test('1,500 changed requests and replies are read or refused with a hint, and never thrown', () => {
    const told = { read: 0, refused: 0 };
    fc.assert(
      fc.property(fc.boolean(), fc.nat(), fc.nat(), odd, (isRequest, pick, kind, instead) => {
        const broken = mutated(isRequest ? request : reply, pick, kind, instead);
        const read = isRequest ? readRequest(broken) : readReply(broken);
        if (!read.ok) {
          told.refused += 1;
          expect(read.errors.length).toBeGreaterThan(0);
          for (const { hint, got } of read.errors) expect(hint === '' || got.length > 80).toBe(false);
          return;
        }
        told.read += 1;
        if ('readings' in read.value) {
          const { readings } = read.value;
          expect(mergeOf(request.setup, readings).length).toBe(readings.length);
          withEdits(request.setup, readings);
        }
      }),
      { numRuns: 1500 },
    );
    expect(told.refused).toBeGreaterThan(700);
    expect(told.read).toBeGreaterThan(20);
  });
  test('1,000 links with letters changed, cut or added are read or refused, and never thrown', () => {
    const links = [requestLinkOf(request), replyLinkOf(reply)];
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=#% ü';
    let refused = 0;
    fc.assert(
      fc.property(fc.nat(1), fc.nat(), fc.nat(letters.length - 1), fc.nat(3), (which, place, letter, kind) => {
        const link = links[which] as string;
        const at = place % link.length;
        const other = letters[letter] as string;
        const broken = [
          link.slice(0, at) + other + link.slice(at + 1),
          link.slice(0, at),
          link.slice(0, at) + other + link.slice(at),
          link.slice(0, at) + link.slice(at + 1 + (place % 7)),
        ][kind] as string;
        for (const read of [readRequestLink(broken), readReplyLink(broken)]) {
          if (read.ok) continue;
          refused += 1;
          for (const { hint } of read.errors) expect(hint).not.toBe('');
        }
      }),
      { numRuns: 1000 },
    );
    expect(refused).toBeGreaterThan(1500);
  });
  test('a link of 100,000 characters is refused', () => {
    expect(readRequestLink(`ask=1.${long}`).ok).toBe(false);
    expect(readReplyLink(`reply=1.${long}`).ok).toBe(false);
  });
});
