import { assess, type Answer } from '@hitchwright/core/assess';
import { answerJson } from '@hitchwright/core/contract';
import type { Setup } from '@hitchwright/core/records';
import { askedFor, readFile, refuse, systemFor, type Asked } from '../asked.ts';
import { writeDrawing } from '../drawing.ts';
import { exitCodeOf } from '../exit.ts';
import { report } from '../report.ts';
import { visibleJson } from '../visible.ts';

const drawings = ['svg', 'side', 'plots', 'top', 'drive-plots', 'shaft', 'balance', 'slope'] as const;

/** `hitchwright check FILE`: the answer for one setup. */
export function checkCommand(words: readonly string[]): number {
  const asked = askedFor('check', words, drawings);
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const assessment = assess(reading.document);
  if (!assessment.ok) return refuse(assessment.errors, asked.json);
  print(assessment.answer, reading.setup, asked);
  return exitCodeOf(assessment.answer.verdict);
}

function print(answer: Answer, setup: Setup, asked: Asked): void {
  const system = systemFor(asked, setup);
  for (const name of drawings) {
    const file = asked.files[name];
    if (file !== undefined) writeDrawing(name, file, { setup, answer, system });
  }
  const text = asked.json
    ? visibleJson(`${JSON.stringify(answerJson(answer, setup, system), null, 2)}\n`)
    : report(answer, setup, system);
  process.stdout.write(text);
}
