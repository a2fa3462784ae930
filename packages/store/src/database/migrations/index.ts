import { records } from './0001-records.ts';
import { answers } from './0002-answers.ts';
import { errands } from './0003-errands.ts';
import type { Migration } from './migration.ts';

export { columnTypes } from './columnTypes.ts';
/** Every migration, oldest first. */
export const migrations: readonly Migration[] = [records, answers, errands];
