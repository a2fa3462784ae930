import { describe } from 'vitest';
import { everyOther, holdsInShort } from './inTests.ts';

describe('the second half of the setups', () => holdsInShort(everyOther(1)));
