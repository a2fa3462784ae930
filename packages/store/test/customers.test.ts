import { describe, expect, it } from 'vitest';
import { NotFound, type Store } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller, tractor } from './yard.ts';

const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 7]);

/** A customer with everything that can be kept of one, and a neighbour. */
async function twoCustomers(store: Store) {
  const model = await store.records.create(ida, tractor);
  const implement = await store.records.create(ida, tiller);
  const machines: string[] = [];
  const customers: string[] = [];
  for (const name of ['Ada Brook', 'Cy Dale']) {
    const customer = await store.records.create(
      { who: 'Ida', title: `new: ${name}` },
      { kind: 'customer', name, fields: { contact: { phone: '555 0100' } } },
    );
    const machine = await store.records.create(ida, {
      kind: 'machine',
      name: `${name}’s Ostrey`,
      model: model.id,
      owner: customer.id,
    });
    await store.readings.add({ who: name }, machine.id, [{ field: 'mass', leaf: 1700, grade: 'measured' }]);
    await store.records.create(ida, {
      kind: 'state',
      name: 'loader on',
      parent: machine.id,
      fields: { loader: 'empty' },
    });
    await store.photos.add(ida, { recordId: machine.id, field: 'mass', jpeg });
    const refs = { tractor: machine.id, implement: implement.id };
    const { uses } = await store.setupFor(refs);
    const draft = { title: 'tiller', refs, verdict: 'works', reason: `It works, ${name}.`, summary: null, uses };
    await store.answers.save(ida, { ...draft, customer: customer.id });
    await store.answers.save(ida, draft);
    customers.push(customer.id);
    machines.push(machine.id);
  }
  return { model, implement, customers, machines };
}

async function everything(store: Store): Promise<string> {
  const lines: string[] = [];
  await store.exportAll((line) => void lines.push(line));
  return lines.slice(1, -1).join('');
}

describe.each(databases)('customers on $name', ({ fresh }) => {
  it('are exported with machines, states, readings, history, answers and photos, and nothing of anybody else', async () => {
    const store = await opened(await fresh());
    const { customers } = await twoCustomers(store);
    const kept = await store.customers.exportAll(customers[0] ?? '');
    expect(kept.records.map(({ kind }) => kind)).toEqual(['customer', 'machine', 'state']);
    expect(kept.records[1]?.readings).toMatchObject([{ field: 'mass', leaf: 1700 }]);
    expect(kept.records[1]?.history.length).toBeGreaterThan(1);
    expect(kept.answers.map(({ reason }) => reason)).toEqual(['It works, Ada Brook.', 'It works, Ada Brook.']);
    expect(kept.photos.map((photo) => photo.jpeg)).toEqual([Buffer.from(jpeg).toString('base64')]);
    expect(JSON.stringify(kept)).not.toContain('Dale');
    expect(JSON.parse(JSON.stringify(kept))).toEqual(kept);
  });

  it('are forgotten to the last row, and nobody else is', async () => {
    const store = await opened(await fresh());
    const { customers, machines, implement, model } = await twoCustomers(store);
    const [ada = '', cy = ''] = customers;
    await store.requests.once('k', { ada }, () => Promise.resolve({ about: machines[0] }));
    const neighbour = await store.customers.exportAll(cy);
    expect(await store.customers.forget(bo, ada)).toEqual({ records: 3, answers: 2, photos: 1 });
    const left = await everything(store);
    for (const trace of ['Ada Brook', ada, machines[0] ?? '']) expect(left).not.toContain(trace);
    expect(await store.customers.exportAll(cy)).toEqual({ ...neighbour, at: expect.any(String) as string });
    expect((await store.records.get(model.id)).name).toBe(model.name);
    expect((await store.records.get(implement.id)).name).toBe(implement.name);
    expect((await store.history.groups({ kind: 'forget' })).items).toMatchObject([
      { who: 'Bo', title: '', records: 3 },
    ]);
  });

  it('are told apart from everything else', async () => {
    const store = await opened(await fresh());
    const { model } = await twoCustomers(store);
    expect(await thrownBy(store.customers.forget(bo, model.id))).toBeInstanceOf(NotFound);
    expect(await thrownBy(store.customers.exportAll(model.id))).toBeInstanceOf(NotFound);
  });
});
