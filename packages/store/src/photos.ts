import { longestName, refusal, textErrors } from './records/text.ts';
import type { By } from './records/kinds.ts';
import { writing, type Desk } from './room.ts';
import { NotFound, Refused } from './trouble.ts';

/** A photo of a reading, without its picture. */
export interface PhotoNote {
  readonly id: string;
  readonly recordId: string;
  readonly field: string;
  readonly who: string;
  readonly addedAt: string;
}

/** A photo. */
export interface Photo extends PhotoNote {
  readonly jpeg: Uint8Array;
}

/** Photos of what was read. They stay as long as their record. */
export interface Photos {
  /** At most 8 MB of JPEG. */
  add(
    by: By,
    photo: { readonly recordId: string; readonly field: string; readonly jpeg: Uint8Array },
  ): Promise<PhotoNote>;
  get(id: string): Promise<Photo>;
  of(recordId: string): Promise<readonly PhotoNote[]>;
}

const largest = 8_000_000;

/** The photos of a store. */
export function photosPart(desk: Desk): Photos {
  return {
    add: (by, { recordId, field, jpeg }) =>
      writing(desk, async ({ queries, ids, now }) => {
        refuseOthers(by, field, jpeg);
        const row = { id: ids(), record_id: recordId, field, who: by.who, added_at: now };
        const found = await queries.selectFrom('record').select('id').where('id', '=', recordId).executeTakeFirst();
        if (found === undefined) throw new NotFound('record', recordId);
        await queries
          .insertInto('photo')
          .values({ ...row, jpeg: Buffer.from(jpeg) })
          .execute();
        return noteOf(row);
      }),
    get: (id) =>
      desk.database.read(async (queries) => {
        const row = await queries.selectFrom('photo').selectAll().where('id', '=', id).executeTakeFirst();
        if (row === undefined) throw new NotFound('photo', id);
        return { ...noteOf(row), jpeg: new Uint8Array(row.jpeg) };
      }),
    of: (recordId) =>
      desk.database.read(async (queries) => {
        const rows = await queries
          .selectFrom('photo')
          .select(['id', 'record_id', 'field', 'who', 'added_at'])
          .where('record_id', '=', recordId)
          .orderBy('id')
          .execute();
        return rows.map(noteOf);
      }),
  };
}

function noteOf(row: { id: string; record_id: string; field: string; who: string; added_at: string }): PhotoNote {
  return { id: row.id, recordId: row.record_id, field: row.field, who: row.who, addedAt: row.added_at };
}

function refuseOthers(by: By, field: string, jpeg: Uint8Array): void {
  const isJpeg = jpeg[0] === 0xff && jpeg[1] === 0xd8 && jpeg[2] === 0xff;
  const errors = [
    ...textErrors('by.who', by.who, longestName, 1),
    ...textErrors('field', field, longestName),
    ...(isJpeg ? [] : [refusal('wrong-type', 'jpeg', 'a JPEG picture', 'other bytes', 'Save it as JPEG.')]),
    ...(jpeg.length <= largest
      ? []
      : [refusal('too-large', 'jpeg', `at most ${largest} bytes`, `${jpeg.length}`, 'Make it smaller.')]),
  ];
  if (errors.length > 0) throw new Refused(errors);
}
