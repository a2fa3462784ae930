import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { Line } from './historyTypes.ts';
import { gradeWords } from '../records/readingWords.ts';
import type { Grade } from '../records/recordTypes.ts';
import { fieldName, valueWords } from './valueWords.ts';
import { whenText } from './whenText.ts';

/** A reading as the history keeps it. */
interface Reading {
  readonly field: string;
  readonly leaf: unknown;
  readonly grade: Grade;
  readonly who: string | null;
  readonly withdrawnAt: string | null;
  readonly pinnedAt: string | null;
}

/** One thing that changed, before and after, in plain words. */
export function ChangeLine({ kind, line }: { readonly kind: string; readonly line: Line }) {
  if (line.what === 'reading')
    return (
      <ReadingLine
        kind={kind}
        before={line.before as unknown as Reading | null}
        after={line.after as unknown as Reading}
      />
    );
  if (line.what === 'field')
    return (
      <Turned kind={kind} name={fieldName(kind, line.key)} field={line.key} before={line.before} after={line.after} />
    );
  return <RecordLine kind={kind} line={line} />;
}

interface TurnedProps {
  readonly kind: string;
  readonly name: string;
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

function Turned({ kind, name, field, before, after }: TurnedProps) {
  const { system } = usePreferences();
  const words = (value: unknown): string => valueWords(kind, field, value, system);
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <s>
          <Figures text={words(before)} />
        </s>
        <span aria-hidden="true"> ▸ </span>
        <span className="unseen"> became </span>
        <Figures text={words(after)} />
      </dd>
    </div>
  );
}

function RecordLine({ kind, line: { key, before, after } }: { readonly kind: string; readonly line: Line }) {
  if (key === 'created') return <Said term="record" words="was made" />;
  if (key === 'removedAt')
    return after === null ? (
      <Said term="record" words="was brought back" />
    ) : (
      <Said term="record" words={`was removed on ${whenText(String(after))}`} />
    );
  if (key === 'owner' || key === 'model' || key === 'parent') {
    const words = after === null ? 'nobody’s any more' : before === null ? 'was chosen' : 'is another one now';
    return <Said term={fieldName(kind, key)} words={words} />;
  }
  return <Turned kind={kind} name={fieldName(kind, key)} field={key} before={before} after={after} />;
}

function Said({ term, words }: { readonly term: string; readonly words: string }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{words}</dd>
    </div>
  );
}

interface ReadingLineProps {
  readonly kind: string;
  readonly before: Reading | null;
  readonly after: Reading;
}

function ReadingLine({ kind, before, after }: ReadingLineProps) {
  const { system } = usePreferences();
  const by = after.who === null ? '' : ` by ${after.who}`;
  return (
    <div>
      <dt>{fieldName(kind, after.field)}</dt>
      <dd>
        <Figures text={valueWords(kind, after.field, after.leaf, system)} />{' '}
        <span className="his-how">
          ({gradeWords[after.grade]}
          {by}) {turnOf(before, after)}
        </span>
      </dd>
    </div>
  );
}

function turnOf(before: Reading | null, after: Reading): string {
  if (before === null)
    return after.pinnedAt === null ? 'was written down' : 'was written down, to be used whatever else is read';
  if (before.withdrawnAt === null && after.withdrawnAt !== null) return 'was withdrawn';
  if (before.withdrawnAt !== null && after.withdrawnAt === null) return 'counts again';
  return after.pinnedAt === null ? 'is no longer the chosen one' : 'was chosen to be used';
}
