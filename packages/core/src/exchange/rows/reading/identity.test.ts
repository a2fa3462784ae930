import { describe, expect, test } from 'vitest';
import { identityOf, keyOf, recordIndex, type Identity } from './identity.ts';

const one = (name: string, more: Partial<Identity> = {}): Identity => ({
  kind: 'implement',
  id: null,
  name,
  variant: null,
  ...more,
});

describe('finding a record again', () => {
  test('by its name, whatever its case, accents and signs', () => {
    const index = recordIndex();
    index.add(one('Wickset 60-in tiller'), 'a');
    index.add(one('Größe 2'), 'b');
    expect(index.find(one('WICKSET  60 IN, Tiller'))).toEqual({ kind: 'same', ref: 'a' });
    expect(index.find(one('grosse 2'))).toEqual({ kind: 'new' });
    expect(index.find(one('Große 2'))).toEqual({ kind: 'same', ref: 'b' });
    expect(index.find(one('Wickset 60-in tiller', { kind: 'tractor' }))).toEqual({ kind: 'new' });
  });

  test('by its number before its name; another number is another record', () => {
    const index = recordIndex();
    index.add(one('Tiller', { id: 'S-1' }), 'a');
    expect(index.find(one('Tiller, repainted', { id: 's 1' }))).toEqual({ kind: 'same', ref: 'a' });
    expect(index.find(one('Tiller', { id: 'S-2' }))).toEqual({ kind: 'new' });
    expect(index.find(one('Tiller'))).toEqual({ kind: 'same', ref: 'a' });
  });

  test('a category that only one of them says does not part them; another one does', () => {
    const index = recordIndex();
    index.add(one('Rake'), 'a');
    expect(index.find(one('Rake', { variant: '1' }))).toEqual({ kind: 'same', ref: 'a' });
    index.add(one('Rake', { variant: '1' }), 'a');
    expect(index.find(one('Rake', { variant: '2' }))).toEqual({ kind: 'new' });
  });

  test('where several may be meant it says so', () => {
    const index = recordIndex();
    index.add(one('Rake', { variant: '1' }), 'a');
    index.add(one('Rake', { variant: '2' }), 'b');
    expect(index.find(one('Rake'))).toEqual({ kind: 'unclear', refs: ['a', 'b'] });
    expect(index.find(one('Rake', { variant: '2' }))).toEqual({ kind: 'same', ref: 'b' });
  });

  test('a kept record’s number is read off its key', () => {
    const key = keyOf(one('Tiller', { id: 'S-1' }));
    const kept = identityOf({ kind: 'implement', key, name: 'Tiller', fields: { category: '1' } });
    const index = recordIndex();
    index.add(kept, 'a');
    expect(index.find(one('Other name', { id: 'S-1' }))).toEqual({ kind: 'same', ref: 'a' });
  });

  test('names of nothing but signs are told apart', () => {
    expect(keyOf(one('🚜'))).not.toBe(keyOf(one('🐄')));
  });
});
