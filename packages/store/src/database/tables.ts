/** The tables as they stand after the last migration, in an order in which each may point at those before it. */
export const tables = {
  change_group: {
    id: 'text',
    kind: 'text',
    title: 'text',
    who: 'text',
    at: 'text',
    /** How many records it changed. */
    records: 'whole',
    undoes: 'text?',
    undone_by: 'text?',
  },
  record: {
    id: 'text',
    kind: 'text',
    name: 'text',
    /** The name folded, to sort by. */
    sort_name: 'text',
    /** Everything that a search looks at, folded. */
    folded: 'text',
    owner_id: 'text?',
    model_id: 'text?',
    parent_id: 'text?',
    /** What an import knows it by, one of its kind. */
    import_key: 'text?',
    /** Plain fields. */
    fields: 'json',
    sample: 'whole',
    revision: 'whole',
    created_at: 'text',
    updated_at: 'text',
    removed_at: 'text?',
  },
  photo: {
    id: 'text',
    record_id: 'text',
    field: 'text',
    jpeg: 'bytes',
    who: 'text',
    added_at: 'text',
  },
  reading: {
    id: 'text',
    record_id: 'text',
    field: 'text',
    /** As a setup document has it. */
    leaf: 'json',
    grade: 'text',
    who: 'text?',
    read_at: 'text?',
    entered_at: 'text',
    entered_by: 'text',
    /** Source of the import that it came with. */
    origin: 'text?',
    photo_id: 'text?',
    pinned_at: 'text?',
    withdrawn_at: 'text?',
  },
  history: {
    record_id: 'text',
    /** Revision of the record that the change made. */
    revision: 'whole',
    /** Place within the change. */
    n: 'whole',
    group_id: 'text',
    what: 'text',
    key: 'text',
    /** None where there was nothing. */
    before: 'json?',
    after: 'json?',
  },
  answer: {
    id: 'text',
    customer_id: 'text?',
    title: 'text',
    folded: 'text',
    /** The question as references. */
    refs: 'json',
    verdict: 'text',
    reason: 'text',
    asked_at: 'text',
    asked_by: 'text',
    checked_at: 'text',
    /** When a check came out otherwise than the one before, until somebody has dealt with it. */
    changed_at: 'text?',
    sample: 'whole',
    revision: 'whole',
  },
  answer_check: {
    answer_id: 'text',
    /** Revision of the answer that the check made. */
    revision: 'whole',
    verdict: 'text',
    reason: 'text',
    /** The answer. */
    summary: 'json',
    /** Where it would turn, by field. */
    thresholds: 'json?',
    /** Edition of the rules that it was checked by. */
    rules: 'text?',
    checked_at: 'text',
    checked_by: 'text',
  },
  answer_use: {
    answer_id: 'text',
    record_id: 'text',
    /** Field path below the record; empty for the record as a whole. */
    field: 'text',
    /** What was used, shortened; the record’s revision for the record as a whole. */
    used: 'text',
  },
  mapping: {
    id: 'text',
    headers: 'json',
    /** What each column means. */
    columns: 'json',
    who: 'text',
    at: 'text',
  },
  done_request: {
    key: 'text',
    /** Hash of what was asked. */
    request: 'text',
    /** None while it is worked on. */
    response: 'json?',
    at: 'text',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, ColumnType>>>>;

/** What a column holds; `?` where it may be empty; JSON is kept as text. */
export type ColumnType = 'text' | 'text?' | 'json' | 'json?' | 'whole' | 'bytes';

type Held<T> = T extends 'text' | 'json'
  ? string
  : T extends 'text?' | 'json?'
    ? string | null
    : T extends 'whole'
      ? number
      : Uint8Array;

/** One of the tables. */
export type TableName = keyof typeof tables;
/** A row of a table. */
export type Row<T extends TableName> = { -readonly [C in keyof (typeof tables)[T]]: Held<(typeof tables)[T][C]> };
/** The tables as the query builder knows them. */
export type Tables = { [T in TableName]: Row<T> };
/** By what each row of a table is told apart. */
export const rowKeys: Readonly<Record<TableName, readonly string[]>> = {
  change_group: ['id'],
  record: ['id'],
  photo: ['id'],
  reading: ['id'],
  history: ['record_id', 'revision', 'n'],
  answer: ['id'],
  answer_check: ['answer_id', 'revision'],
  answer_use: ['answer_id', 'record_id', 'field'],
  mapping: ['id'],
  done_request: ['key'],
};

/** The names of the tables, each after those that it points at. */
export const tableNames = Object.keys(tables) as readonly TableName[];
