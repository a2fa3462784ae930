import { after } from './changing.ts';
import type { By } from './kinds.ts';
import { refuseOrphans } from './references.ts';
import { recordOf } from './rows.ts';
import { keep, nextRevision, statesOf } from './states.ts';
import { chunksOf } from '../database/chunks.ts';
import type { Entry } from '../history/entries.ts';
import { inGroup } from '../history/log.ts';
import type { Room } from '../room.ts';

/** Takes every sample record out of the lists, as one group of changes, and deletes the sample answers. */
export async function removeSamples(room: Room, by: By) {
  const { queries, now } = room;
  const rows = await queries
    .selectFrom('record')
    .select('id')
    .where('sample', '=', 1)
    .where('removed_at', 'is', null)
    .execute();
  const gone: Entry = { what: 'record', key: 'removedAt', before: null, after: now };
  const { group } = await inGroup(room, { kind: 'sample', by }, async (open) => {
    for (const chunk of chunksOf(rows.map(({ id }) => id))) {
      const states = [...(await statesOf(queries, chunk, room.kind)).values()];
      const live = states.filter(({ record }) => record.removedAt === null);
      await keep(
        room,
        open,
        live.map((state) => nextRevision(state, after(state, [gone]), [gone], now)),
      );
    }
  });
  const removed = await queries.selectFrom('record').selectAll().where('sample', '=', 1).execute();
  await refuseOrphans(room, removed.map(recordOf));
  const answers = await queries.deleteFrom('answer').where('sample', '=', 1).executeTakeFirst();
  return { group, records: rows.length, answers: Number(answers.numDeletedRows) };
}
