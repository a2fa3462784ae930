import { advise, type Advice } from '@hitchwright/core/advice';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import {
  becauseOf,
  cautionWords,
  labelOf,
  restWords,
  suggestionDetails,
  suggestionText,
  verdictWords,
} from '@hitchwright/core/words';
import { askedFor, readFile, refuse, systemFor } from '../asked.ts';
import { exitCodeOf } from '../exit.ts';
import { entries, wrapped } from '../lines.ts';
import { visible, visibleJson } from '../visible.ts';

/** `hitchwright measure FILE`: what to measure next, best first, and what there is no need to measure. */
export function measureCommand(words: readonly string[]): number {
  const asked = askedFor('measure', words);
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const advised = advise(reading.document);
  if (!advised.ok) return refuse(advised.errors, asked.json);
  const system = systemFor(asked, reading.setup);
  process.stdout.write(
    asked.json
      ? visibleJson(`${JSON.stringify(adviceJson(advised.advice, system), null, 2)}\n`)
      : adviceReport(advised.advice, reading.setup, system),
  );
  return exitCodeOf(advised.advice.answer.verdict);
}

function adviceJson(advice: Advice, system: UnitSystem) {
  return {
    hitchwright: 1,
    saysSafeToRun: false,
    verdict: advice.answer.verdict,
    settled: advice.settled,
    next: advice.next.map((suggestion) => ({
      ...suggestion,
      label: labelOf(suggestion.path),
      text: suggestionText(suggestion, system),
      details: suggestionDetails(suggestion, system),
    })),
    tooClose: advice.tooClose,
    needless: advice.needless,
    rest: restWords(advice),
  };
}

function adviceReport(advice: Advice, setup: Setup, system: UnitSystem): string {
  const because = becauseOf(advice.answer, setup, system);
  const next = advice.next.map((suggestion, i) =>
    [
      ...wrapped(`${i + 1}. ${suggestionText(suggestion, system)}`, 2),
      ...suggestionDetails(suggestion, system).flatMap((text) => wrapped(text, 5)),
    ].join('\n'),
  );
  const blocks = [
    [verdictWords(advice.answer).toUpperCase(), ...(because === null ? [] : wrapped(because, 2))].join('\n'),
    ...(next.length === 0 ? [] : [['To measure, what settles most for its time first', ...next].join('\n')]),
    entries(restWords(advice)).join('\n'),
    wrapped(cautionWords.standClear, 0).join('\n'),
  ];
  return `${visible(blocks.filter((block) => block !== '').join('\n\n'))}\n`;
}
