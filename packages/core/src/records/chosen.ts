import * as z from 'zod/mini';
import { price, text } from './commonSchema.ts';
import { withEdits, type Edit } from './edit.ts';
import { excerpt, type InputError } from './inputError.ts';
import type { Price, SetupDocument } from './setup.ts';

/** What can be done about a misfit. */
const cureKinds = [
  'part',
  'reversePins',
  'cutBushing',
  'longerTubes',
  'liftStop',
  'cutShaft',
  'stubExtender',
  'frontWeights',
  'loaderOn',
] as const;

/** Something that can be done about a misfit. */
export interface CureRecord {
  readonly kind: (typeof cureKinds)[number];
  /** The part's own name, or null where nothing is bought. */
  readonly part: string | null;
  /** What one of it costs, where that is known. */
  readonly price: Price | null;
  /** How many of it are taken. */
  readonly count: number;
  /** How much is added, cut off or set [mm]; null where that is not a matter of how much. */
  readonly amount: number | null;
  readonly edits: readonly Edit[];
  /** False once it is cut, drilled or welded. */
  readonly returnable: boolean;
  /** True where the machine itself is changed, which a rented or guaranteed machine must not be. */
  readonly altersMachine: boolean;
  /** Path of the pins or machine that it is done to. */
  readonly on: string;
}

/** Cures that one setup may have been chosen to count on [cures]. */
const mostChosen = 8;

const path = z.string().check(z.maxLength(80), z.regex(/^(tractor|coupler|implement|shaft)(\.[A-Za-z]\w*)*$/));

const cureSchema = z.strictObject({
  kind: z.enum(cureKinds),
  part: z.nullable(text),
  price: z.nullable(price),
  count: z.number().check(z.minimum(1), z.maximum(60), z.multipleOf(1)),
  amount: z.nullable(z.number().check(z.minimum(0), z.maximum(100_000))),
  edits: z.array(z.strictObject({ path, value: z.optional(z.unknown()) })).check(z.minLength(1), z.maxLength(20)),
  returnable: z.boolean(),
  altersMachine: z.boolean(),
  on: z.string().check(z.maxLength(80)),
});

/** The cures that the answer is to count on; the machines of the setup stay as they are without them. */
export const chosenSchema = z.optional(z.array(cureSchema).check(z.maxLength(mostChosen)));

/**
 * The setup with the cures that were chosen done to it, and none left to choose: as it will stand in the yard.
 *
 * @param document a setup document [JSON]
 * @returns a new document [JSON]
 */
export function withChosenDone(document: SetupDocument): SetupDocument {
  const chosen = chosenIn(document);
  const edits = chosen.flatMap((cure) => cure.edits);
  // What can't be read stays, so that whoever reads the setup says so.
  return chosen.length === 0 ? document : withEdits(document, [...edits, { path: 'chosen', value: undefined }]);
}

/**
 * The cures that a document counts on; none where they can't be read.
 *
 * @param document a setup document of any shape [JSON]
 * @returns cures, in the order in which they are done [list]
 */
export function chosenIn(document: SetupDocument): readonly CureRecord[] {
  const { chosen } = document;
  return chosen !== undefined && chosenSchema.safeParse(chosen).success ? (chosen as readonly CureRecord[]) : [];
}

/**
 * The document with other cures chosen.
 *
 * @param document a setup document [JSON]
 * @param chosen the cures to count on [list]
 * @returns a new document [JSON]
 */
export function withChosen(document: SetupDocument, chosen: readonly CureRecord[]): SetupDocument {
  return withEdits(document, [{ path: 'chosen', value: chosen.length === 0 ? undefined : chosen }]);
}

/**
 * The document with changes made to it by hand: a cure that sets one of the same fields is no longer counted on.
 *
 * @param document a setup document [JSON]
 * @param edits changes, made in this order [list]
 * @returns a new document [JSON]
 */
export function editedByHand(document: SetupDocument, edits: readonly Edit[]): SetupDocument {
  const kept = chosenIn(document).filter((cure) => !touches(cure, edits));
  return withChosen(withEdits(document, edits), kept);
}

function touches(cure: CureRecord, edits: readonly Edit[]): boolean {
  return cure.edits.some(({ path }) => edits.some((edit) => overlap(edit.path, path)));
}

/** What is added to what is there, so that twice is twice; everything else takes the place of what was. */
const adding: readonly CureRecord['kind'][] = ['cutShaft', 'longerTubes', 'stubExtender'];

function isAdding({ kind, edits }: CureRecord): boolean {
  return adding.includes(kind) || edits.every(({ path }) => path === 'tractor.wheelWeightMass');
}

/**
 * The cures that are counted on once another one is: it was offered with them done. What it takes the place of goes.
 *
 * @param chosen cures, in the order in which they are done [list]
 * @param cure one more [record]
 * @returns cures, in order [list]
 */
export function withOneMore(chosen: readonly CureRecord[], cure: CureRecord): CureRecord[] {
  const isReplaced = ({ path }: Edit): boolean =>
    cure.edits.some(
      (edit) => (edit.path === path && !isAdding(cure)) || (edit.path !== path && isWithin(path, edit.path)),
    );
  return [...chosen.filter(({ edits }) => !edits.every(isReplaced)), cure];
}

/**
 * The cures that are counted on without one of them: what was offered on top of it goes too.
 *
 * @param chosen cures, in the order in which they are done [list]
 * @param cure one of them [record]
 * @returns cures, in order [list]
 */
export function withOneLess(chosen: readonly CureRecord[], cure: CureRecord): CureRecord[] {
  const at = chosen.indexOf(cure);
  return chosen.filter((one, i) => i < at || (i > at && !touches(one, cure.edits)));
}

/**
 * Whether setting one field also sets the other, or a part of it.
 *
 * @param a field path [text]
 * @param b field path [text]
 * @returns true where one is the other, or lies below it [flag]
 */
export function overlap(a: string, b: string): boolean {
  return isWithin(a, b) || isWithin(b, a);
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(`${outer}.`);
}

/** Cures that can't be done to the machines they stand beside, by what is wrong with the setup once they are. */
export function chosenErrors(problems: readonly InputError[]): InputError[] {
  return problems.map(({ code, path: at, expected, got }) => ({
    code,
    path: 'chosen',
    expected: `cures that can be done to these machines: ${at} ${expected}`,
    got: excerpt(got),
    hint: 'Leave the cure out and choose it again from the answer.',
  }));
}
