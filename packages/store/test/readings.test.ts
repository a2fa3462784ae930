import { describe, expect, it } from 'vitest';
import { Conflict, NotFound, Refused } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller } from './yard.ts';

const guess = { field: 'mastHeight', leaf: { between: [440, 480] }, grade: 'guessed' as const };
const tape = {
  field: 'mastHeight',
  leaf: { value: 470, plusMinus: 1.5 },
  grade: 'measured' as const,
  readAt: '2026-09-10',
};

describe.each(databases)('readings on $name', ({ fresh }) => {
  it('stay side by side; one is in use, and a conflict is told', async () => {
    const store = await opened(await fresh());
    const { id, readings } = await store.records.create(ida, tiller);
    const [first] = readings;
    await store.readings.add(bo, id, [guess]);
    const { inUse, readings: all } = await store.readings.add(bo, id, [tape]);
    const [later] = all.filter(({ leaf }) => (leaf as { value?: number }).value === 470);
    expect(all.filter(({ field }) => field === 'mastHeight')).toHaveLength(3);
    expect(inUse['mastHeight']).toEqual({
      id: later?.id,
      because: 'latest',
      conflicts: [{ readings: [first?.id, later?.id], apartBy: 10 }],
    });
  });

  it('may be pinned, one of each field, and the pin moves', async () => {
    const store = await opened(await fresh());
    const { id, readings } = await store.records.create(ida, tiller);
    const added = await store.readings.add(bo, id, [guess]);
    const guessed = added.readings.at(-1)?.id ?? '';
    const first = readings[0]?.id ?? '';
    const pinned = await store.readings.pin(ida, id, 2, guessed);
    expect(pinned.inUse['mastHeight']).toMatchObject({ id: guessed, because: 'pinned' });
    const moved = await store.readings.pin(ida, id, 3, first);
    expect(moved.inUse['mastHeight']).toMatchObject({ id: first, because: 'pinned' });
    expect(moved.readings.filter(({ pinnedAt }) => pinnedAt !== null)).toHaveLength(1);
    const loose = await store.readings.unpin(ida, id, 4, first);
    expect(loose.inUse['mastHeight']).toMatchObject({ id: first, because: 'grade' });
    expect(await store.records.get(id)).toEqual(loose);
  });

  it('may be pinned as they are written down', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    const first = await store.readings.add(bo, id, [{ ...guess, pin: true }]);
    expect(first.inUse['mastHeight']).toMatchObject({ because: 'pinned' });
    const second = await store.readings.add(bo, id, [{ ...tape, pin: true }]);
    expect(second.inUse['mastHeight']).toMatchObject({ id: second.readings.at(-1)?.id, because: 'pinned' });
  });

  it('no longer count when they are withdrawn, and stay in the history', async () => {
    const store = await opened(await fresh());
    const { id, readings } = await store.records.create(ida, tiller);
    const first = readings[0]?.id ?? '';
    const left = await store.readings.withdraw(bo, id, 1, first);
    expect(left.readings.map(({ field }) => field)).toEqual(['shoulderSpan']);
    expect(left.inUse['mastHeight']).toBeUndefined();
    expect((await store.history.of(id)).at(-1)).toMatchObject({
      what: 'reading',
      key: first,
      before: { withdrawnAt: null },
      group: { who: 'Bo' },
    });
    expect(await thrownBy(store.readings.withdraw(bo, id, 2, first))).toBeInstanceOf(NotFound);
    expect(await thrownBy(store.readings.pin(bo, id, 2, first))).toBeInstanceOf(NotFound);
  });

  it('never get in anybody’s way when they are added; pins and withdrawals do', async () => {
    const store = await opened(await fresh());
    const { id, readings } = await store.records.create(ida, tiller);
    const first = readings[0]?.id ?? '';
    await store.readings.add(bo, id, [tape]);
    await store.readings.add(ida, id, [guess]);
    for (const late of [store.readings.pin(ida, id, 1, first), store.readings.withdraw(ida, id, 1, first)])
      expect(await thrownBy(late)).toBeInstanceOf(Conflict);
  });

  it('are read as their field is read; a customer takes none', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, { kind: 'customer', name: 'Ada Brook' });
    const problem = await thrownBy(store.readings.add(ida, id, [tape]));
    expect((problem as Refused).errors).toMatchObject([{ code: 'unknown-key', path: 'mastHeight' }]);
    const part = { kind: 'lowerBushings', price: { amount: 14, currency: 'USD' } };
    const bushing = await store.records.create(ida, { kind: 'part', name: 'bushings', fields: part });
    await store.readings.add(ida, bushing.id, [{ field: 'inside', leaf: '7/8', grade: 'listed' }]);
    const wrong = await thrownBy(store.readings.add(ida, bushing.id, [{ field: 'mass', leaf: 3, grade: 'listed' }]));
    expect((wrong as Refused).errors).toMatchObject([{ code: 'unknown-key', path: 'mass' }]);
    const range = await thrownBy(
      store.readings.add(ida, bushing.id, [{ field: 'inside', leaf: 900, grade: 'listed' }]),
    );
    expect((range as Refused).errors).toMatchObject([{ code: 'out-of-range', path: 'inside' }]);
  });

  it('carry a photo', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 1, 2, 255, 254, 10, 13, 0]);
    const note = await store.photos.add(bo, { recordId: id, field: 'mastHeight', jpeg });
    const { readings } = await store.readings.add(bo, id, [{ ...tape, photoId: note.id }]);
    expect(readings.at(-1)?.photoId).toBe(note.id);
    expect(await store.photos.get(note.id)).toEqual({ ...note, jpeg });
    expect(await store.photos.of(id)).toEqual([note]);
    const elsewhere = await store.records.create(ida, { ...tiller, name: 'another' });
    for (const photoId of [note.id, 'none']) {
      const strange = await thrownBy(store.readings.add(bo, elsewhere.id, [{ ...tape, photoId }]));
      expect((strange as Refused).errors).toMatchObject([{ path: 'mastHeight.photoId' }]);
    }
    const other = await thrownBy(store.photos.add(bo, { recordId: id, field: '', jpeg: Uint8Array.from([1, 2, 3]) }));
    expect(other).toBeInstanceOf(Refused);
    expect(await thrownBy(store.photos.get('none'))).toBeInstanceOf(NotFound);
  });
});
