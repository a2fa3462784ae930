import { fieldOfPart } from '@hitchwright/core/readings';
import { fieldRules } from '@hitchwright/core/records';
import { labelOf, sentenceCase } from '@hitchwright/core/words';
import { Figures } from '../../marks/Figures.tsx';
import { blankEntry, type Entry } from './session.ts';
import { choiceAt, optionSaid, type Step } from './steps.ts';
import { figurePlace, goTo } from './usePlace.ts';
import type { SessionDesk } from './useSession.ts';

interface ReadingListProps {
  readonly desk: SessionDesk;
  /** What is still to be read. */
  readonly steps: readonly Step[];
}

/** What is still to be read, what was read and what was left, each with the way to it. */
export function ReadingList({ desk, steps }: ReadingListProps) {
  const { entries } = desk;
  const all = [...entries.values()].sort((a, b) => a.touched.localeCompare(b.touched));
  const open = steps.map(({ path }) => entries.get(path) ?? blankEntry(path));
  const done = all.filter(({ state }) => state === 'done');
  const left = all.filter(({ state }) => state === 'skipped');
  return (
    <>
      <Part
        title="Still to read"
        entries={open}
        told={({ typed, draft }) => (typed.length > 0 || draft !== '' ? 'begun' : 'not read yet')}
        press="Read it"
        onLeave={(path) => desk.enter(path, { state: 'skipped', draft: '' })}
      />
      <Part title="Read" entries={done} told={toldBy} press="Look or correct" />
      <Part title="Left out" entries={left} told={() => 'left out'} press="Try it after all" />
    </>
  );
}

interface PartProps {
  readonly title: string;
  readonly entries: readonly Entry[];
  readonly told: (entry: Entry) => string;
  readonly press: string;
  /** Leaves one out. */
  readonly onLeave?: (path: string) => void;
}

function Part({ title, entries, told, press, onLeave }: PartProps) {
  if (entries.length === 0) return null;
  return (
    <section className="done-part">
      <h2>{title}</h2>
      <ul className="plain-list reading-list">
        {entries.map((entry) => (
          <li key={entry.path}>
            <span>
              <Figures text={sentenceCase(labelOf(entry.path))} />:{' '}
              <b>
                <Figures text={told(entry)} />
              </b>
            </span>
            {onLeave === undefined ? null : (
              <button type="button" className="quiet" onClick={() => onLeave(entry.path)}>
                Leave it out
                <span className="unseen">: {labelOf(entry.path)}</span>
              </button>
            )}
            <button type="button" onClick={() => goTo(figurePlace(entry.path))}>
              {press}
              <span className="unseen">: {labelOf(entry.path)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function toldBy({ path, typed, chosen }: Entry): string {
  if (fieldRules.has(fieldOfPart(path))) return typed.map(({ text }) => text).join(', ');
  const choice = choiceAt(path);
  const said = choice === null ? null : optionSaid(choice, chosen);
  return choice?.options.find(([value]) => value === said)?.[1] ?? String(chosen);
}
