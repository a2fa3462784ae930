import { readSetup, setupFrom, type Setup, type SetupDocument } from '@hitchwright/core/records';
import { describe, expect, it } from 'vitest';
import { NotFound, type RecordDraft, type Refused, type Store } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, idOf, sampleYard, tiller, tractor, withSampleYard } from './yard.ts';

/** A setup as the engine reads it; the order of its parts and whom they name beside this implement are no matter. */
function read(document: SetupDocument): Setup {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const parts = (reading.setup.parts ?? []).map((part) => ({ ...part, fits: [] }));
  return { ...reading.setup, units: 'us', parts: [...parts].sort((a, b) => (a.name < b.name ? -1 : 1)) };
}

async function machineOver(store: Store, model: string) {
  const owner = await store.records.create(ida, { kind: 'customer', name: 'Ada Brook' });
  return store.records.create(ida, { kind: 'machine', name: 'Ada’s Ostrey', model, owner: owner.id });
}

describe.each(databases)('setups on $name', ({ fresh }) => {
  it('are read by the engine as those of the yard document are, for every tractor, coupler and implement of the sample', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    const named = ({ name }: SetupDocument): string => idOf(ids, String(name));
    let compared = 0;
    for (const one of sampleYard.tractors)
      for (const coupler of [null, ...sampleYard.couplers.slice(0, 2)])
        for (const implement of sampleYard.implements) {
          const refs = { tractor: named(one), implement: named(implement), parts: 'fitting' as const };
          const { setup } = await store.setupFor(coupler === null ? refs : { ...refs, coupler: named(coupler) });
          expect(read(setup)).toEqual(read(setupFrom(sampleYard, one, coupler, implement)));
          compared += 1;
        }
    expect(compared).toBe(3 * 3 * sampleYard.implements.length);
  });

  it('say which reading each value came from', async () => {
    const store = await opened(await fresh());
    const one = await store.records.create(ida, tractor);
    const other = await store.records.create(ida, tiller);
    const { sources, setup } = await store.setupFor({ tractor: one.id, implement: other.id });
    expect(setup).toMatchObject({
      tractor: { name: 'Ostrey 35', ptoSpeeds: [540] },
      implement: { mastHeight: { value: 457 } },
    });
    expect(sources.map(({ path, reading, because }) => [path, reading.recordId, because])).toEqual([
      ['tractor.ballSpan', one.id, 'only'],
      ['tractor.lowerBallBore', one.id, 'only'],
      ['implement.mastHeight', other.id, 'only'],
      ['implement.shoulderSpan', other.id, 'only'],
    ]);
    expect(setup['implement']).not.toHaveProperty('price');
  });

  it('take of a machine what it has of its own and else what its model has now', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, tractor);
    const machine = await machineOver(store, model.id);
    const implement = await store.records.create(ida, tiller);
    const refs = { tractor: machine.id, implement: implement.id };
    await store.readings.add(bo, machine.id, [
      { field: 'lowerBallBore', leaf: 22.1, grade: 'guessed' },
      { field: 'ballSpan', leaf: null, grade: 'measured' },
      { field: 'mass', leaf: { unknown: true }, grade: 'measured' },
    ]);
    const before = (await store.setupFor(refs)).setup['tractor'];
    expect(before).toMatchObject({
      name: 'Ada’s Ostrey',
      category: '1',
      lowerBallBore: 22.1,
      ballSpan: { adjustable: {} },
      mass: { unknown: true },
    });
    await store.readings.add(bo, model.id, [
      { field: 'lowerBallBore', leaf: 25, grade: 'measured' },
      { field: 'wheelbase', leaf: 1720, grade: 'measured' },
    ]);
    await store.records.change(bo, model.id, 2, { fields: { category: '2', remotes: 2 } });
    await store.records.change(bo, machine.id, 2, { fields: { remotes: 3 } });
    expect((await store.setupFor(refs)).setup['tractor']).toMatchObject({
      category: '2',
      remotes: 3,
      lowerBallBore: 22.1,
      wheelbase: 1720,
    });
  });

  it('lay a state over its tractor and over machines that are one of it', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, tractor);
    const machine = await machineOver(store, model.id);
    const implement = await store.records.create(ida, tiller);
    const state = await store.records.create(ida, {
      kind: 'state',
      name: 'loader on',
      parent: model.id,
      fields: { loader: 'empty' },
      readings: [{ field: 'loaderMass', leaf: 430, grade: 'measured' }],
    });
    for (const { id } of [model, machine]) {
      const { setup } = await store.setupFor({ tractor: id, state: state.id, implement: implement.id });
      expect(setup['tractor']).toMatchObject({ loader: 'empty', loaderMass: 430, lowerBallBore: { value: 22.4 } });
    }
    const other = await store.records.create(ida, { ...tractor, name: 'another' });
    const strange = store.setupFor({ tractor: other.id, state: state.id, implement: implement.id });
    expect(await thrownBy(strange)).toBeInstanceOf(NotFound);
  });

  it('take the shaft that is meant, the one that is asked for, or none', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    const refs = { tractor: idOf(ids, 'Ostrey 35'), implement: idOf(ids, 'Wickset 60-in tiller') };
    const shaftOf = async (more: { shaft?: string | null }): Promise<unknown> =>
      ((await store.setupFor({ ...refs, ...more })).setup['shaft'] as { name?: unknown } | undefined)?.name;
    expect(await shaftOf({})).toBe('shaft of the Wickset 60-in tiller');
    expect(await shaftOf({ shaft: null })).toBeUndefined();
    const medium = 'medium shaft, closed 23 in, from the shelf';
    expect(await shaftOf({ shaft: idOf(ids, medium) })).toBe(medium);
  });

  it('find the shaft and the parts of a model for a machine that is one of it', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    const machine = await machineOver(store, idOf(ids, 'Wickset 60-in tiller'));
    const { setup } = await store.setupFor({
      tractor: idOf(ids, 'Ostrey 35'),
      implement: machine.id,
      parts: 'fitting',
    });
    expect(setup).toMatchObject({ shaft: { name: 'shaft of the Wickset 60-in tiller' } });
    expect(setup['parts']).toContainEqual(expect.objectContaining({ kind: 'driveShaft', fits: ['Ada’s Ostrey'] }));
    expect(readSetup(setup).ok).toBe(true);
  });

  it('offer what is invented with what is invented, and never with what is not', async () => {
    const store = await opened(await fresh());
    const both = async (draft: RecordDraft) => ({
      own: (await store.records.create(ida, draft)).id,
      invented: (await store.records.create(ida, { ...draft, name: `sample ${draft.name}`, sample: true })).id,
    });
    const [tractors, implement] = [await both(tractor), await store.records.create(ida, tiller)];
    await both({ kind: 'part', name: 'spacer', fields: { kind: 'clevisSpacers' } });
    await both({ kind: 'shaft', name: 'shaft', fields: { fits: [tiller.name] } });
    const beside = async (id: string) => {
      const { setup } = await store.setupFor({ tractor: id, implement: implement.id, parts: 'fitting' });
      const named = setup as { parts: { name: string }[]; shaft: { name: string } };
      return [...named.parts.map(({ name }) => name).sort(), named.shaft.name];
    };
    expect(await beside(tractors.own)).toEqual(['shaft', 'spacer', 'shaft']);
    expect(await beside(tractors.invented)).toEqual(['sample shaft', 'sample spacer', 'shaft']);
  });

  it('refuse what is not there or of another kind, and tell what was removed', async () => {
    const store = await opened(await fresh());
    const one = await store.records.create(ida, tractor);
    const other = await store.records.create(ida, tiller);
    expect(await thrownBy(store.setupFor({ tractor: 'none', implement: other.id }))).toBeInstanceOf(NotFound);
    const wrong = await thrownBy(store.setupFor({ tractor: other.id, implement: one.id }));
    expect((wrong as Refused).errors).toMatchObject([{ path: 'tractor', got: 'a implement' }]);
    await store.records.remove(ida, other.id, 1);
    expect((await store.setupFor({ tractor: one.id, implement: other.id })).removed).toEqual([other.id]);
  });

  it('name the parts for which there was no room, and keep those that are meant for the implement', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    const rows = Array.from({ length: 70 }, (_, i) => ({
      kind: 'part' as const,
      name: `a spacer ${i}`,
      sample: true,
      fields: { kind: 'clevisSpacers' },
      readings: [{ field: 'gapAfter', leaf: 44, grade: 'listed' as const }],
    }));
    await store.imports.write(ida, { source: 'spacers', rows });
    const refs = {
      tractor: idOf(ids, 'Ostrey 35'),
      implement: idOf(ids, 'Wickset 60-in box blade'),
      parts: 'fitting' as const,
    };
    const { setup, partsLeftOut } = await store.setupFor(refs);
    expect(setup['parts']).toHaveLength(60);
    expect(partsLeftOut).toBeGreaterThan(0);
    expect(setup['parts']).toContainEqual(expect.objectContaining({ kind: 'upperPinPlate' }));
    expect(readSetup(setup).ok).toBe(true);
  });
});
