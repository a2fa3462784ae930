import { describe } from 'vitest';
import { holdsInShort } from './inTests.ts';

describe('the second half of the setups', () => holdsInShort(Array.from({ length: 100 }, (_, i) => 100 + i)));
