import { readingOf, type Advice, type Suggestion, type Tool } from '@hitchwright/core/advice';
import {
  agreementOf,
  doubtsAbout,
  partsOf,
  takenAs,
  wayQuestion,
  fieldOfPart,
  type Agreement,
  type Doubt,
  type WayQuestion,
} from '@hitchwright/core/readings';
import { fieldRules, type SetupDocument } from '@hitchwright/core/records';
import { plainChoices, saidBy, type PlainChoice } from '../dimensions/plainChoices.ts';
import { takingOf, type Entries, type Entry, type Session } from './session.ts';

/** One screen’s worth: a figure, or one end or hole of it, and why it is asked. */
export interface Step {
  readonly path: string;
  readonly suggestion: Suggestion;
}

/** What can be chosen where nothing is typed. */
export function choiceAt(path: string): PlainChoice | null {
  return fieldRules.has(path) ? null : (plainChoices[path.slice(path.lastIndexOf('.') + 1)] ?? null);
}

/** Which option of a choice was said, as an entry keeps it; null where none was. */
export function optionSaid(choice: PlainChoice, chosen: unknown): string | null {
  const kept = JSON.stringify(chosen);
  return choice.options.find(([value]) => JSON.stringify(saidBy(choice, value) ?? value) === kept)?.[0] ?? null;
}

/** Whether somebody at the machine can read it or say it. */
export function isReadable(path: string): boolean {
  return fieldRules.has(path) || choiceAt(path) !== null;
}

/**
 * What is to be read next, best first, without what was read or could not be reached. Whoever asked knows of parts that are not
 * known here, so all that was asked for is read, whatever would be settled without them.
 */
export function stepsOf(
  document: SetupDocument,
  { next }: Advice,
  entries: Entries,
  request: Session['request'],
): Step[] {
  const wanted = request === null ? next : inOrderOf(next, request.fields);
  return wanted
    .filter(({ path }) => isReadable(path))
    .flatMap((suggestion) => partsOf(document, suggestion.path).map((path) => ({ path, suggestion })))
    .filter(({ path }) => (entries.get(path)?.state ?? 'open') === 'open');
}

/** Fields in the order of the advice; those that it does not name follow as they were asked for. */
function inOrderOf(next: readonly Suggestion[], fields: readonly string[]): Suggestion[] {
  const named = next.filter(({ path }) => fields.includes(path));
  const others = fields.filter((field) => !named.some(({ path }) => path === field));
  return [...named, ...others.map(bareSuggestion)];
}

/** A figure that the advice says nothing of. */
function bareSuggestion(path: string): Suggestion {
  return { path, ...readingOf(path, 0), settles: 0, tellsOn: [], thresholds: [] };
}

/** One figure, whether it is still to be read or not. */
export function stepAt(path: string, steps: readonly Step[]): Step {
  return steps.find((step) => step.path === path) ?? { path, suggestion: bareSuggestion(fieldOfPart(path)) };
}

/** Where a figure stands: what the screen asks for. */
export type Phase =
  | { readonly kind: 'type'; readonly nth: number; readonly agreement: Agreement | null }
  | { readonly kind: 'way'; readonly question: WayQuestion }
  | { readonly kind: 'refused'; readonly hint: string; readonly instead: string | null }
  | { readonly kind: 'doubt'; readonly doubt: Doubt }
  | { readonly kind: 'enough' };

/** What is read with these is read a second time; a scale or a plate is not. */
const repeated: readonly Tool[] = ['tape', 'caliper', 'plumbLine', 'protractor'];

/** What the screen of a figure asks for next. */
export function phaseOf(document: SetupDocument, entry: Entry, isAslant: boolean): Phase {
  const [first, ...others] = entry.typed;
  const field = fieldOfPart(entry.path);
  if (first === undefined) return { kind: 'type', nth: 1, agreement: null };
  const question = wayQuestion(field);
  if (question !== null && entry.way === null) return { kind: 'way', question };
  const taking = takingOf(entry, isAslant);
  const taken = taking === null ? null : takenAs(document, taking);
  if (taken !== null && !taken.ok) return { kind: 'refused', hint: taken.hint, instead: taken.instead ?? null };
  const doubt = openDoubt(document, entry);
  if (doubt !== null) return { kind: 'doubt', doubt };
  const tool = toolOf(entry);
  if (!repeated.includes(tool)) return { kind: 'enough' };
  const values = [first.value, ...others.map(({ value }) => value)] as [number, ...number[]];
  const agreement = agreementOf(document, field, values, tool);
  return agreement.kind === 'agrees' ? { kind: 'enough' } : { kind: 'type', nth: values.length + 1, agreement };
}

/** What a figure is read with. */
export function toolOf({ path, tool }: Entry): Tool {
  return tool ?? readingOf(fieldOfPart(path), 0).tool;
}

function openDoubt(document: SetupDocument, { path, typed, way, tool, sure }: Entry): Doubt | null {
  const last = typed.at(-1);
  if (last === undefined) return null;
  const doubts = doubtsAbout(document, path, last, way ?? undefined, tool ?? undefined);
  return doubts.find(({ kind }) => !sure.includes(kind)) ?? null;
}
