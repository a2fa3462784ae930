import type { Tool } from '../../engine/advice/index.ts';
import type { Bounds, Point } from '../scene.ts';
import type { Sketch } from './sketch.ts';

/** One end of what is measured: the point of the sketch that the tape is held to, and what a person calls it. */
export interface End {
  readonly at: Point;
  /** In words, such as `the step on one pin`. */
  readonly word: string;
  /** A short name that stands beside it in the drawing, unless there is none. */
  readonly label?: string;
  /** A centre is marked as one; everything else is an edge that the tape's hook is held against. */
  readonly isCentre?: boolean;
}

/** A length: its two ends, along what it is measured, and where the tape lies [mm]. */
export interface Length {
  readonly kind: 'length';
  readonly from: End;
  readonly to: End;
  /** Unit vector from `from` toward `to`. */
  readonly along: Point;
  /** Unit vector across, toward which `lay` counts. */
  readonly across: Point;
  /** Where the middle of the tape lies, counted along `across` from the sketch's origin. */
  readonly lay: number;
  /** On which side of the tape the dimension stands: 1 is toward `across`. */
  readonly side: 1 | -1;
  /** A caliper: how far its beam stands off, counted along `across`, and whether its jaws close over a part or open inside it. */
  readonly jaws?: Jaws;
  /** The tape stands between two faces, so its hook has nothing to go round. */
  readonly isBetween?: true;
}

/** How a caliper is held. */
interface Jaws {
  readonly beam: number;
  readonly grip: 'over' | 'inside';
}

/** An angle: its corner and a point on each of its legs. */
export interface Angle {
  readonly kind: 'angle';
  readonly corner: Point;
  readonly from: End;
  readonly to: End;
  /** How far out the arc lies [mm]. */
  readonly radius: number;
}

/** A weighing: what carries the weight, where its hook is or where its platform lies. */
export interface Weighing {
  readonly kind: 'weight';
  readonly from: End;
  readonly to: End;
  readonly scale:
    | { readonly kind: 'hung'; readonly hook: Point; readonly slings: readonly Point[] }
    | { readonly kind: 'platform'; readonly under: readonly (readonly [number, number])[] };
}

/** A place where people put the tape by mistake. */
export interface Mistake {
  /** In words, such as `the tips`. */
  readonly word: string;
  /** Where it is crossed out; none where it has no place in the picture. */
  readonly at: readonly Point[];
}

/** What a magnifier enlarges: a point, and how far around it [mm]. */
export interface Enlarged {
  readonly on: Point;
  readonly reach: number;
}

/** How one figure is measured. */
export interface TapeRow {
  readonly sketch: Sketch;
  /** Parts of the sketch that are drawn heavy. */
  readonly parts: readonly string[];
  readonly measured: Length | Angle | Weighing;
  readonly not: readonly Mistake[];
  /** The part of the sketch that is shown; all of it unless given. */
  readonly show?: Bounds;
  readonly enlarged?: Enlarged;
  /** A short sentence that stands in the drawing. */
  readonly hint?: string;
  /** The length is a diameter, and its figure has the sign of one. */
  readonly isRound?: true;
  /** The tool, where the table of tools knows the figure from papers only. */
  readonly tool?: Tool;
}

/** A row, or one for each reference point that its field may be read between; the first of the field's rule is the usual one. */
export type TapeRows = TapeRow | Readonly<Record<string, TapeRow>>;

/** An edge that the tape's hook is held against. */
export function edge(at: Point, word: string, label?: string): End {
  return { at, word, ...(label === undefined ? {} : { label }) };
}

/** A centre. */
export function centre(at: Point, word: string, label?: string): End {
  return { ...edge(at, word, label), isCentre: true };
}

/** How a length is laid out beside its ends and place. */
interface Laying {
  readonly side?: 1 | -1;
  readonly jaws?: Jaws;
  readonly isBetween?: true;
}

/** A level length with the tape at a height. */
export function level(from: End, to: End, height: number, laying: Laying = {}): Length {
  return { ...laid(from, to, laying), along: [to.at[0] >= from.at[0] ? 1 : -1, 0], across: [0, 1], lay: height };
}

/** An upright length with the tape at a place from left to right. */
export function upright(from: End, to: End, place: number, laying: Laying = {}): Length {
  return { ...laid(from, to, laying), along: [0, to.at[1] >= from.at[1] ? 1 : -1], across: [1, 0], lay: place };
}

/** A length straight from one end to the other, with the tape so far off the line between them, counted upward. */
export function straight(from: End, to: End, off = 0, laying: Laying = {}): Length {
  const [dx, dz] = [to.at[0] - from.at[0], to.at[1] - from.at[1]];
  const length = Math.hypot(dx, dz);
  const along: Point = [dx / length, dz / length];
  const up = along[0] >= 0 ? 1 : -1;
  const across: Point = [-along[1] * up, along[0] * up];
  return { ...laid(from, to, laying), along, across, lay: dot(from.at, across) + off };
}

function laid(from: End, to: End, { side = 1, ...rest }: Laying) {
  return { kind: 'length' as const, from, to, side, ...rest };
}

/** A caliper closed over a part, its beam so far off. */
export function over(beam: number): Laying {
  return { side: beam > 0 ? -1 : 1, jaws: { beam, grip: 'over' } };
}

/** A caliper opened inside something, its beam so far off. */
export function inside(beam: number): Laying {
  return { side: beam > 0 ? -1 : 1, jaws: { beam, grip: 'inside' } };
}

/** An angle at a corner, from one leg to the other. */
export function angle(corner: Point, from: End, to: End, radius: number): Angle {
  return { kind: 'angle', corner, from, to, radius };
}

/** A mistake with its places. */
export function not(word: string, ...at: readonly Point[]): Mistake {
  return { word, at };
}

/** The scalar product. */
export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}
