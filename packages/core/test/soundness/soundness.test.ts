import { describe, expect, test } from 'vitest';
import { everyOther, holdsInShort, seed } from './inTests.ts';
import { setupOf } from './setups.ts';

describe('the first half of the setups', () => holdsInShort(everyOther(0)));

test('a setup is the same whenever it is made', () => {
  for (const number of [0, 7, 31]) expect(setupOf(seed, number)).toEqual(setupOf(seed, number));
  expect(setupOf(seed + 1, 7).document).not.toEqual(setupOf(seed, 7).document);
});
