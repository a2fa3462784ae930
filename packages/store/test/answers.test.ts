import { describe, expect, it } from 'vitest';
import { Conflict, NotFound, type AnswerDraft, type Refused, type Store } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller, tractor } from './yard.ts';

/** A yard with a customer’s machine, and a draft of an answer about it. */
async function question(store: Store) {
  const model = await store.records.create(ida, tractor);
  const implement = await store.records.create(ida, tiller);
  const customer = await store.records.create(ida, { kind: 'customer', name: 'Ada Brook' });
  const machine = await store.records.create(ida, {
    kind: 'machine',
    name: 'Ada’s Ostrey',
    model: model.id,
    owner: customer.id,
  });
  const refs = { tractor: machine.id, implement: implement.id };
  const { uses } = await store.setupFor(refs);
  const draft: AnswerDraft = {
    title: 'Does the tiller go on?',
    customer: customer.id,
    refs,
    verdict: 'measureFirst',
    reason: 'The stand-out is not known.',
    summary: { findings: [{ id: 'rear.mast', margin: [null, 3.25] }] },
    thresholds: { 'implement.mastHeight': [452] },
    rules: '2026-09',
    uses,
  };
  return { model, implement, customer, machine, draft };
}

async function idsToCheck(store: Store, recordId?: string): Promise<string[]> {
  const { answers } = await store.answers.toCheckAgain(recordId === undefined ? {} : { recordId });
  return answers.map(({ answer }) => answer.id);
}

describe.each(databases)('saved answers on $name', ({ fresh }) => {
  it('come back with their customer, their question and every check', async () => {
    const store = await opened(await fresh());
    const { draft, customer } = await question(store);
    const saved = await store.answers.save(ida, draft);
    const { verdict, reason, summary, thresholds, rules } = draft;
    expect(saved).toMatchObject({
      title: draft.title,
      customer: { id: customer.id, name: 'Ada Brook' },
      refs: draft.refs,
      verdict,
      reason,
      revision: 1,
      changedAt: null,
    });
    expect(saved.checks).toMatchObject([
      { revision: 1, verdict, reason, summary, thresholds, rules, checkedBy: 'Ida' },
    ]);
    expect(await store.answers.get(saved.id)).toEqual(saved);
    expect(await store.answers.usesOf(saved.id)).toHaveLength(draft.uses.length);
  });

  it('are listed by customer, verdict, words, and what they rest on', async () => {
    const store = await opened(await fresh());
    const { draft, customer, implement, model, machine } = await question(store);
    const first = await store.answers.save(ida, draft);
    const { refs, reason, summary } = draft;
    const loose: AnswerDraft = { title: 'Another', refs, verdict: 'works', reason, summary, uses: [] };
    const second = await store.answers.save(ida, loose);
    const found = async (wanted: Parameters<Store['answers']['list']>[0]): Promise<string[]> =>
      (await store.answers.list(wanted)).items.map(({ id }) => id);
    expect(await found({})).toEqual([second.id, first.id]);
    expect(await found({ customer: customer.id })).toEqual([first.id]);
    expect(await found({ verdict: 'works' })).toEqual([second.id]);
    expect(await found({ search: 'brook TILLER' })).toEqual([first.id]);
    expect(await found({ recordId: model.id })).toEqual([first.id]);
    expect(await found({ recordId: implement.id, field: 'mastHeight' })).toEqual([first.id]);
    expect(await found({ recordId: implement.id, field: 'mass' })).toEqual([]);
    expect(await found({ recordId: machine.id, field: 'lowerBallBore' })).toEqual([first.id]);
    const page = await store.answers.list({ limit: 1 });
    expect((await store.answers.list({ limit: 1, cursor: page.next ?? '' })).items.map(({ id }) => id)).toEqual([
      first.id,
    ]);
  });

  it('are to be checked again when a value that they rest on becomes another, and not for a note', async () => {
    const store = await opened(await fresh());
    const { draft, model, implement } = await question(store);
    const { id } = await store.answers.save(ida, draft);
    expect(await idsToCheck(store)).toEqual([]);
    await store.records.change(bo, implement.id, 1, { name: 'the tiller' });
    expect(await idsToCheck(store)).toEqual([]);
    await store.readings.add(bo, model.id, [{ field: 'lowerBallBore', leaf: 25, grade: 'guessed' }]);
    expect(await idsToCheck(store)).toEqual([]);
    await store.readings.add(bo, model.id, [{ field: 'lowerBallBore', leaf: 25, grade: 'measured' }]);
    const { answers } = await store.answers.toCheckAgain();
    expect(answers).toMatchObject([{ answer: { id, customer: { name: 'Ada Brook' } } }]);
    expect(answers[0]?.changed.filter(({ recordId }) => recordId === model.id)).toEqual([
      { recordId: model.id, field: 'lowerBallBore' },
    ]);
    expect(await idsToCheck(store, model.id)).toEqual([id]);
    expect(await idsToCheck(store, implement.id)).toEqual([]);
  });

  it('are to be checked again when something is read that was not known before, or a machine gets a reading of its own', async () => {
    const store = await opened(await fresh());
    const { draft, machine, implement } = await question(store);
    const { id } = await store.answers.save(ida, draft);
    await store.readings.add(bo, implement.id, [{ field: 'standOut', leaf: 60, grade: 'measured' }]);
    expect(await idsToCheck(store)).toEqual([id]);
    const { uses } = await store.setupFor(draft.refs);
    await store.answers.writeCheck(ida, id, 1, { ...draft, uses });
    expect(await idsToCheck(store)).toEqual([]);
    await store.readings.add(bo, machine.id, [{ field: 'lowerBallBore', leaf: 22.4, grade: 'measured' }]);
    expect(await idsToCheck(store)).toEqual([id]);
  });

  it('are told as changed until somebody has dealt with them', async () => {
    const store = await opened(await fresh());
    const { draft } = await question(store);
    const { id } = await store.answers.save(ida, draft);
    const same = await store.answers.writeCheck(bo, id, 1, draft);
    expect(same).toMatchObject({ revision: 2, changedAt: null });
    const other = await store.answers.writeCheck(bo, id, 2, {
      ...draft,
      verdict: 'willNot',
      reason: 'The pins are too wide.',
    });
    expect(other.changedAt).not.toBeNull();
    expect(other.checks.map(({ verdict }) => verdict)).toEqual(['measureFirst', 'measureFirst', 'willNot']);
    const again = await store.answers.writeCheck(bo, id, 3, {
      ...draft,
      verdict: 'willNot',
      reason: 'The pins are too wide.',
    });
    expect(again.changedAt).toBe(other.changedAt);
    expect((await store.answers.list({ changed: true })).items.map((one) => one.id)).toEqual([id]);
    await store.answers.settle(id, 4);
    expect((await store.answers.list({ changed: true })).items).toEqual([]);
  });

  it('are not checked or settled over somebody else’s check', async () => {
    const store = await opened(await fresh());
    const { draft } = await question(store);
    const { id } = await store.answers.save(ida, draft);
    await store.answers.writeCheck(bo, id, 1, draft);
    expect(await thrownBy(store.answers.writeCheck(ida, id, 1, draft))).toBeInstanceOf(Conflict);
    expect(await thrownBy(store.answers.settle(id, 1))).toBeInstanceOf(Conflict);
    expect((await store.answers.get(id)).checks).toHaveLength(2);
  });

  it('are refused with every error in them', async () => {
    const store = await opened(await fresh());
    const { draft, implement } = await question(store);
    const wrong = await thrownBy(store.answers.save(ida, { ...draft, title: '', reason: 'x'.repeat(2001) }));
    expect((wrong as Refused).errors.map(({ path }) => path)).toEqual(['reason', 'title']);
    const strange = await thrownBy(store.answers.save(ida, { ...draft, customer: implement.id }));
    expect((strange as Refused).errors.map(({ path }) => path)).toEqual(['customer']);
    expect(await thrownBy(store.answers.get('none'))).toBeInstanceOf(NotFound);
    expect((await store.answers.list()).items).toEqual([]);
  });
});
