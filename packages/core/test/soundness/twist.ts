import fc from 'fast-check';
import { atPath, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { near, type Figure } from '../properties/generate.ts';

/** Something that makes a setup less plain: edits to its document, none where they would make no sense there. */
export type Twist = (document: SetupDocument) => fc.Arbitrary<readonly Edit[]>;

/** Nothing is changed. */
export const none: fc.Arbitrary<readonly Edit[]> = fc.constant([]);

/** Figures by their path, each said in some way. */
export function edits(figures: Readonly<Record<string, Figure>>): fc.Arbitrary<readonly Edit[]> {
  return fc.record(figures).map((said) => Object.entries(said).map(([path, value]) => ({ path, value })));
}

/** Fixed edits. */
export function always(figures: Readonly<Record<string, unknown>>): fc.Arbitrary<readonly Edit[]> {
  return fc.constant(Object.entries(figures).map(([path, value]) => ({ path, value })));
}

/** The middle of a figure of a document, or null where it has none. */
export function middleAt(document: SetupDocument, path: string): number | null {
  return middleOf(atPath(document, path));
}

function middleOf(figure: unknown): number | null {
  if (typeof figure === 'number') return figure;
  if (typeof figure !== 'object' || figure === null) return null;
  const { value, between, adjustable } = figure as {
    value?: number;
    between?: [unknown, unknown];
    adjustable?: object;
  };
  if (typeof value === 'number') return value;
  if (adjustable !== undefined) return middleOf(adjustable);
  const ends = (between ?? []).map(middleOf).filter((end) => end !== null);
  return ends.length === 2 ? ((ends[0] as number) + (ends[1] as number)) / 2 : null;
}

/** A figure some way off what stands at a path, said with a spread; nothing where nothing stands there. */
export function offset(document: SetupDocument, path: string, by: number, spread: number): Figure {
  const base = middleAt(document, path);
  return base === null ? fc.constant(undefined) : near(base + by, spread);
}

/** Holes: the figure itself and others off it, each said with a spread. */
export function holes(document: SetupDocument, path: string, offsets: readonly number[], spread: number): Figure {
  const base = middleAt(document, path);
  if (base === null) return fc.constant(undefined);
  return fc.tuple(...offsets.map((by) => near(base + by, spread))).map((at) => ({ adjustable: { at } }));
}

/** Something that can be set between two ends, each said with a spread. */
export function slot(document: SetupDocument, path: string, from: number, to: number, spread: number): Figure {
  const base = middleAt(document, path);
  if (base === null) return fc.constant(undefined);
  return fc.tuple(near(base + from, spread), near(base + to, spread)).map((between) => ({ adjustable: { between } }));
}

/** Is a coupler of one of some kinds between tractor and implement? */
export function isOfKind(document: SetupDocument, ...kinds: readonly string[]): boolean {
  return kinds.includes(String(atPath(document, 'coupler.kind')));
}

/** The document with some of the twists, one after the other. */
export function twisted(
  document: SetupDocument,
  twists: Readonly<Record<string, Twist>>,
  { least, most }: { readonly least: number; readonly most: number },
): fc.Arbitrary<{ readonly document: SetupDocument; readonly twists: readonly string[] }> {
  return fc.subarray(Object.keys(twists), { minLength: least, maxLength: most }).chain((names) =>
    names
      .map((name) => twists[name] as Twist)
      .reduce<fc.Arbitrary<SetupDocument>>(
        (before, twist) => before.chain((plain) => twist(plain).map((changes) => withEdits(plain, changes))),
        fc.constant(document),
      )
      .map((changed) => ({ document: changed, twists: names })),
  );
}
