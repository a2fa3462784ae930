import { readSetup, withEdits, type Edit, type Setup, type SetupDocument } from '../../records/index.ts';
import { prepareSetup, type Answer, type SetupQuestion } from '../assess/index.ts';
import type { NamedCheck } from '../findings/index.ts';
import type { Interval } from '../geometry/index.ts';
import { movable, type MovablePath } from './plan.ts';
import { readsAny } from './search.ts';

/** What a plan starts from: one row of pins, each measure at the place in use, and the checks that the implement's pins are read by. */
export interface Ground {
  readonly document: SetupDocument;
  /** The answer to the setup as it is. */
  readonly before: Answer;
  readonly question: SetupQuestion;
  readonly now: Readonly<Partial<Record<MovablePath, Interval>>>;
  /** Checks of the implement's own joint that are computed. */
  readonly checks: readonly NamedCheck[];
  readonly movableChecks: readonly NamedCheck[];
}

/** Clears the ground for a plan: the second row of pins is left out, and of several holes the one in use is looked at. */
export function groundOf(document: SetupDocument, before: Answer): Ground {
  const oneRow = withEdits(document, [{ path: 'implement.secondRow', value: undefined }]);
  const now = placesNow(prepareSetup(read(oneRow), 'joints'), before);
  const edits = movable.flatMap((path): Edit[] => {
    const range = now[path];
    return range === undefined ? [] : [{ path, value: { between: [range.low, range.high] } }];
  });
  const plain = withEdits(oneRow, edits);
  const question = prepareSetup(read(plain), 'joints');
  const checks = question.checks.filter((check) => readsImplement(question, check));
  return {
    document: plain,
    before,
    question,
    now,
    checks,
    movableChecks: checks.filter((check) => readsAny(question, check, movable)),
  };
}

/** Reads a document that was read before, with places in it that its fields accept. */
function read(document: SetupDocument): Setup {
  const reading = readSetup(document);
  if (!reading.ok)
    throw new Error(`invariant: ${reading.errors.map(({ path, code }) => `${path} ${code}`).join(', ')}`);
  return reading.setup;
}

function readsImplement({ ledger, field }: SetupQuestion, check: NamedCheck): boolean {
  return [...field.reads(check)].some((index) => ledger.entries[index]?.path.startsWith('implement.') === true);
}

/** Where the pins are: shoulder to shoulder whatever points were measured between, and the hole in use [mm]. */
function placesNow(question: SetupQuestion, before: Answer): Ground['now'] {
  const { ledger, joint } = question;
  const given = movable.filter((path) => ledger.given(path));
  return Object.fromEntries(
    given.map((path) => {
      if (path === 'implement.shoulderSpan')
        return [path, joint.rear.shoulders(joint.tractor('lowerBallWidth'))((i) => rangeAt(question, i))];
      const { low, high } = before.figures[path] ?? wholeRange(question, path);
      return [path, { low, high }];
    }),
  );
}

function rangeAt({ ledger }: SetupQuestion, index: number): Interval {
  return (ledger.entries[index] as { readonly range: Interval }).range;
}

function wholeRange(question: SetupQuestion, path: string): Interval {
  return question.ledger.term(path)((index) => rangeAt(question, index));
}
