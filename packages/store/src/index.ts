export { openStore, type StoreOptions } from './openStore.ts';
export type { Store } from './store.ts';
export { Conflict, NotFound, Refused, StoreTrouble, type TroubleCode } from './trouble.ts';
export type { Page, PageWanted } from './cursor.ts';

export type { Readings, Records } from './records/part.ts';
export {
  recordKinds,
  type By,
  type Fields,
  type FullRecord,
  type Reading,
  type ReadingDraft,
  type RecordChange,
  type RecordDraft,
  type RecordKind,
  type YardRecord,
} from './records/kinds.ts';
export type { RecordsWanted } from './records/listing.ts';
export { gradeOf } from './records/newReading.ts';

export type { History } from './history/part.ts';
export type { ChangeGroup, GroupKind } from './history/log.ts';
export type { GroupsWanted, HistoryLine } from './history/reading.ts';
export type { LaterChange } from './history/overwriting.ts';
export type { Undone } from './history/undo.ts';

export type { CustomerExport, Customers, Forgotten } from './customers.ts';
export type { Photo, PhotoNote, Photos } from './photos.ts';
export type { Mapping, Mappings } from './mappings.ts';
export type { Done, Requests } from './requests.ts';

export type { PartRefs, SetupRefs } from './setup/refs.ts';
export type { Source, YardSetup } from './setup/setupFor.ts';
export type { Use } from './setup/uses.ts';

export type { Answers } from './answers/part.ts';
export type {
  AnswerCheck,
  AnswerDraft,
  AnswerNote,
  AnswersWanted,
  AnswerToCheck,
  CheckResult,
  SavedAnswer,
} from './answers/kinds.ts';

export type { Imports, ImportWatch } from './imports/part.ts';
export type { Import, ImportProgress, ImportResult, ImportRow, RowPreview } from './imports/rows.ts';
export { draftFrom, setupKinds, yardRows } from './imports/fromYard.ts';

export type { Keeping } from './keep/part.ts';
export type { ArchiveHead, Counts, Sink } from './keep/archive.ts';
export type { ArchiveText } from './keep/unarchive.ts';
export { inspectBackup, type Backup } from './keep/backup.ts';
export { restoreBackup, type Restored, type Restoring } from './keep/restore.ts';
