import { readingGrades } from '@hitchwright/core/records';
import { recordKinds, setupKinds } from '@hitchwright/store';
import * as z from 'zod';
import { mayMiss, id, json, object, pageQuery, units } from './common.ts';

const grade = z.enum(readingGrades);
const kind = z.enum(recordKinds);
const fieldPath = z.string().min(1).max(200);

/** A reading that is to be written down. */
const readingDraft = z
  .strictObject({
    field: fieldPath,
    leaf: json,
    grade,
    who: mayMiss(z.string()),
    readAt: mayMiss(z.string()),
    photoId: mayMiss(id),
    pin: mayMiss(z.boolean()),
  })
  .meta({ id: 'ReadingDraft' });

const drafts = z.array(readingDraft).max(2000);

/** A record that is to be made. */
export const recordDraft = z
  .strictObject({
    kind,
    name: z.string(),
    owner: mayMiss(id),
    model: mayMiss(id),
    parent: mayMiss(id),
    key: mayMiss(z.string().max(600)),
    fields: mayMiss(object),
    readings: mayMiss(drafts),
    sample: mayMiss(z.boolean()),
    units: mayMiss(units),
  })
  .meta({ id: 'RecordDraft' });

/** A machine of a setup that is to be kept as a record. */
export const machineOfSetup = z
  .strictObject({ kind: z.enum(setupKinds), document: object, units: mayMiss(units) })
  .meta({ id: 'MachineOfSetup', description: 'The machine, or the drive shaft, as it stands in a setup.' });

/** What is to change in a record. */
export const recordChange = z
  .strictObject({
    name: mayMiss(z.string()),
    owner: mayMiss(id.nullable()),
    model: mayMiss(id),
    parent: mayMiss(id),
    key: mayMiss(z.string().max(600).nullable()),
    fields: mayMiss(object),
    add: mayMiss(drafts),
    withdraw: mayMiss(z.array(id).max(2000)),
    pin: mayMiss(z.array(id).max(2000)),
    unpin: mayMiss(z.array(id).max(2000)),
    units: mayMiss(units),
  })
  .meta({ id: 'RecordChange', description: 'What is left out stays; null takes a plain field away.' });

/** Readings that are to be added. */
export const readingsBody = z.strictObject({
  readings: z.array(readingDraft).min(1).max(2000),
  units: mayMiss(units),
});

/** A record without its readings. */
export const yardRecord = z
  .object({
    id: z.string(),
    kind,
    name: z.string(),
    owner: z.string().nullable(),
    model: z.string().nullable(),
    parent: z.string().nullable(),
    key: z.string().nullable(),
    fields: object,
    sample: z.boolean(),
    revision: z.number().int(),
    createdAt: z.string(),
    updatedAt: z.string(),
    removedAt: z.string().nullable(),
  })
  .meta({ id: 'Record' });

/** A reading. */
export const reading = z
  .object({
    id: z.string(),
    recordId: z.string(),
    field: z.string(),
    leaf: json,
    grade,
    who: z.string().nullable(),
    readAt: z.string().nullable(),
    enteredAt: z.string(),
    enteredBy: z.string(),
    origin: z.string().nullable(),
    photoId: z.string().nullable(),
    pinnedAt: z.string().nullable(),
    withdrawnAt: z.string().nullable(),
  })
  .meta({ id: 'Reading' });

/** Readings whose ranges are apart. */
export const conflicts = z
  .array(z.object({ readings: z.tuple([z.string(), z.string()]).readonly(), apartBy: z.number() }))
  .readonly();
/** What a reading won by. */
export const because = z.enum(['only', 'pinned', 'figure', 'grade', 'latest']);

const full = {
  readings: z.array(reading).readonly(),
  inUse: z.record(z.string(), z.object({ id: z.string(), because, conflicts })),
};

/** A record with its readings and which of them are in use. */
export const fullRecord = yardRecord.extend(full).meta({ id: 'FullRecord' });

/** The same with what a machine or a state stands on. */
export const standingRecord = fullRecord
  .extend({ over: mayMiss(fullRecord.nullable()) })
  .meta({ id: 'StandingRecord', description: '`over` is the model of a machine or the tractor of a state.' });

/** Which records are wanted. */
export const recordsQuery = z.object({
  ...pageQuery,
  kind: mayMiss(
    z
      .string()
      .max(200)
      .regex(new RegExp(`^(?:${recordKinds.join('|')})(?:,(?:${recordKinds.join('|')}))*$`)),
  ).meta({ description: 'One kind, or several with commas.' }),
  owner: mayMiss(id),
  model: mayMiss(id),
  parent: mayMiss(id),
  search: mayMiss(z.string().max(200)),
  sample: mayMiss(z.enum(['true', 'false'])),
  removed: mayMiss(z.enum(['true', 'false'])),
});

/** A group of changes. */
export const changeGroup = z
  .object({
    id: z.string(),
    kind: z.enum(['edit', 'import', 'undo', 'sample', 'forget']),
    title: z.string(),
    who: z.string(),
    at: z.string(),
    records: z.number().int(),
    undoes: z.string().nullable(),
    undoneBy: z.string().nullable(),
  })
  .meta({ id: 'ChangeGroup' });

/** One thing that changed. */
export const historyLine = z
  .object({
    recordId: z.string(),
    revision: z.number().int(),
    what: z.enum(['record', 'field', 'reading']),
    key: z.string(),
    before: json,
    after: json,
    group: changeGroup,
  })
  .meta({ id: 'HistoryLine' });
