import type { Migration } from './migration.ts';

/** Saved answers, their checks, and what each used. */
export const answers: Migration = {
  version: 2,
  async up(schema, { text, whole }) {
    await schema
      .createTable('answer')
      .addColumn('id', text, (c) => c.primaryKey().notNull())
      .addColumn('customer_id', text, (c) => c.references('record.id'))
      .addColumn('title', text, (c) => c.notNull())
      .addColumn('folded', text, (c) => c.notNull())
      .addColumn('refs', text, (c) => c.notNull())
      .addColumn('verdict', text, (c) => c.notNull())
      .addColumn('reason', text, (c) => c.notNull())
      .addColumn('asked_at', text, (c) => c.notNull())
      .addColumn('asked_by', text, (c) => c.notNull())
      .addColumn('checked_at', text, (c) => c.notNull())
      .addColumn('changed_at', text)
      .addColumn('sample', whole, (c) => c.notNull())
      .addColumn('revision', whole, (c) => c.notNull())
      .execute();
    await schema
      .createTable('answer_check')
      .addColumn('answer_id', text, (c) => c.notNull().references('answer.id').onDelete('cascade'))
      .addColumn('revision', whole, (c) => c.notNull())
      .addColumn('verdict', text, (c) => c.notNull())
      .addColumn('reason', text, (c) => c.notNull())
      .addColumn('summary', text, (c) => c.notNull())
      .addColumn('thresholds', text)
      .addColumn('rules', text)
      .addColumn('checked_at', text, (c) => c.notNull())
      .addColumn('checked_by', text, (c) => c.notNull())
      .addPrimaryKeyConstraint('answer_check_place', ['answer_id', 'revision'])
      .execute();
    await schema
      .createTable('answer_use')
      .addColumn('answer_id', text, (c) => c.notNull().references('answer.id').onDelete('cascade'))
      .addColumn('record_id', text, (c) => c.notNull().references('record.id').onDelete('cascade'))
      .addColumn('field', text, (c) => c.notNull())
      .addColumn('used', text, (c) => c.notNull())
      .addPrimaryKeyConstraint('answer_use_place', ['answer_id', 'record_id', 'field'])
      .execute();
    await schema.createIndex('answer_asked').on('answer').columns(['asked_at', 'id']).execute();
    await schema.createIndex('answer_customer').on('answer').column('customer_id').execute();
    await schema.createIndex('answer_changed').on('answer').column('changed_at').execute();
    await schema.createIndex('answer_use_field').on('answer_use').columns(['record_id', 'field']).execute();
  },
};
