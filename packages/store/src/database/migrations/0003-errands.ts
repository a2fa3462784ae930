import type { Migration } from './migration.ts';

/** Remembered column mappings of imports, and requests that were done. */
export const errands: Migration = {
  version: 3,
  async up(schema, { text }) {
    await schema
      .createTable('mapping')
      .addColumn('id', text, (c) => c.primaryKey().notNull())
      .addColumn('headers', text, (c) => c.notNull())
      .addColumn('columns', text, (c) => c.notNull())
      .addColumn('who', text, (c) => c.notNull())
      .addColumn('at', text, (c) => c.notNull())
      .execute();
    await schema
      .createTable('done_request')
      .addColumn('key', text, (c) => c.primaryKey().notNull())
      .addColumn('request', text, (c) => c.notNull())
      .addColumn('response', text)
      .addColumn('at', text, (c) => c.notNull())
      .execute();
    await schema.createIndex('done_request_at').on('done_request').column('at').execute();
  },
};
