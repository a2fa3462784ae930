import { expect, test } from 'vitest';
import { finding } from '../asked.ts';
import type { SetupDocument } from '../../src/records/index.ts';

/** A brace over a post, both drawn from behind and from the side, on a mast that leans so far forward of its pins [mm]. */
function braceOverPost(forward: number): SetupDocument {
  const box = (from: number, to: number, low: number, high: number): number[][] => [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ];
  const post = { name: 'post', part: 'post', rear: box(300, 360, 20, 80), side: box(200, 400, 20, 80) };
  const brace = { name: 'brace', part: 'brace', rear: box(300, 360, 100, 160), side: box(150, 250, 100, 160) };
  return {
    hitchwright: 1,
    units: 'metric',
    tractor: {},
    coupler: {
      kind: 'uFrame',
      ...{ hookBehind: 100, hookRise: 0, topHookHeight: 460, topHookBehind: 0, outlines: [post] },
    },
    implement: { mounting: 'threePoint', mastHeight: 455, mastSetback: -forward, outlines: [brace] },
  };
}

test('what stands behind the pins comes down as the implement turns, seen from behind too', () => {
  expect(finding(braceOverPost(0), 'rear.room')).toMatchObject({ status: 'pass', margin: { low: 20, high: 20 } });
  // Turned by 8.7° its far lower corner stands at 100·cos − 250·sin = 61, 19 below the top of the post.
  const turn = Math.atan2(70, 455);
  const far = 100 * Math.cos(turn) - 250 * Math.sin(turn);
  const { status, margin } = finding(braceOverPost(70), 'rear.room');
  expect(status).not.toBe('pass');
  expect(margin?.low).toBeCloseTo(far - 80, 0);
});
