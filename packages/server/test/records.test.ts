import type { FullRecord } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { said, served, type Refusal } from './served.ts';

const tractor = {
  kind: 'tractor',
  name: 'Ostrey 35',
  fields: { category: '1', note: 'two doors down' },
  readings: [{ field: 'lowerBallBore', leaf: { value: 22.4, plusMinus: 0.1, tool: 'caliper' }, grade: 'measured' }],
} as const;

describe('records over HTTP', () => {
  it('are made, read, changed, removed and brought back, with who did it in the history', async () => {
    const { client, send } = await served();
    const made = await client.api.records.$post({ header: {}, json: { ...tractor, readings: [...tractor.readings] } });
    expect([made.status, made.headers.get('etag')]).toEqual([201, '"1"']);
    const { id } = (await made.json()) as FullRecord;
    expect(made.headers.get('location')).toBe(`/api/records/${id}`);
    const changed = await client.api.records[':id'].$patch({
      param: { id },
      header: { 'if-match': '"1"' },
      json: { name: 'Ostrey 36', fields: { note: null } },
    });
    expect(await changed.json()).toMatchObject({ name: 'Ostrey 36', revision: 2, fields: { category: '1' } });
    await said(client.api.records[':id'].$delete({ param: { id }, header: { 'if-match': '"2"' } }));
    await said(client.api.records[':id'].$get({ param: { id }, query: {} }), 404);
    const gone = await said<FullRecord>(client.api.records[':id'].$get({ param: { id }, query: { removed: 'true' } }));
    expect(gone.removedAt).not.toBeNull();
    await said(client.api.records[':id'].restore.$post({ param: { id }, header: { 'if-match': '"3"' } }));
    const history = await said<{ items: { revision: number; group: { who: string } }[] }>(
      client.api.records[':id'].history.$get({ param: { id }, query: {} }),
    );
    expect(history.items.map(({ revision }) => revision)).toEqual([1, 1, 2, 2, 3, 4]);
    expect(new Set(history.items.map(({ group }) => group.who))).toEqual(new Set(['Ida']));
    expect(await said(send('GET', `/api/records/${id}/revisions/1`))).toMatchObject({ name: 'Ostrey 35', revision: 1 });
  });

  it('are made of a machine as it stands in a setup: what is measured becomes readings, founded as it says', async () => {
    const { send } = await served();
    const document = {
      name: 'Harl frame',
      category: '1',
      front: { standOut: 60, pinFixing: 'welded' },
      kind: 'uFrame',
    };
    const made = await said<FullRecord>(send('POST', '/api/records/of-setup', { kind: 'coupler', document }), 201);
    expect(made).toMatchObject({ kind: 'coupler', name: 'Harl frame', fields: { category: '1', kind: 'uFrame' } });
    expect(made.fields['front']).toEqual({ pinFixing: 'welded' });
    expect(made.readings).toMatchObject([{ field: 'front.standOut', leaf: 60, grade: 'listed' }]);
    const mastHeight = { value: '18', plusMinus: '1/16', tool: 'tape', who: 'Ida' };
    const rake = { kind: 'implement', document: { name: 'Harl rake', mastHeight }, units: 'us' };
    const { id, readings } = await said<FullRecord>(send('POST', '/api/records/of-setup', rake), 201);
    expect(readings).toMatchObject([
      { field: 'mastHeight', leaf: { value: '18 in', plusMinus: '1/16 in' }, grade: 'measured', who: 'Ida' },
    ]);
    const { setup } = await said<{ setup: Record<string, unknown> }>(send('POST', '/api/setups', { implement: id }));
    expect(setup['implement']).toMatchObject({ name: 'Harl rake', mastHeight: { value: '18 in' } });
    for (const wrong of [
      { ...rake, kind: 'customer' },
      { ...rake, document: { ...rake.document, name: '' } },
    ])
      expect((await send('POST', '/api/records/of-setup', wrong)).status).toBe(400);
  });

  it('changed by two at once: the second one is refused, sees how it stands, and nobody loses anything', async () => {
    const { send } = await served();
    const { id } = await said<FullRecord>(send('POST', '/api/records', tractor), 201);
    await said(send('PATCH', `/api/records/${id}`, { fields: { note: 'hers' } }, { 'if-match': '"1"' }));
    const late = await send('PATCH', `/api/records/${id}`, { name: 'his' }, { 'if-match': '"1"' });
    expect([late.status, late.headers.get('etag')]).toEqual([412, '"2"']);
    const { trouble, errors, current } = (await late.json()) as Refusal;
    expect([trouble, errors]).toEqual(['otherRevision', []]);
    expect(current).toMatchObject({ id, name: 'Ostrey 35', revision: 2, fields: { note: 'hers' } });
    await said(send('PATCH', `/api/records/${id}`, { name: 'his' }, { 'if-match': '"2"' }));
    expect(await said(send('GET', `/api/records/${id}`))).toMatchObject({ name: 'his', fields: { note: 'hers' } });
    for (const header of ['*', '2', 'W/"2"', ''])
      expect((await send('PATCH', `/api/records/${id}`, { name: 'x' }, { 'if-match': header })).status, header).toBe(
        400,
      );
    expect((await send('PATCH', `/api/records/${id}`, { name: 'x' })).status).toBe(400);
  });

  it('take readings side by side; one is withdrawn, one pinned, one given back to the rule', async () => {
    const { send } = await served();
    const { id } = await said<FullRecord>(send('POST', '/api/records', tractor), 201);
    const more = { readings: [{ field: 'lowerBallBore', leaf: '7/8 in', grade: 'listed' }], units: 'us' };
    const two = await said<FullRecord>(send('POST', `/api/records/${id}/readings`, more), 201);
    const [first, second] = two.readings;
    expect(two.inUse['lowerBallBore']).toMatchObject({ id: first?.id, because: 'grade' });
    const path = `/api/records/${id}/readings/${second?.id}`;
    const pinned = await said<FullRecord>(send('POST', `${path}/pin`, undefined, { 'if-match': '"2"' }));
    expect(pinned.inUse['lowerBallBore']).toMatchObject({ id: second?.id, because: 'pinned' });
    const free = await said<FullRecord>(send('POST', `${path}/unpin`, undefined, { 'if-match': '"3"' }));
    expect(free.inUse['lowerBallBore']?.id).toBe(first?.id);
    const left = await said<FullRecord>(send('POST', `${path}/withdraw`, undefined, { 'if-match': '"4"' }));
    expect(left.readings.map((reading) => reading.id)).toEqual([first?.id]);
    expect((await send('POST', `${path}/pin`, undefined, { 'if-match': '"5"' })).status).toBe(404);
  });

  it('are found by words, and come page by page, each once', async () => {
    const { send } = await served();
    for (const name of ['b', 'a', 'ä rake', 'z', 'Rake 10'])
      await said(send('POST', '/api/records', { kind: 'implement', name }), 201);
    const seen: string[] = [];
    let cursor: string | null = null;
    do {
      const query: string = cursor === null ? '' : `&cursor=${cursor}`;
      const page = await said<{ items: { name: string }[]; next: string | null }>(
        send('GET', `/api/records?kind=implement,tractor&limit=2${query}`),
      );
      seen.push(...page.items.map(({ name }) => name));
      cursor = page.next;
    } while (cursor !== null);
    expect([...seen].sort()).toEqual(['Rake 10', 'a', 'b', 'z', 'ä rake'].sort());
    const found = await said<{ items: { name: string }[] }>(send('GET', '/api/records?search=RAKE'));
    expect(found.items.map(({ name }) => name)).toEqual(['ä rake', 'Rake 10']);
    expect((await send('GET', '/api/records?cursor=nonsense')).status).toBe(400);
    expect((await send('GET', '/api/records?limit=0')).status).toBe(400);
    expect((await send('GET', '/api/records?kind=tractor,boat')).status).toBe(400);
  });

  it('of machines come with their model, and a customer leaves with everything', async () => {
    const { send, store } = await served();
    const model = await said<FullRecord>(send('POST', '/api/records', tractor), 201);
    const ada = await said<FullRecord>(send('POST', '/api/records', { kind: 'customer', name: 'Ada Brook' }), 201);
    const draft = { kind: 'machine', name: 'Ada’s', model: model.id, owner: ada.id };
    const machine = await said<FullRecord>(send('POST', '/api/records', draft), 201);
    const full = await said<FullRecord & { over: FullRecord }>(send('GET', `/api/records/${machine.id}?over=true`));
    expect(full.over).toMatchObject({ id: model.id, inUse: { lowerBallBore: { because: 'only' } } });
    const stands = await send('DELETE', `/api/records/${model.id}`, undefined, { 'if-match': '"1"' });
    expect([stands.status, ((await stands.json()) as Refusal).trouble]).toEqual([409, 'conflict']);
    const all = await said<{ records: { name: string }[] }>(send('GET', `/api/customers/${ada.id}/export`));
    expect(all.records.map(({ name }) => name).sort()).toEqual(['Ada Brook', 'Ada’s']);
    expect(await said(send('DELETE', `/api/customers/${ada.id}`))).toEqual({ records: 2, answers: 0, photos: 0 });
    expect((await store.records.list()).items.map(({ id }) => id)).toEqual([model.id]);
    expect((await send('DELETE', `/api/customers/${ada.id}`)).status).toBe(404);
  });

  it('undone as a group; refused, naming the later change, where somebody has changed the same since', async () => {
    const { send } = await served();
    const { id } = await said<FullRecord>(send('POST', '/api/records', tractor), 201);
    await said(send('PATCH', `/api/records/${id}`, { name: 'one' }, { 'if-match': '"1"', 'hitchwright-who': 'Bo' }));
    const { items } = await said<{ items: { id: string; who: string }[] }>(send('GET', '/api/history'));
    const [group] = items;
    expect(group?.who).toBe('Bo');
    expect(await said(send('GET', `/api/history/${group?.id}`))).toMatchObject({
      items: [{ key: 'name', before: 'Ostrey 35', after: 'one' }],
    });
    await said(
      send('PATCH', `/api/records/${id}`, { name: 'two' }, { 'if-match': '"2"', 'hitchwright-who': 'B%C3%BC' }),
    );
    const late = await send('POST', `/api/history/${group?.id}/undo`);
    expect(late.status).toBe(409);
    expect(await late.json()).toMatchObject({ trouble: 'conflict', current: [{ key: 'name', group: { who: 'Bü' } }] });
    const { items: now } = await said<{ items: { id: string }[] }>(send('GET', '/api/history?kind=edit'));
    await said(send('POST', `/api/history/${now[0]?.id}/undo`));
    await said(send('POST', `/api/history/${group?.id}/undo`));
    expect(await said(send('GET', `/api/records/${id}`))).toMatchObject({ name: 'Ostrey 35' });
    expect((await send('POST', '/api/history/nobody/undo')).status).toBe(404);
  });

  it('refused with every error, in the words of input errors, and nothing is written', async () => {
    const { send, store } = await served();
    const wrong = await send('POST', '/api/records', { kind: 'boat', name: 7, colour: 'red' });
    expect(wrong.status).toBe(400);
    const { errors } = (await wrong.json()) as Refusal;
    expect(errors.map(({ code, path }) => `${path} ${code}`).sort()).toEqual([
      'colour unknown-key',
      'kind not-a-choice',
      'name wrong-type',
    ]);
    const readings = [{ field: 'mastHeight', leaf: 19, grade: 'measured' }];
    const small = await send('POST', '/api/records', { kind: 'implement', name: 'rake', readings });
    expect(await said<Refusal>(small, 400)).toMatchObject({ errors: [{ path: 'mastHeight', code: 'out-of-range' }] });
    expect((await store.history.groups()).items).toEqual([]);
  });

  it('with injected text come back as the same text', async () => {
    const { send } = await served();
    const texts = [
      "'; drop table record; --",
      '<script>alert(1)</script>',
      '=cmd|calc!A0',
      '{{7*7}} ${7*7} %00 ../../etc/passwd',
      '" onload="x',
      '\u202eevil\u2066',
    ];
    for (const text of texts) {
      const draft = { kind: 'customer', name: text, key: text, fields: { note: text, contact: { phone: text } } };
      const made = await said<FullRecord>(send('POST', '/api/records', draft), 201);
      const back = await said<FullRecord>(send('GET', `/api/records/${made.id}`));
      expect(back).toMatchObject(draft);
      const query = new URLSearchParams({ search: text.slice(0, 100) });
      const found = await said<{ items: { id: string }[] }>(send('GET', `/api/records?${query.toString()}`));
      expect(found.items.map(({ id }) => id)).toContain(made.id);
    }
    const { items } = await said<{ items: unknown[] }>(send('GET', '/api/records'));
    expect(items).toHaveLength(texts.length);
  });
});
