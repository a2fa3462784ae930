import { sql } from 'kysely';
import type { Database, Queries } from '../src/database/database.ts';

interface Column {
  readonly table: string;
  readonly name: string;
  readonly type: string;
  readonly isNull: boolean;
}

/** The tables of a database in words, the same for both: columns, keys, references and indexes. */
export async function schemaOf(database: Database): Promise<string> {
  const facts = await database.read(database.kind === 'sqlite' ? sqliteFacts : postgresFacts);
  const tables = [...new Set(facts.columns.map(({ table }) => table))].sort();
  const lines = tables.flatMap((table) => [
    table,
    ...facts.columns
      .filter((one) => one.table === table)
      .map(({ name, type, isNull }) => `  ${name} ${type}${isNull ? '' : ' not null'}`),
    ...facts.more
      .filter(([of]) => of === table)
      .map(([, text]) => `  ${text}`)
      .sort(),
    '',
  ]);
  return lines.join('\n');
}

interface Facts {
  readonly columns: readonly Column[];
  /** Keys, references and indexes by table. */
  readonly more: readonly (readonly [table: string, text: string])[];
}

async function sqliteFacts(queries: Queries): Promise<Facts> {
  const columns = await sql<{ table: string; name: string; type: string; needed: number; pk: number }>`
    select m.name as "table", c.name, c.type, c."notnull" as needed, c.pk
    from sqlite_master m, pragma_table_info(m.name) c where m.type = 'table' order by m.name, c.cid`.execute(queries);
  const references = await sql<{ table: string; from: string; to: string; column: string; gone: string }>`
    select m.name as "table", f."from", f."table" as "to", f."to" as "column", f.on_delete as gone
    from sqlite_master m, pragma_foreign_key_list(m.name) f where m.type = 'table'`.execute(queries);
  const indexes = await sql<{ table: string; name: string; single: number; columns: string; sql: string }>`
    select m.name as "table", i.name, i."unique" as single, x.sql,
      (select group_concat(name, ', ') from (select name from pragma_index_info(i.name) order by seqno)) as columns
    from sqlite_master m, pragma_index_list(m.name) i, sqlite_master x
    where m.type = 'table' and i.origin = 'c' and x.name = i.name`.execute(queries);
  const tables = [...new Set(columns.rows.map(({ table }) => table))];
  const keyOf = (table: string): string =>
    columns.rows
      .filter((one) => one.table === table && one.pk > 0)
      .sort((a, b) => a.pk - b.pk)
      .map(({ name }) => name)
      .join(', ');
  return {
    columns: columns.rows.map(({ needed, ...one }) => ({
      ...one,
      type: one.type.toLowerCase().replace('blob', 'bytes'),
      isNull: needed === 0,
    })),
    more: [
      ...tables.map((table) => [table, `primary key ${keyOf(table)}`] as const),
      ...references.rows.map((one) => [one.table, referenceText(one)] as const),
      ...indexes.rows.map(
        (one) => [one.table, indexText(one.name, one.single === 1, one.columns, whereOf(one.sql))] as const,
      ),
    ],
  };
}

async function postgresFacts(queries: Queries): Promise<Facts> {
  const columns = await sql<{ table: string; name: string; type: string; nullable: string; collation: string | null }>`
    select table_name as "table", column_name as name, data_type as type, is_nullable as nullable, collation_name as collation
    from information_schema.columns where table_schema = current_schema() order by table_name, ordinal_position`.execute(
    queries,
  );
  const keys = await sql<{ table: string; columns: string }>`
    select c.relname as "table", string_agg(a.attname, ', ' order by k.n) as columns
    from pg_constraint p join pg_class c on c.oid = p.conrelid, unnest(p.conkey) with ordinality k(col, n), pg_attribute a
    where p.contype = 'p' and a.attrelid = c.oid and a.attnum = k.col and c.relnamespace = current_schema()::regnamespace
    group by c.relname`.execute(queries);
  const references = await sql<{ table: string; from: string; to: string; column: string; gone: string }>`
    select c.relname as "table", a.attname as "from", t.relname as "to", b.attname as "column",
      case p.confdeltype when 'c' then 'CASCADE' when 'n' then 'SET NULL' else 'NO ACTION' end as gone
    from pg_constraint p join pg_class c on c.oid = p.conrelid join pg_class t on t.oid = p.confrelid
      join pg_attribute a on a.attrelid = c.oid and a.attnum = p.conkey[1]
      join pg_attribute b on b.attrelid = t.oid and b.attnum = p.confkey[1]
    where p.contype = 'f' and c.relnamespace = current_schema()::regnamespace`.execute(queries);
  const indexes = await sql<{ table: string; name: string; single: boolean; columns: string; sql: string }>`
    select t.relname as "table", c.relname as name, i.indisunique as single, pg_get_indexdef(i.indexrelid) as sql,
      (select string_agg(a.attname, ', ' order by k.n) from unnest(i.indkey) with ordinality k(col, n)
        join pg_attribute a on a.attrelid = t.oid and a.attnum = k.col) as columns
    from pg_index i join pg_class c on c.oid = i.indexrelid join pg_class t on t.oid = i.indrelid
    where not i.indisprimary and t.relnamespace = current_schema()::regnamespace`.execute(queries);
  return {
    columns: columns.rows.map(({ nullable, collation, ...one }) => ({
      ...one,
      type:
        one.type === 'text' && collation !== 'C'
          ? `text of collation ${collation ?? 'none'}`
          : one.type.replace('bytea', 'bytes'),
      isNull: nullable === 'YES',
    })),
    more: [
      ...keys.rows.map((one) => [one.table, `primary key ${one.columns}`] as const),
      ...references.rows.map((one) => [one.table, referenceText(one)] as const),
      ...indexes.rows.map(
        (one) => [one.table, indexText(one.name, one.single, one.columns, whereOf(one.sql))] as const,
      ),
    ],
  };
}

function referenceText({ from, to, column, gone }: { from: string; to: string; column: string; gone: string }): string {
  return `${from} references ${to}.${column}, on delete ${gone.toLowerCase()}`;
}

function indexText(name: string, isSingle: boolean, columns: string, where: string): string {
  return `${isSingle ? 'unique index' : 'index'} ${name} on ${columns}${where}`;
}

function whereOf(definition: string): string {
  const [, where] = / where (.*)$/i.exec(definition.toLowerCase()) ?? [];
  return where === undefined ? '' : ` where ${where.replace(/["()]/g, '')}`;
}
