import { toolsFor } from '@hitchwright/core/advice';
import { readValue, type FieldRule } from '@hitchwright/core/records';
import { unitNameIn } from '@hitchwright/core/units';
import { toolWords } from '@hitchwright/core/words';
import { useMutation } from '@tanstack/react-query';
import { usePreferences } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import { Trouble } from '../../app/server/Trouble.tsx';
import { onceKey, said, yard } from '../../app/server/yard.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ErrorWords } from '../check/ErrorList.tsx';
import { entryOf, modeNames, modesOf, rawOf, type Entry, type EntryMode } from '../dimensions/entry.ts';
import { FigureBoxes } from '../dimensions/FigureBoxes.tsx';
import { pointName, pointsQuestion } from '../dimensions/plainChoices.ts';
import { readText } from '../dimensions/readText.ts';
import { shrunk } from '../measure/shrinkPhoto.ts';
import { pathIn } from './fieldsOf.ts';
import { readingKey, useHalfTyped } from './halfTyped.ts';
import { Labelled } from './Labelled.tsx';
import { gradeWords } from './readingWords.ts';
import type { Draft, Grade } from './recordTypes.ts';
import type { RecordDesk } from './useRecord.ts';

interface ReadingFormProps {
  readonly desk: RecordDesk;
  readonly field: string;
  readonly rule: FieldRule;
}

/** Who read it, how, when, from what: what stands beside the figure. */
interface About {
  readonly grade: Grade;
  /** With what it was read; empty where that is not said. */
  readonly tool: string;
  readonly who: string;
  readonly when: string;
  readonly source: string;
  readonly note: string;
}

/** A reading as far as it is typed. */
interface HalfTyped {
  readonly entry: Entry;
  readonly about: About;
  readonly photo: File | null;
}

/** Another reading of a field: it stands beside the others, and the rule or a person chooses. */
export function ReadingForm({ desk, field, rule }: ReadingFormProps) {
  const { system, who } = usePreferences();
  const path = pathIn(desk.record, field);
  const [kept, keep] = useHalfTyped<HalfTyped>(readingKey(desk.record.id, field));
  const fresh = freshReading(path, who);
  const { entry, about, photo } = kept ?? fresh;
  const type = (part: Partial<HalfTyped>): void => keep({ ...(kept ?? fresh), ...part });
  const leaf = leafOf(entry, about);
  const { value, errors } = leaf === undefined ? { value: null, errors: [] } : readValue(leaf, rule, '', system);
  const writing = useMutation({
    mutationFn: async () => {
      const photoId = photo === null ? null : await keptPhoto(desk.record.id, field, photo);
      const draft: Draft = { field, leaf: leaf ?? null, grade: about.grade, ...(photoId === null ? {} : { photoId }) };
      if (!(await desk.add(draft))) return;
      keep(undefined);
    },
  });
  const isBusy = writing.isPending || desk.isWriting;
  return (
    <form
      className="reading-form"
      aria-label={`Another reading of the ${rule.label}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (leaf !== undefined && errors.length === 0 && !isBusy) writing.mutate();
      }}
    >
      <div className="field-head">
        <span className="field-label">
          Another reading <span className="field-unit">({unitNameIn(system, rule.dimension)})</span>
        </span>
        <select
          className="field-mode"
          aria-label={`${rule.label}: how it is given`}
          value={entry.mode}
          onChange={({ target }) => type({ entry: { ...entry, mode: target.value as EntryMode } })}
        >
          {modesOf(path).map((mode) => (
            <option key={mode} value={mode}>
              {modeNames[mode]}
            </option>
          ))}
        </select>
      </div>
      <FigureBoxes
        id={`new-${field}`}
        path={path}
        entry={entry}
        rule={rule}
        isWrong={errors.length > 0}
        onEdit={(change) => type({ entry: { ...entry, ...change } })}
      />
      <div id={`new-${field}-read`} className="field-read">
        {errors.map((error) => (
          <p key={`${error.path} ${error.code}`} className="field-error">
            <ErrorWords error={error} />
          </p>
        ))}
        {errors.length > 0 || value === null ? null : <Figures text={readText(value, rule, system)} />}
      </div>
      <Points path={path} rule={rule} entry={entry} onEdit={(next) => type({ entry: next })} />
      <AboutFields path={path} about={about} onAbout={(next) => type({ about: next })} />
      <label className="reading-photo">
        <span>Photo of the tape on it</span>
        <input
          key={photo === null ? 'none' : 'one'}
          type="file"
          accept="image/*"
          onChange={({ target }) => type({ photo: target.files?.[0] ?? null })}
        />
        {photo === null ? null : <span>{photo.name}</span>}
      </label>
      <Trouble problem={writing.error} />
      <button type="submit" className="button-solid" disabled={leaf === undefined || errors.length > 0 || isBusy}>
        Write it down
      </button>
    </form>
  );
}

/** A reading of which nothing is typed yet, by whoever writes here. */
function freshReading(path: string, who: string): HalfTyped {
  const about: About = { grade: 'measured', tool: '', who, when: today(), source: '', note: '' };
  return { entry: entryOf(undefined, path), about, photo: null };
}

interface PointsProps {
  readonly path: string;
  readonly rule: FieldRule;
  readonly entry: Entry;
  readonly onEdit: (entry: Entry) => void;
}

function Points({ path, rule, entry, onEdit }: PointsProps) {
  if (rule.from === undefined || entry.mode === 'unknown') return null;
  return (
    <Labelled words={pointsQuestion(path)}>
      <select value={entry.from} onChange={({ target }) => onEdit({ ...entry, from: target.value })}>
        <option value="">not said, taken as {pointName(path, rule.from[0] ?? '')}</option>
        {rule.from.map((point) => (
          <option key={point} value={point}>
            {pointName(path, point)}
          </option>
        ))}
      </select>
    </Labelled>
  );
}

interface AboutProps {
  readonly path: string;
  readonly about: About;
  readonly onAbout: (about: About) => void;
}

function AboutFields({ path, about, onAbout }: AboutProps) {
  const text = (key: 'who' | 'source' | 'note', words: string) => (
    <Labelled words={words}>
      <input value={about[key]} maxLength={200} onChange={({ target }) => onAbout({ ...about, [key]: target.value })} />
    </Labelled>
  );
  return (
    <div className="reading-about">
      <Labelled words="Where it comes from">
        <select value={about.grade} onChange={({ target }) => onAbout({ ...about, grade: target.value as Grade })}>
          {(Object.keys(gradeWords) as Grade[]).map((grade) => (
            <option key={grade} value={grade}>
              {gradeWords[grade]}
            </option>
          ))}
        </select>
      </Labelled>
      {about.grade === 'measured' ? (
        <Labelled words="With what">
          <select value={about.tool} onChange={({ target }) => onAbout({ ...about, tool: target.value })}>
            <option value="">not said</option>
            {toolsFor(path).map((tool) => (
              <option key={tool} value={tool}>
                {toolWords[tool]}
              </option>
            ))}
          </select>
        </Labelled>
      ) : null}
      {text('who', 'Who read it')}
      <Labelled words="On which day">
        <input type="date" value={about.when} onChange={({ target }) => onAbout({ ...about, when: target.value })} />
      </Labelled>
      {text('source', 'Manual, listing or other source')}
      {text('note', 'Note')}
    </div>
  );
}

/** The figure with what stands beside it, as a setup document has it; undefined where nothing was typed. */
function leafOf(entry: Entry, { grade, tool, who, when, source, note }: About): unknown {
  const raw = rawOf(entry);
  const beside = Object.fromEntries(
    Object.entries({ tool: grade === 'measured' ? tool : '', who, when, source, note }).filter(
      ([, text]) => text.trim() !== '',
    ),
  );
  if (raw === undefined) return undefined;
  if (raw === null) return { unknown: true, ...beside };
  return typeof raw === 'object' && !Array.isArray(raw) ? { ...raw, ...beside } : { value: raw, ...beside };
}

async function keptPhoto(id: string, field: string, photo: File): Promise<string> {
  const jpeg = await shrunk(photo);
  const made = await said(
    yard.records[':id'].photos.$post(
      { param: { id }, query: { field }, header: { 'idempotency-key': onceKey() } },
      { init: { body: jpeg, headers: { 'content-type': 'image/jpeg' } } },
    ),
  );
  return made.id;
}
