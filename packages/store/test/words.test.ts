import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { addressOf } from '../src/database/address.ts';
import { openPostgres } from '../src/database/postgres.ts';
import { openSqlite } from '../src/database/sqlite.ts';
import { tableNames } from '../src/database/tables.ts';
import type { Refused } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';

/** What people and programs write into fields to see what gives. */
const nasty = [
  `'; drop table record; --`,
  `"; delete from reading where "1"="1`,
  `' or 1=1 /*`,
  `\\'; truncate history cascade; \\`,
  `%_\\%' escape '\\' --`,
  `$1 ? ?1 :name @p $$ $tag$`,
  `\${7*7} {{7*7}} <script>alert(1)</script>`,
  `=cmd|' /C calc'!A0`,
  `{"$ne": null} ["__proto__"]`,
  `../../etc/passwd\t\r\n\u2028`,
  `½ ″ ’ “ ” – ﬁ é é 日本 🚜 \u202eabc`,
  `\\u0000 \\x00 %00 NULL null undefined NaN`,
];

describe.each(databases)('every text on $name', ({ fresh }) => {
  it.each(nasty)('comes back as it was: %j', async (text) => {
    const url = await fresh();
    const store = await opened(url);
    const by = { who: text, title: text };
    const leaf = { value: 457, method: text, tool: text, who: text, when: text, source: text, note: text };
    const draft = {
      kind: 'implement' as const,
      name: text,
      key: text,
      fields: { note: text, contact: { phone: text }, extra: [{ label: text, text }] },
      readings: [{ field: 'mastHeight', leaf, grade: 'measured' as const, who: text }],
    };
    const made = await store.records.create(by, draft);
    expect(made).toMatchObject({ ...draft, readings: [{ leaf, who: text, enteredBy: text }] });
    expect(await store.records.get(made.id)).toEqual(made);
    expect((await store.records.list({ search: text.split(/\s/)[0] ?? '' })).items.map(({ id }) => id)).toEqual([
      made.id,
    ]);
    expect((await store.history.of(made.id))[0]?.group).toMatchObject({ who: text, title: text });

    const tractor = await store.records.create(by, { kind: 'tractor', name: 't' });
    const customer = await store.records.create(by, { kind: 'customer', name: text });
    const refs = { tractor: tractor.id, implement: made.id };
    const { uses } = await store.setupFor(refs);
    const answer = {
      title: text,
      customer: customer.id,
      refs,
      verdict: text,
      reason: text,
      summary: { [text]: text },
      thresholds: [text],
      rules: text,
      uses,
    };
    const saved = await store.answers.save(by, answer);
    expect(saved).toMatchObject({
      title: text,
      verdict: text,
      reason: text,
      customer: { name: text },
      checks: [{ summary: answer.summary, thresholds: [text], rules: text, checkedBy: text }],
    });
    expect((await store.answers.list({ verdict: text, search: text.split(/\s/)[0] ?? '' })).items).toHaveLength(1);

    const jpeg = Uint8Array.from([0xff, 0xd8, 0xff]);
    expect(await store.photos.add(by, { recordId: made.id, field: text, jpeg })).toMatchObject({
      field: text,
      who: text,
    });
    await store.mappings.put(by, [text, 'b'], { [text]: text });
    expect(await store.mappings.get(['b', text])).toMatchObject({ columns: { [text]: text }, who: text });
    expect(await store.requests.once(text, { [text]: text }, () => Promise.resolve(text))).toEqual({
      response: text,
      again: false,
    });
    expect(await store.requests.once(text, { [text]: text }, () => Promise.resolve(''))).toEqual({
      response: text,
      again: true,
    });
    expect(await store.imports.write(by, { source: text, rows: [{ ...draft, fields: { note: text } }] })).toMatchObject(
      { unchanged: 1 },
    );
    expect(await thrownBy(store.records.get(text))).toMatchObject({ what: 'record', id: text });
    await store.customers.forget(by, customer.id);
    await store.close();
    await everyTableStands(url);
  });

  it('is refused in words where a database can’t keep it', async () => {
    const store = await opened(await fresh());
    for (const text of ['a\u0000b', 'a\ud800b']) {
      const problem = await thrownBy(
        store.records.create({ who: 'Ida' }, { kind: 'customer', name: text, fields: { note: text } }),
      );
      expect((problem as Refused).errors.map(({ path }) => path)).toEqual(['name', 'note']);
      expect((await store.records.list({ search: text })).items).toEqual([]);
    }
    const kept = { contact: { phone: 'a\u0000b\ud800' } };
    const made = await store.records.create({ who: 'Ida' }, { kind: 'customer', name: 'c', fields: kept });
    expect((await store.records.get(made.id)).fields).toEqual(kept);
  });

  it('is refused where its name is not one of a field, or it is nested out of all reason', async () => {
    const store = await opened(await fresh());
    const deep = JSON.parse(`${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}`) as Record<string, unknown>;
    const create = (fields: Record<string, unknown>) =>
      store.records.create({ who: 'Ida' }, { kind: 'customer', name: 'c', fields });
    for (const fields of [
      deep,
      { note: deep },
      JSON.parse('{"__proto__":{"a":1}}') as Record<string, unknown>,
      { 'no"te': 'x' },
      { note: 'x'.repeat(300_000) },
    ])
      expect(await thrownBy(create(fields))).toMatchObject({ name: 'Refused' });
    expect((await store.records.list()).items).toEqual([]);
  });
});

async function everyTableStands(url: string): Promise<void> {
  const address = addressOf(url);
  const database = address.kind === 'sqlite' ? await openSqlite(address.file) : await openPostgres(address.url);
  for (const table of tableNames)
    await database.read((queries) => sql`select 1 from ${sql.table(table)} limit 1`.execute(queries));
  expect(tableNames).toHaveLength(10);
  await database.close();
}
