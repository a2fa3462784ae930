import type { Tool } from '@hitchwright/core/advice';
import { editFor, fieldOfPart, type Taking, type Typed } from '@hitchwright/core/readings';
import { fieldRules, withEdits, type Edit, type MeasuringRequest, type SetupDocument } from '@hitchwright/core/records';

/** One measuring, as it is kept on the device. What was read is kept apart, figure by figure. */
export interface Session {
  readonly id: string;
  readonly begun: string;
  /** The setup as it was when the measuring began. */
  readonly setup: SetupDocument;
  /** The request that it answers; null for a measuring of one’s own. */
  readonly request: Omit<MeasuringRequest, 'setup'> | null;
  readonly who: string;
  /** What has to be safe was said to be so. */
  readonly isReady: boolean;
  /** The tractor may not stand level; null until somebody has looked. */
  readonly isAslant: boolean | null;
}

/** Everything about one figure, as far as it has come. */
export interface Entry {
  /** The field, or one end or hole of it. */
  readonly path: string;
  /** Half typed, and the unit it is typed in; null is that of the person’s system. */
  readonly draft: string;
  readonly unit: string | null;
  readonly typed: readonly Typed[];
  readonly way: string | null;
  readonly tool: Tool | null;
  /** Doubts that the person has said are none. */
  readonly sure: readonly string[];
  /** What was chosen, where nothing is typed. */
  readonly chosen: unknown;
  readonly state: 'open' | 'done' | 'skipped';
  /** When it was last changed [ISO 8601]. */
  readonly touched: string;
}

/** An entry that nobody has begun. */
export function blankEntry(path: string): Entry {
  return {
    path,
    draft: '',
    unit: null,
    typed: [],
    way: null,
    tool: null,
    sure: [],
    chosen: undefined,
    state: 'open',
    touched: '',
  };
}

/** The entries of a session by path. */
export type Entries = ReadonlyMap<string, Entry>;

/** Whether a reading may be off because the tractor stands aslant: it may be, until somebody says that it stands level. */
export function standsAslant({ isAslant }: Session): boolean {
  return isAslant ?? true;
}

/** What was read of a figure, or null where nothing was. */
export function takingOf({ path, typed, way, tool }: Entry, isAslant: boolean): Taking | null {
  const [first, ...others] = typed;
  if (first === undefined) return null;
  return {
    path,
    typed: [first, ...others],
    ...(way === null ? {} : { way }),
    ...(tool === null ? {} : { tool }),
    ...(isAslant ? { aslant: true } : {}),
  };
}

/** The changes that the finished entries make to the setup, in the order in which they were finished. */
export function editsOf(session: Session, entries: Entries): Edit[] {
  const done = [...entries.values()]
    .filter(({ state }) => state === 'done')
    .sort((a, b) => a.touched.localeCompare(b.touched));
  const fields = [...new Set(done.map(({ path }) => fieldOfPart(path)))];
  const once = fields.reduce(
    (document, field) => changed(document, editIn(document, session, done, field)),
    session.setup,
  );
  return fields.flatMap((field) => editIn(once, session, done, field) ?? []);
}

function changed(document: SetupDocument, edit: Edit | null): SetupDocument {
  return edit === null ? document : withEdits(document, [edit]);
}

function editIn(document: SetupDocument, session: Session, done: readonly Entry[], field: string): Edit | null {
  const own = done.filter(({ path }) => fieldOfPart(path) === field);
  const when = own.at(-1)?.touched ?? '';
  if (!fieldRules.has(field)) return { path: field, value: own.at(-1)?.chosen };
  const takings = own.map((entry) => takingOf(entry, standsAslant(session))).filter((taking) => taking !== null);
  return editFor(document, field, takings, { who: session.who, when });
}
