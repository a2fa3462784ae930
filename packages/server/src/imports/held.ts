import type { Sheet } from '@hitchwright/core/exchange';
import type { InputError } from '@hitchwright/core/records';
import { NotFound, Refused, type By, type ImportProgress, type ImportResult, type Store } from '@hitchwright/store';
import { readSheetFile } from '../sheets/index.ts';
import { HttpRefusal, otherRequest } from '../http/refusal.ts';
import { chosenFor, guessedFor, headingsOf, type Choice, type Guessed } from './guessed.ts';
import { mergedRows, mergedView, readAll, type RowsRead } from './rows.ts';

/** Where an import stands. */
type ImportState = 'open' | 'running' | 'done' | 'refused' | 'cancelled' | 'failed';

/** A file that somebody is importing. It is held until it is written or left alone; the yard keeps only what is written. */
export interface HeldImport {
  readonly id: string;
  readonly name: string;
  readonly sheets: readonly Sheet[];
  /** What was taken for granted on the way, in sentences. */
  readonly told: readonly string[];
  sheet: number;
  guessed: Guessed;
  read: Promise<RowsRead> | null;
  state: ImportState;
  progress: ImportProgress;
  result: ImportResult | null;
  errors: readonly InputError[];
  stop: AbortController | null;
  /** The request that began the writing. */
  begun: Pick<CommitWanted, 'key' | 'body'> | null;
  /** Whoever waits for it to end. */
  ended: Promise<void>;
  touchedAt: string;
}

/** What is wanted of the writing. */
interface CommitWanted {
  readonly leaveOut: readonly number[];
  readonly remember: boolean;
  readonly source: string;
  /** Idempotency-Key of the request, and a hash of its body. */
  readonly key: string | null;
  readonly body: string;
}

/** The files that are being imported. */
export interface HeldImports {
  open(name: string, bytes: Uint8Array): Promise<HeldImport>;
  get(id: string): HeldImport;
  choose(id: string, choice: Choice): Promise<HeldImport>;
  /** Its rows as they will be written: rows of one record at the first of them. */
  rows(id: string): Promise<RowsRead>;
  /** Begins to write, wholly or not at all; begun already, it says how far it is. */
  commit(by: By, id: string, wanted: CommitWanted): Promise<HeldImport>;
  /** Stops the writing, of which nothing stays; or lets go of what was not begun. */
  cancel(id: string): Promise<HeldImport>;
  /** Waits until what is being written is written. */
  close(): Promise<void>;
}

/** Files that are held at once, and how long one that nobody looks at [ms]. */
const mostHeld = 8;
const longestHeld = 3_600_000;

/** What holding files takes. */
export interface Holding {
  readonly store: Store;
  readonly clock: () => string;
  readonly ids: () => string;
  /** Told when something was written. */
  readonly onWritten: () => void;
}

/** Holds the files that are being imported. */
export function holdImports(holding: Holding): HeldImports {
  const { store, clock, ids } = holding;
  const held = new Map<string, HeldImport>();
  const get = (id: string): HeldImport => {
    const one = held.get(id);
    if (one === undefined) throw new NotFound('import', id);
    one.touchedAt = clock();
    return one;
  };
  const rowsOf = (one: HeldImport): Promise<RowsRead> => {
    const { mapping } = one.guessed;
    if (mapping === null) throw new Refused(one.guessed.errors);
    one.read ??= readAll(one.sheets[one.sheet]?.rows ?? [], mapping);
    return one.read;
  };
  return {
    async open(name, bytes) {
      makeRoom(held, clock());
      const reading = await readSheetFile(bytes, name);
      if (!reading.ok) throw new Refused(reading.errors);
      const { sheets, told } = reading.file;
      const { sheet, guessed } = await guessedFor(store, sheets, null);
      const one = { ...fresh, id: ids(), name, sheets, told, sheet, guessed, touchedAt: clock() };
      held.set(one.id, one);
      return one;
    },
    get,
    async choose(id, choice) {
      const one = waiting(get(id));
      const { sheet, guessed } = await chosenFor(store, one, choice);
      return Object.assign(waiting(one), { sheet, guessed, read: null });
    },
    async rows(id) {
      return mergedView(await rowsOf(get(id)));
    },
    async commit(by, id, wanted) {
      const one = get(id);
      if (isBegun(one, wanted)) return one;
      const { readings } = await rowsOf(one);
      if (isBegun(one, wanted)) return one;
      const stop = new AbortController();
      const progress = { done: 0, total: readings.length };
      Object.assign(one, { state: 'running', stop, errors: [], progress, begun: wanted });
      one.ended = written(holding, one, by, { ...wanted, signal: stop.signal });
      return one;
    },
    async cancel(id) {
      const one = get(id);
      if (one.state === 'running') {
        one.stop?.abort();
        await one.ended;
      } else if (one.state === 'open' || one.state === 'refused') one.state = 'cancelled';
      if (one.state === 'cancelled') held.delete(id);
      return one;
    },
    async close() {
      await Promise.all([...held.values()].map(({ ended }) => ended));
    },
  };
}

const fresh = {
  read: null,
  state: 'open',
  progress: { done: 0, total: 0 },
  result: null,
  errors: [],
  stop: null,
  begun: null,
  ended: Promise.resolve(),
} as const;

/** Whether the writing has begun already: it is not begun twice. */
function isBegun({ state, begun }: HeldImport, { key, body }: CommitWanted): boolean {
  if (key !== null && begun?.key === key && begun.body !== body) throw otherRequest();
  return state === 'running' || state === 'done';
}

/** An import that was not begun, or was refused and may be tried again. */
function waiting(one: HeldImport): HeldImport {
  if (one.state === 'open' || one.state === 'refused') return Object.assign(one, { state: 'open', errors: [] });
  throw new HttpRefusal(409, {
    trouble: 'conflict',
    message: 'The import has begun already. Nothing was changed.',
    current: { state: one.state },
  });
}

/** Lets go of what nobody has looked at for long, and of the oldest that is not being written. */
function makeRoom(held: Map<string, HeldImport>, now: string): void {
  for (const [id, { state, touchedAt }] of held)
    if (state !== 'running' && Date.parse(now) - Date.parse(touchedAt) > longestHeld) held.delete(id);
  while (held.size >= mostHeld) {
    const oldest = [...held.values()]
      .filter(({ state }) => state !== 'running')
      .sort((a, b) => (a.touchedAt < b.touchedAt ? -1 : 1))[0];
    if (oldest === undefined)
      throw new HttpRefusal(503, { trouble: 'busy', message: 'Too many imports are being written; try again.' });
    held.delete(oldest.id);
  }
}

/** Writes an import and notes on it how it ended; it never throws. */
async function written(
  { store, onWritten }: Holding,
  one: HeldImport,
  by: By,
  { leaveOut, remember, source, signal }: CommitWanted & { readonly signal: AbortSignal },
): Promise<void> {
  try {
    const { rows, sheetRows } = mergedRows(await (one.read as Promise<RowsRead>), leaveOut);
    const { result, errors } = await store.imports
      .write(by, { source, rows }, { signal, onProgress: (progress) => void (one.progress = progress) })
      .then(
        (kept) => ({ result: kept, errors: [] }),
        (problem: unknown) => {
          if (!(problem instanceof Refused)) throw problem;
          return { result: null, errors: problem.errors.map((error) => inSheet(error, sheetRows)) };
        },
      );
    const { mapping } = one.guessed;
    if (result !== null && remember && mapping !== null)
      await store.mappings.put(by, headingsOf(mapping.columns), mapping);
    Object.assign(one, { state: result === null ? 'refused' : 'done', result, errors });
    onWritten();
  } catch (problem) {
    one.state = signal.aborted ? 'cancelled' : 'failed';
    if (one.state === 'failed') console.error('An import failed:', problem);
  }
}

/** An error of the n-th row of an import at the row as the sheet counts it. */
function inSheet(error: InputError, sheetRows: readonly number[]): InputError {
  const path = error.path.replace(/^rows\.(\d+)/, (_, index: string) => `rows.${sheetRows[Number(index)] ?? index}`);
  return { ...error, path };
}
