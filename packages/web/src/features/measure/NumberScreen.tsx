import { readingOf, toolsFor } from '@hitchwright/core/advice';
import { fieldOfPart, takenAs, type Agreement } from '@hitchwright/core/readings';
import { fieldRules, type FieldRule } from '@hitchwright/core/records';
import { printQuantity, unitNameIn, type UnitSystem } from '@hitchwright/core/units';
import { agreementText, toolWords } from '@hitchwright/core/words';
import { useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { FigureProps } from './FigureScreen.tsx';
import { Keypad } from './Keypad.tsx';
import { PhotoButton } from './PhotoButton.tsx';
import { Reading } from './Reading.tsx';
import { readDraft } from './readDraft.ts';
import { ScreenBar } from './ScreenBar.tsx';
import { ScreenHead } from './ScreenHead.tsx';
import { standsAslant, takingOf, type Entry } from './session.ts';
import { toolOf, type Phase } from './steps.ts';
import { TapeDrawing } from './TapeDrawing.tsx';
import { Decides } from './Decides.tsx';

interface NumberScreenProps extends FigureProps {
  readonly entry: Entry;
  readonly phase: Extract<Phase, { kind: 'type' | 'enough' }>;
}

/** One number: where the tape goes, what was read, where it decides, and the keys. */
export function NumberScreen({ desk, document, step, entry, phase }: NumberScreenProps) {
  const { system } = usePreferences();
  const [refusal, setRefusal] = useState<string | null>(null);
  const { path } = step;
  const rule = fieldRules.get(fieldOfPart(path));
  if (rule === undefined) return null;
  const unit = entry.unit ?? unitNameIn(system, rule.dimension);
  const draft = readDraft(entry.draft, unit, rule);
  const value = valueOf(entry, draft.ok ? draft.value : null, phase);
  const taken = phase.kind === 'enough' ? takenIn(document, entry, standsAslant(desk.session)) : null;
  const told = taken ?? value;
  const submit = (): void => {
    if (!draft.ok) return setRefusal(draft.words);
    setRefusal(null);
    desk.enter(path, { typed: [...entry.typed, { text: draft.text, value: draft.value }], draft: '' });
  };
  const enter = (part: Partial<Entry>): void => {
    setRefusal(null);
    desk.enter(path, part);
  };
  const accuracy = readingOf(path, value ?? 0, toolOf(entry)).accuracy;
  const isTyped = entry.draft.trim() !== '';
  return (
    <section className="measure-sheet number-screen" aria-labelledby="figure-title" data-path={path}>
      <div className="number-picture">
        <ScreenHead document={document} step={step} />
        <TapeDrawing
          path={fieldOfPart(path)}
          way={entry.way}
          reading={told === null ? null : printed(told, rule, system)}
        />
      </div>
      <div className="number-desk">
        <ToolSwitch path={path} entry={entry} onTool={(tool) => enter({ tool })} />
        <div className="number-reading">
          <Reading
            draft={phase.kind === 'enough' ? '' : entry.draft}
            unit={unit}
            told={told}
            rule={rule}
            isSettled={phase.kind === 'enough'}
            onType={(text) => enter({ draft: text })}
            onEnter={submit}
          />
          <PhotoButton session={desk.session.id} path={path} />
        </div>
        {refusal === null ? null : (
          <p className="doubt" role="alert">
            {refusal}
          </p>
        )}
        <SaidOfReadings phase={phase} path={path} entry={entry} system={system} />
        {desk.session.request !== null || (phase.kind === 'type' && phase.nth > 1 && told === null) ? null : (
          <Decides suggestion={step.suggestion} path={path} value={told} accuracy={accuracy} rule={rule} />
        )}
        {phase.kind === 'enough' ? null : (
          <Keypad
            rule={rule}
            unit={unit}
            tool={toolOf(entry)}
            draft={entry.draft}
            onDraft={(text) => enter({ draft: text })}
            onUnit={(next) => enter({ unit: next })}
          />
        )}
        <NumberBar phase={phase} isTyped={isTyped} entry={entry} onEnter={enter} onSubmit={submit} />
      </div>
    </section>
  );
}

/** What is typed; the next reading is taken without the last one in view, or it would lean on it. */
function valueOf({ typed }: Entry, draft: number | null, phase: NumberScreenProps['phase']): number | null {
  return phase.kind === 'type' ? draft : (typed.at(-1)?.value ?? null);
}

/** The middle of what was taken, once nothing more is asked. */
function takenIn(document: FigureProps['document'], entry: Entry, isAslant: boolean): number | null {
  const taking = takingOf(entry, isAslant);
  const taken = taking === null ? null : takenAs(document, taking);
  return taken !== null && taken.ok ? (taken.range.low + taken.range.high) / 2 : null;
}

function printed(value: number, rule: FieldRule, system: UnitSystem): string {
  return printQuantity(value, rule.dimension, { system });
}

function ToolSwitch({
  path,
  entry,
  onTool,
}: {
  readonly path: string;
  readonly entry: Entry;
  readonly onTool: (tool: Entry['tool']) => void;
}) {
  const tools = toolsFor(fieldOfPart(path));
  const used = toolOf(entry);
  if (tools.length < 2) return null;
  return (
    <div className="tool-switch" role="group" aria-label="Read with">
      {tools.map((tool) => (
        <button key={tool} type="button" aria-pressed={tool === used} onClick={() => onTool(tool)}>
          {toolWords[tool]}
        </button>
      ))}
    </div>
  );
}

interface SaidProps extends Pick<NumberScreenProps, 'phase' | 'entry'> {
  readonly path: string;
  readonly system: UnitSystem;
}

/** How the readings agree so far, and how the next is taken. */
function SaidOfReadings({ phase, path, entry, system }: SaidProps) {
  const agreement: Agreement | null = phase.kind === 'type' ? phase.agreement : null;
  const text = phase.kind === 'enough' && entry.typed.length > 1 ? 'Two readings agree.' : null;
  const said = agreement === null ? text : agreementText(agreement, path, system);
  if (said === null) return null;
  return (
    <p className="said" role="status">
      <Figures text={agreement?.kind === 'once' ? said : `${entry.typed.map((one) => one.text).join(', ')}. ${said}`} />
    </p>
  );
}

interface NumberBarProps extends Pick<NumberScreenProps, 'phase' | 'entry'> {
  readonly isTyped: boolean;
  readonly onEnter: (part: Partial<Entry>) => void;
  readonly onSubmit: () => void;
}

function NumberBar({ phase, isTyped, entry, onEnter, onSubmit }: NumberBarProps) {
  if (phase.kind === 'enough') {
    return (
      <ScreenBar>
        <button type="button" onClick={() => onEnter({ typed: [], way: null, sure: [], draft: '' })}>
          Read it again
        </button>
        <button type="button" className="button-solid" onClick={() => onEnter({ state: 'done' })}>
          Next
        </button>
      </ScreenBar>
    );
  }
  const isFirst = phase.nth === 1;
  return (
    <ScreenBar>
      {isFirst ? (
        <button type="button" onClick={() => onEnter({ state: 'skipped', draft: '' })}>
          Can’t reach it
        </button>
      ) : (
        <button type="button" onClick={() => onEnter({ state: 'done', draft: '' })}>
          {entry.typed.length === 1 ? 'Once is enough' : 'Keep what they leave open'}
        </button>
      )}
      <button type="button" className="button-solid" disabled={!isTyped} onClick={onSubmit}>
        {isFirst ? 'Keep this reading' : 'Compare'}
      </button>
    </ScreenBar>
  );
}
