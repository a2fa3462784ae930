import { readFileSync } from 'node:fs';
import { assess, type Answer, type AssessOptions } from '../src/engine/assess/index.ts';
import type { CheckId, Finding } from '../src/engine/findings/index.ts';
import { withEdits, type Edit, type SetupDocument } from '../src/records/index.ts';

/** An example setup by its name below examples/setups, changed where wanted. */
export function example(name: string, edits: readonly Edit[] = []): SetupDocument {
  const file = new URL(`../../../examples/setups/${name}.json`, import.meta.url);
  return withEdits(JSON.parse(readFileSync(file, 'utf8')) as SetupDocument, edits);
}

/** The answer to a setup that can be read. */
export function answer(document: SetupDocument, options: AssessOptions = { full: false }): Answer {
  const assessment = assess(document, options);
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return assessment.answer;
}

/** One finding of an answer, or of the answer to a setup. */
export function finding(of: Answer | SetupDocument, id: CheckId): Finding {
  const { findings } = isAnswer(of) ? of : answer(of);
  const found = findings.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no finding ${id}`);
  return found;
}

function isAnswer(of: Answer | SetupDocument): of is Answer {
  return 'findings' in of;
}
