import { expect, test } from 'vitest';
import type { Finding } from '../engine/findings/index.ts';
import { askOf, asksOf } from './asks.ts';

const closed = 'shaft.closedLength';

function open(id: Finding['id'], passes: Finding['asks'][number]['passes'], path = closed): Finding {
  return {
    id,
    status: 'undecided',
    core: true,
    side: null,
    margin: null,
    unit: 'mm',
    asks: [{ path, passes, fails: [] }],
    conflictsWith: [],
  } as unknown as Finding;
}

const shortest = open('shaft.bottoming', [{ low: 0, high: 526 }]);
const overlap = open('shaft.overlap', [{ low: 720, high: 1e9 }]);

test('a figure decides a check, not the whole answer: other checks of it may fail', () => {
  expect(askOf(shortest, 'metric')).toMatch(/526 mm .* or less and the shaft does not bottom/);
  expect(askOf(overlap, 'metric')).toMatch(/720 mm .* or more and its halves overlap enough/);
  expect(askOf(open('balance.frontShare', [{ low: 500, high: 1e9 }], 'tractor.frontAxleMass'), 'metric')).toMatch(
    /and enough stays on the front axle\./,
  );
});

test('a figure that decides several checks is asked for once', () => {
  const asks = asksOf([shortest, overlap, { ...overlap, id: 'front.span', status: 'pass' }], 'metric');
  expect(asks).toHaveLength(1);
  expect(asks[0]?.text).toMatch(
    /^Measure the .*\. What it settles by itself: “Shaft at its shortest” with 526 mm .* or less; “Overlap while it turns” with 720 mm .* or more\.$/,
  );
});

test('what does not decide by itself is asked for by name', () => {
  const [one] = asksOf([open('shaft.overlap', [])], 'metric');
  expect(one?.text).toMatch(/^Find out the closed length/);
});

test('a check without words of its own is named, and only lengths are read with a caliper', () => {
  const narrow = { low: 300, high: 300.01 };
  expect(askOf(open('limit.rearAxle', [narrow], 'implement.mass'), 'metric')).toMatch(
    /: about 300 kg .*, read closely, and “.*axle.*” holds\./,
  );
  expect(askOf(open('shaft.overlap', [narrow]), 'metric')).toMatch(/, read with a caliper, and its halves overlap/);
});
