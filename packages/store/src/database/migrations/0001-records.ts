import { sql, type SchemaModule } from 'kysely';
import type { ColumnTypes } from './columnTypes.ts';
import type { Migration } from './migration.ts';

/** Records, their readings, photos and history. */
export const records: Migration = {
  version: 1,
  async up(schema, types) {
    await recordTables(schema, types);
    await readingTables(schema, types);
    await indexes(schema);
  },
};

async function recordTables(schema: SchemaModule, { text, whole }: ColumnTypes): Promise<void> {
  await schema
    .createTable('change_group')
    .addColumn('id', text, (c) => c.primaryKey().notNull())
    .addColumn('kind', text, (c) => c.notNull())
    .addColumn('title', text, (c) => c.notNull())
    .addColumn('who', text, (c) => c.notNull())
    .addColumn('at', text, (c) => c.notNull())
    .addColumn('records', whole, (c) => c.notNull())
    .addColumn('undoes', text)
    .addColumn('undone_by', text)
    .execute();
  await schema
    .createTable('record')
    .addColumn('id', text, (c) => c.primaryKey().notNull())
    .addColumn('kind', text, (c) => c.notNull())
    .addColumn('name', text, (c) => c.notNull())
    .addColumn('sort_name', text, (c) => c.notNull())
    .addColumn('folded', text, (c) => c.notNull())
    .addColumn('owner_id', text, (c) => c.references('record.id'))
    .addColumn('model_id', text, (c) => c.references('record.id'))
    .addColumn('parent_id', text, (c) => c.references('record.id'))
    .addColumn('import_key', text)
    .addColumn('fields', text, (c) => c.notNull())
    .addColumn('sample', whole, (c) => c.notNull())
    .addColumn('revision', whole, (c) => c.notNull())
    .addColumn('created_at', text, (c) => c.notNull())
    .addColumn('updated_at', text, (c) => c.notNull())
    .addColumn('removed_at', text)
    .execute();
}

async function readingTables(schema: SchemaModule, { text, whole, bytes }: ColumnTypes): Promise<void> {
  await schema
    .createTable('photo')
    .addColumn('id', text, (c) => c.primaryKey().notNull())
    .addColumn('record_id', text, (c) => c.notNull().references('record.id').onDelete('cascade'))
    .addColumn('field', text, (c) => c.notNull())
    .addColumn('jpeg', bytes, (c) => c.notNull())
    .addColumn('who', text, (c) => c.notNull())
    .addColumn('added_at', text, (c) => c.notNull())
    .execute();
  await schema
    .createTable('reading')
    .addColumn('id', text, (c) => c.primaryKey().notNull())
    .addColumn('record_id', text, (c) => c.notNull().references('record.id').onDelete('cascade'))
    .addColumn('field', text, (c) => c.notNull())
    .addColumn('leaf', text, (c) => c.notNull())
    .addColumn('grade', text, (c) => c.notNull())
    .addColumn('who', text)
    .addColumn('read_at', text)
    .addColumn('entered_at', text, (c) => c.notNull())
    .addColumn('entered_by', text, (c) => c.notNull())
    .addColumn('origin', text)
    .addColumn('photo_id', text, (c) => c.references('photo.id').onDelete('set null'))
    .addColumn('pinned_at', text)
    .addColumn('withdrawn_at', text)
    .execute();
  await schema
    .createTable('history')
    .addColumn('record_id', text, (c) => c.notNull().references('record.id').onDelete('cascade'))
    .addColumn('revision', whole, (c) => c.notNull())
    .addColumn('n', whole, (c) => c.notNull())
    .addColumn('group_id', text, (c) => c.notNull().references('change_group.id'))
    .addColumn('what', text, (c) => c.notNull())
    .addColumn('key', text, (c) => c.notNull())
    .addColumn('before', text)
    .addColumn('after', text)
    .addPrimaryKeyConstraint('history_place', ['record_id', 'revision', 'n'])
    .execute();
}

async function indexes(schema: SchemaModule): Promise<void> {
  await schema.createIndex('record_list').on('record').columns(['kind', 'sort_name', 'id']).execute();
  await schema.createIndex('record_owner').on('record').column('owner_id').execute();
  await schema.createIndex('record_model').on('record').column('model_id').execute();
  await schema.createIndex('record_parent').on('record').column('parent_id').execute();
  await schema.createIndex('record_key').on('record').columns(['kind', 'import_key']).unique().execute();
  await schema.createIndex('reading_field').on('reading').columns(['record_id', 'field']).execute();
  await schema.createIndex('reading_photo').on('reading').column('photo_id').execute();
  await schema
    .createIndex('reading_pinned')
    .on('reading')
    .columns(['record_id', 'field'])
    .unique()
    .where(sql.ref('pinned_at'), 'is not', null)
    .execute();
  await schema.createIndex('photo_record').on('photo').column('record_id').execute();
  await schema.createIndex('history_group').on('history').column('group_id').execute();
  await schema.createIndex('change_group_at').on('change_group').columns(['at', 'id']).execute();
}
