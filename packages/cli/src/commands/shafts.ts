import { assess, type Answer, type Outcome } from '@hitchwright/core/assess';
import { answerJson } from '@hitchwright/core/contract';
import { topicOf } from '@hitchwright/core/findings';
import { withChosen, type InputError, type Setup, type SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { cureText, sentenceOf, serveText, serveWords, titleOf } from '@hitchwright/core/words';
import { askedFor, readFile, refuse, systemFor } from '../asked.ts';
import { exitCodeOf, UsageError } from '../exit.ts';
import { entries, wrapped } from '../lines.ts';
import { visible, visibleJson } from '../visible.ts';

/** One drive shaft among the parts, and the answer with it in the setup. */
interface Tried {
  readonly name: string;
  /** It is the one that the setup has now. */
  readonly fitted: boolean;
  readonly answer: Answer;
}

/** The order in which shafts are told, the best first. */
const ranks: readonly Outcome[] = ['works', 'withParts', 'measureFirst', 'notChecked', 'willNot', 'notNeeded'];

/** `hitchwright shafts FILE`: what every drive shaft among the setup's parts comes to. */
export function shaftsCommand(words: readonly string[]): number {
  const asked = askedFor('shafts', words);
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const { setup, document } = reading;
  if (setup.implement.driven === false)
    throw new UsageError('No drive shaft drives this implement: "driven" is false in it.');
  const tried = triedOut(document);
  if (!tried.ok) return refuse(tried.errors, asked.json);
  if (tried.shafts.length === 0)
    throw new UsageError('There is no drive shaft among the parts of this setup: add one of kind "driveShaft".');
  const system = systemFor(asked, setup);
  process.stdout.write(
    asked.json
      ? visibleJson(`${JSON.stringify(shaftsJson(tried.shafts, setup, system), null, 2)}\n`)
      : shaftsReport(tried.shafts, setup, system),
  );
  return exitCodeOf(tried.shafts[0]?.answer.outcomes.runs ?? 'willNot');
}

type Trial =
  | { readonly ok: true; readonly shafts: readonly Tried[] }
  | { readonly ok: false; readonly errors: readonly InputError[] };

/** Every shaft in its place, the best first. Other shafts, and cures that are counted on, are left out: none is told to serve because another does. */
function triedOut(document: SetupDocument): Trial {
  const parts = (document['parts'] ?? []) as readonly SetupDocument[];
  const others = parts.filter(({ kind }) => kind !== 'driveShaft');
  const shafts: Tried[] = [];
  for (const part of parts.filter(({ kind }) => kind === 'driveShaft')) {
    const assessment = assess(withChosen({ ...document, shaft: part['shaft'], parts: others }, []), { full: false });
    if (!assessment.ok) return assessment;
    const fitted = JSON.stringify(part['shaft']) === JSON.stringify(document['shaft']);
    shafts.push({ name: String(part['name']), fitted, answer: assessment.answer });
  }
  const rank = ({ answer }: Tried): number => ranks.indexOf(answer.outcomes.runs);
  return { ok: true, shafts: shafts.sort((a, b) => rank(a) - rank(b)) };
}

/** What stands against a shaft, or is open. */
function against({ findings }: Answer): Answer['findings'] {
  return findings.filter(
    ({ id, status, core }) => core && topicOf(id) === 'runs' && ['fail', 'cured', 'undecided'].includes(status),
  );
}

function shaftsJson(shafts: readonly Tried[], setup: Setup, system: UnitSystem) {
  return {
    hitchwright: 1,
    scope: 'drive',
    saysSafeToRun: false,
    shafts: shafts.map(({ name, fitted, answer }) => {
      const { findings, cures } = answerJson(answer, setup, system);
      return {
        name,
        fitted,
        outcome: answer.outcomes.runs,
        text: serveText(answer, system),
        against: findings.filter(({ id }) => against(answer).some((finding) => finding.id === id)),
        cures: cures.filter(({ cures }) => cures.some((id) => topicOf(id) === 'runs')),
      };
    }),
  };
}

function shaftsReport(shafts: readonly Tried[], setup: Setup, system: UnitSystem): string {
  const serving = shafts.filter(({ answer }) => answer.outcomes.runs === 'works').length;
  const head = `${serving} of ${shafts.length} drive ${shafts.length === 1 ? 'shaft serves' : 'shafts serve'} at every position.`;
  const blocks = shafts.map((tried) => shaftBlock(tried, setup, system));
  return `${[questionOf(setup), head, ...blocks].join('\n\n')}\n`;
}

function questionOf({ tractor, coupler, implement }: Setup): string {
  const between = coupler === undefined ? '' : ` with the ${coupler.name ?? 'coupler'}`;
  return visible(
    `Which drive shaft serves the ${implement.name ?? 'implement'} on the ${tractor.name ?? 'tractor'}${between}?`,
  );
}

function shaftBlock({ name, fitted, answer }: Tried, setup: Setup, system: UnitSystem): string {
  const cures = answer.cures.filter((cure) => cure.cures.some((id) => topicOf(id) === 'runs'));
  return [
    `${serveWords[answer.outcomes.runs].toUpperCase()}: ${visible(name)}${fitted ? ' (in the setup now)' : ''}`,
    ...against(answer).flatMap((finding) =>
      wrapped(visible(`${titleOf(finding)}: ${sentenceOf(finding, setup, system)}`), 2),
    ),
    ...entries(cures.map((cure) => cureText(cure, system))),
  ].join('\n');
}
