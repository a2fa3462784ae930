import { createHash } from 'node:crypto';
import { fitsIn } from './records/paths.ts';
import { folded, longestName, refusal, textErrors } from './records/text.ts';
import type { By } from './records/kinds.ts';
import { writing, type Desk } from './room.ts';
import { Refused } from './trouble.ts';

/** What each column of a file means, as somebody said it before. */
export interface Mapping {
  readonly headers: readonly string[];
  /** [JSON] */
  readonly columns: unknown;
  readonly who: string;
  readonly at: string;
}

/** Column mappings of imports, remembered by the set of their headers, in whatever order and capitals. */
export interface Mappings {
  get(headers: readonly string[]): Promise<Mapping | null>;
  put(by: By, headers: readonly string[], columns: unknown): Promise<void>;
}

const largest = 100_000;

/** The mappings of a store. */
export function mappingsPart(desk: Desk): Mappings {
  return {
    get: (headers) =>
      desk.database.read(async (queries) => {
        const row = await queries.selectFrom('mapping').selectAll().where('id', '=', idOf(headers)).executeTakeFirst();
        if (row === undefined) return null;
        const { who, at } = row;
        return { headers: JSON.parse(row.headers) as string[], columns: JSON.parse(row.columns) as unknown, who, at };
      }),
    put: (by, headers, columns) =>
      writing(desk, async ({ queries, now }) => {
        const tooLarge = refusal('too-large', 'columns', `at most ${largest} characters`, 'more', 'Shorten it.');
        const fits = fitsIn(headers, largest) && fitsIn(columns, largest);
        const errors = [...textErrors('by.who', by.who, longestName, 1), ...(fits ? [] : [tooLarge])];
        if (errors.length > 0) throw new Refused(errors);
        const said = {
          headers: JSON.stringify(headers),
          columns: JSON.stringify(columns ?? null),
          who: by.who,
          at: now,
        };
        await queries
          .insertInto('mapping')
          .values({ id: idOf(headers), ...said })
          .onConflict((conflict) => conflict.column('id').doUpdateSet(said))
          .execute();
      }),
  };
}

function idOf(headers: readonly string[]): string {
  const set = [...new Set(headers.map(folded))].sort();
  return createHash('sha256').update(JSON.stringify(set)).digest('base64url');
}
