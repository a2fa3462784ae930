import { readFileSync } from 'node:fs';
import { answerFrom, judgeSetup } from '@hitchwright/core/assess';
import { answerJson } from '@hitchwright/core/contract';
import { readSetup, type SetupDocument } from '@hitchwright/core/records';
import type { AnswerNote, FullRecord, SavedAnswer, YardSetup } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { isNarrowed } from '../src/recheck/narrowed.ts';
import { said, served, until, withSample, type Refusal, type Served } from './served.ts';

const box = JSON.parse(
  readFileSync(new URL('../../../examples/setups/tiller-direct.json', import.meta.url), 'utf8'),
) as SetupDocument;

/** A small tractor and a rake that goes on it, every figure known. */
async function smallYard({ send }: Served) {
  const made = async (draft: object): Promise<FullRecord> => said<FullRecord>(send('POST', '/api/records', draft), 201);
  const tractor = await made({ kind: 'tractor', name: 'Ostrey 35', fields: { category: '1' } });
  const implement = await made({
    kind: 'implement',
    name: 'Harl rake',
    fields: { category: '1' },
    readings: [{ field: 'mastHeight', leaf: { value: 457, plusMinus: 10 }, grade: 'listed' }],
  });
  const ada = await made({ kind: 'customer', name: 'Ada Brook' });
  return { tractor, implement, ada };
}

interface Recheck {
  readonly state: string;
  readonly checked: number;
  readonly changed: number;
  readonly ruledOut: number;
  readonly failed: number;
}

function settled({ send }: Served, holds: (seen: Recheck) => boolean = () => true): Promise<Recheck> {
  return until(
    () => said<Recheck>(send('GET', '/api/recheck')),
    (seen) => seen.state === 'idle' && holds(seen),
  );
}

describe('questions over HTTP', () => {
  it('are answered as core’s contract has it, in the units that are asked for', async () => {
    const { client } = await served();
    const answer = await said(client.api.check.$post({ query: { units: 'metric' }, json: box }));
    const reading = readSetup(box);
    if (!reading.ok) throw new Error('The example can’t be read.');
    const judged = judgeSetup(reading.setup, { thresholds: true });
    const expected = answerJson(answerFrom(box, judged, { full: true }), reading.setup, 'metric');
    expect(answer).toEqual(JSON.parse(JSON.stringify(expected)));
    const quick = await said(client.api.check.$post({ query: { full: 'false' }, json: box }));
    expect(quick).toMatchObject({ hitchwright: 1, saysSafeToRun: false, verdict: answer['verdict'], sweep: null });
  });

  it('that were asked before come packed to whoever takes them so, and plain to everybody else', async () => {
    const { send } = await served();
    const plain = await (await send('POST', '/api/check', box, { 'accept-encoding': 'identity' })).text();
    const packed = await until(
      () => send('POST', '/api/check', box, { 'accept-encoding': 'gzip' }),
      ({ headers }) => headers.get('content-encoding') === 'gzip',
    );
    expect(await packed.text()).toBe(plain);
    const again = await send('POST', '/api/check', box, { 'accept-encoding': 'identity' });
    expect(again.headers.get('content-encoding')).toBeNull();
    expect(again.headers.get('vary')).toContain('accept-encoding');
    expect(await again.text()).toBe(plain);
  });

  it('that can’t be read are refused with every error by its path', async () => {
    const { send } = await served();
    const setup = { hitchwright: 1, tractor: { category: '9' }, implement: { mastHeight: 19 } };
    for (const path of ['/api/check', '/api/advice']) {
      const { errors } = await said<Refusal>(send('POST', path, setup), 400);
      expect(errors.map(({ path: at }) => at).sort()).toEqual(['implement.mastHeight', 'tractor.category']);
    }
  });

  it('get advice what to measure next', async () => {
    const { send } = await served();
    const open = { hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } };
    const advice = await said<{ verdict: string; next: { path: string; text: string }[] }>(
      send('POST', '/api/advice', open),
    );
    expect(advice.verdict).toBe('measureFirst');
    expect(advice.next.length).toBeGreaterThan(0);
    expect(advice.next[0]?.text).not.toBe('');
  });

  it('by references become a setup that says where each value comes from', async () => {
    const yard = await served();
    const { tractor, implement } = await smallYard(yard);
    const refs = { tractor: tractor.id, implement: implement.id };
    const composed = await said<YardSetup>(yard.send('POST', '/api/setups', refs));
    expect(composed.setup).toMatchObject({ tractor: { name: 'Ostrey 35' }, implement: { mastHeight: { value: 457 } } });
    expect(composed.sources).toMatchObject([
      { path: 'implement.mastHeight', reading: { id: implement.readings[0]?.id } },
    ]);
    expect((await yard.send('POST', '/api/setups', { ...refs, tractor: 'nobody' })).status).toBe(404);
    expect((await yard.send('POST', '/api/setups', { ...refs, tractor: implement.id })).status).toBe(400);
  });
});

describe('saved answers', () => {
  it('are worked out here, kept with what they rest on, listed by customer and settled', async () => {
    const yard = await served();
    const { send } = yard;
    const { tractor, implement, ada } = await smallYard(yard);
    const draft = {
      title: 'Does the rake go on?',
      customer: ada.id,
      refs: { tractor: tractor.id, implement: implement.id },
    };
    const saved = await said<SavedAnswer>(send('POST', '/api/answers', draft, { 'idempotency-key': 'a' }), 201);
    expect(await said(send('POST', '/api/answers', draft, { 'idempotency-key': 'a' }), 201)).toEqual(saved);
    expect(saved).toMatchObject({ title: draft.title, verdict: 'measureFirst', customer: { name: 'Ada Brook' } });
    expect(saved.checks).toHaveLength(1);
    const uses = await said<{ items: { recordId: string; field: string }[] }>(
      send('GET', `/api/answers/${saved.id}/uses`),
    );
    expect(uses.items).toContainEqual(expect.objectContaining({ recordId: implement.id, field: 'mastHeight' }));
    const list = await said<{ items: AnswerNote[] }>(send('GET', `/api/answers?customer=${ada.id}&search=rake`));
    expect(list.items.map(({ id }) => id)).toEqual([saved.id]);
    const late = await send('POST', `/api/answers/${saved.id}/settle`, undefined, { 'if-match': '"7"' });
    expect(late.status).toBe(412);
    await said(send('POST', `/api/answers/${saved.id}/settle`, undefined, { 'if-match': '"1"' }));
  });

  it('are checked again when a value in use changes, and listed with customer and reason where it comes out otherwise', async () => {
    const yard = await served();
    const { send } = yard;
    const { tractor, implement, ada } = await smallYard(yard);
    const draft = { title: 'rake', customer: ada.id, refs: { tractor: tractor.id, implement: implement.id } };
    const saved = await said<SavedAnswer>(send('POST', '/api/answers', draft), 201);
    await settled(yard);
    const other = { readings: [{ field: 'bottomWidth', leaf: 1, grade: 'measured' }] };
    expect((await send('POST', `/api/records/${implement.id}/readings`, other)).status).toBe(400);
    await said(send('PATCH', `/api/records/${implement.id}`, { fields: { note: 'red' } }, { 'if-match': '"1"' }));
    await settled(yard);
    expect((await said<SavedAnswer>(send('GET', `/api/answers/${saved.id}`))).checks.length).toBe(2);
    const wrong = { name: 'Ostrey 35', fields: { category: '3' } };
    await said(send('PATCH', `/api/records/${tractor.id}`, wrong, { 'if-match': '"1"' }));
    await settled(yard, ({ changed }) => changed === 1);
    const { items } = await said<{ items: AnswerNote[] }>(send('GET', '/api/answers?changed=true'));
    expect(items).toMatchObject([
      {
        id: saved.id,
        customer: { name: 'Ada Brook' },
        verdict: expect.stringMatching(/^(willNot|withParts)$/) as string,
      },
    ]);
    expect(items[0]?.reason).not.toBe(saved.reason);
    await said(send('POST', `/api/answers/${saved.id}/settle`, undefined, { 'if-match': `"${items[0]?.revision}"` }));
    expect((await said<{ items: AnswerNote[] }>(send('GET', '/api/answers?changed=true'))).items).toEqual([]);
  });

  it('go with the customer whose machine they rest on', async () => {
    const yard = await served();
    const { send } = yard;
    const { implement, ada, tractor } = await smallYard(yard);
    const machine = { kind: 'machine', name: 'Ada’s', model: tractor.id, owner: ada.id };
    const { id } = await said<FullRecord>(send('POST', '/api/records', machine), 201);
    const draft = { title: 'rake', refs: { tractor: id, implement: implement.id } };
    const saved = await said<SavedAnswer>(send('POST', '/api/answers', draft), 201);
    await said(send('DELETE', `/api/customers/${ada.id}`));
    await settled(yard);
    expect((await send('GET', `/api/answers/${saved.id}`)).status).toBe(404);
  });

  it('say so when the readings no longer go together, and are well again when one is withdrawn', async () => {
    const yard = await served();
    const { send } = yard;
    const { tractor, implement } = await smallYard(yard);
    const refs = { tractor: tractor.id, implement: implement.id };
    const saved = await said<SavedAnswer>(send('POST', '/api/answers', { title: 'rake', refs }), 201);
    const readings = [
      { field: 'ballHeightLow', leaf: 900, grade: 'measured' },
      { field: 'ballHeightHigh', leaf: 500, grade: 'measured' },
    ];
    const now = await said<FullRecord>(send('POST', `/api/records/${tractor.id}/readings`, { readings }), 201);
    await settled(yard, ({ changed }) => changed === 1);
    const wrong = await said<SavedAnswer>(send('GET', `/api/answers/${saved.id}`));
    expect([wrong.verdict, wrong.reason]).toEqual(['notReadable', expect.stringContaining('ballHeight')]);
    expect((await send('POST', '/api/answers', { title: 'again', refs })).status).toBe(400);
    const path = `/api/records/${tractor.id}/readings/${now.readings[0]?.id}/withdraw`;
    await said(send('POST', path, undefined, { 'if-match': '"2"' }));
    await settled(yard, ({ changed }) => changed === 1);
    expect((await said<SavedAnswer>(send('GET', `/api/answers/${saved.id}`))).verdict).toBe(saved.verdict);
  });

  it('that work stay as they are, without being worked out, where figures are only known closer', async () => {
    const yard = await served();
    const { send } = yard;
    const ids = await withSample(yard);
    const works = await firstThatWorks(yard, ids);
    const [, use] = works.closer;
    const narrower = { readings: [{ field: use.field, leaf: use.leaf, grade: 'measured', pin: true }] };
    await said(send('POST', `/api/records/${use.recordId}/readings`, narrower), 201);
    const seen = await settled(yard, ({ checked }) => checked > 0);
    expect(seen).toMatchObject({ ruledOut: 1, changed: 0 });
    const { checks } = await said<SavedAnswer>(send('GET', `/api/answers/${works.id}`));
    const anew = await said<{ verdict: string }>(
      send('POST', '/api/check', (checks.at(-1)?.thresholds as { setup: object }).setup),
    );
    expect(anew.verdict).toBe('works');
  });
});

/** A question of the sample yard whose answer is that it works, and a figure of it that may be read closer. */
async function firstThatWorks(yard: Served, ids: ReadonlyMap<string, string>) {
  const { send, store } = yard;
  const tractors = (await store.records.list({ kind: 'tractor' })).items;
  const implementsOf = (await store.records.list({ kind: 'implement' })).items;
  for (const tractor of tractors)
    for (const implement of implementsOf) {
      const refs = { tractor: tractor.id, implement: implement.id };
      const saved = await said<SavedAnswer>(send('POST', '/api/answers', { title: 'does it?', refs }), 201);
      if (saved.verdict !== 'works') continue;
      const { sources } = await store.setupFor(refs);
      const ranged = sources.find(({ reading: { leaf } }) => hasTolerance(leaf));
      if (ranged === undefined) continue;
      const { recordId, field, leaf } = ranged.reading;
      const { value, from } = leaf as { value: number; from?: string };
      const closer = { value, plusMinus: 0, ...(from === undefined ? {} : { from }) };
      await settled(yard);
      return { id: saved.id, closer: [leaf, { recordId, field, leaf: closer }] as const };
    }
  throw new Error(`Nothing of the sample yard works: ${[...ids.keys()].join(', ')}`);
}

function hasTolerance(leaf: unknown): boolean {
  const { value, plusMinus } = (leaf ?? {}) as { readonly value?: unknown; readonly plusMinus?: unknown };
  return typeof value === 'number' && typeof plusMinus === 'number' && plusMinus > 0;
}

describe('closer figures', () => {
  const setup = (mastHeight: unknown, more: object = {}) => ({
    hitchwright: 1,
    tractor: { category: '1' },
    implement: { category: '1', mastHeight, ...more },
  });

  it('lie within what was left open before', () => {
    const wide = setup({ value: 457, plusMinus: 5 });
    expect(isNarrowed(wide, setup({ value: 458, plusMinus: 2, who: 'Bo' }))).toBe(true);
    expect(isNarrowed(wide, setup(457))).toBe(true);
    expect(isNarrowed(wide, setup({ between: [452, 462] }))).toBe(true);
  });

  it('are not those that reach beyond, name other points, can be set, or come with something else', () => {
    const wide = setup({ value: 457, plusMinus: 5 });
    expect(isNarrowed(wide, setup({ value: 458, plusMinus: 5 }))).toBe(false);
    expect(isNarrowed(wide, setup({ adjustable: { between: [456, 458] } }))).toBe(false);
    expect(isNarrowed(wide, setup(null))).toBe(false);
    expect(isNarrowed(wide, setup({ value: 457 }, { mass: 100 }))).toBe(false);
    expect(isNarrowed(wide, setup(457, { category: '2' }))).toBe(false);
    expect(isNarrowed(undefined, wide)).toBe(false);
  });
});
