import type { Desk } from '../room.ts';
import { Conflict, StoreTrouble } from '../trouble.ts';
import { archive, type ArchiveHead, type Sink } from './archive.ts';
import { backedUp, type Backup } from './backup.ts';
import { filled, type ArchiveText } from './unarchive.ts';

/** Taking all of a store elsewhere, and bringing it back. */
export interface Keeping {
  /** Writes a backup while the store is in use, and reads it again before it is given its name. Bring one back with `restoreBackup`. */
  backup(file: string): Promise<Backup>;
  /** Writes everything as lines of JSON, whichever database it is kept in. */
  exportAll(sink: Sink): Promise<ArchiveHead>;
  /** Puts what `exportAll` wrote into this store, wholly or not at all; throws Conflict where it holds something that may not be replaced. */
  importAll(text: ArchiveText, wanted?: { readonly replace?: boolean }): Promise<ArchiveHead>;
}

/** Backups, exports and imports of a whole store. */
export function keepingPart(desk: Desk): Keeping {
  const { database, clock } = desk;
  return {
    backup: (file) => backedUp(desk, file),
    exportAll: (sink) => database.readLong((queries) => archive(queries, clock(), sink)),
    importAll(text, { replace = false } = {}) {
      const ifKept = replace
        ? 'replace'
        : new Conflict('The store holds something already. Nothing was changed.', null);
      let isRead = false;
      return database.write((queries) => {
        if (isRead)
          throw new StoreTrouble('busy', 'Somebody else was writing meanwhile. Nothing was changed; import it again.');
        isRead = true;
        return filled(queries, database, text, ifKept);
      });
    },
  };
}
