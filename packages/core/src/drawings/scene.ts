import type { CheckId } from '../engine/findings/index.ts';

/** A point of the drawing: to the right and up [mm]. */
export type Point = readonly [number, number];

/** What a line says. The two widths are those of `heavy` and `thin`; `misfit` is wider still and drawn in the accent. */
export type LineRole = 'heavy' | 'thin' | 'hidden' | 'centre' | 'ghost' | 'misfit' | 'dimension';

/** Ink of lettering. */
export type Tone = 'ink' | 'second' | 'accent';

interface Common {
  /** The finding that an item shows. */
  readonly finding?: CheckId;
  /** The view it belongs to, where it is not the main one. */
  readonly view?: 'detail';
}

/** A run of straight lines; closed ones may be filled with the sheet, so that they hide what lies behind. */
export interface Stroke extends Common {
  readonly kind: 'stroke';
  readonly role: LineRole;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly fill?: 'sheet' | 'line';
  /** Marks the outline of a pin, which is what is at fault where something misses. */
  readonly part?: 'pin';
}

/** A computed point of the side view that a circle stands on. */
export type PointName =
  | 'ball'
  | 'topEnd'
  | 'armEnd'
  | 'rodFoot'
  | 'pins'
  | 'mast'
  | 'centre'
  | 'tractorCross'
  | 'implementCross'
  | 'stub'
  | 'input';

/** A circle. */
export interface Circle extends Common {
  readonly kind: 'circle';
  readonly role: LineRole;
  readonly centre: Point;
  readonly radius: number;
  readonly fill?: 'sheet' | 'line';
  /** The computed point that its centre is, so that a drawing can be measured. */
  readonly point?: PointName;
}

/** An area of 45° lines: cut face or tolerance in ink, the gap to close in the accent. */
export interface Hatch extends Common {
  readonly kind: 'hatch';
  readonly role: 'thin' | 'misfit';
  readonly outline: readonly Point[];
  /** Distance of the lines [paper mm]. */
  readonly spacing: number;
  readonly falling: boolean;
}

/** One line of lettering; fractions in it, such as `20 1/2`, are set as fractions. */
export interface Lettering extends Common {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  /** Height of the letters' body [paper mm]. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly tone: Tone;
  readonly weight: 400 | 500 | 600 | 700;
  /** Reads upward from the bottom, as beside a height. */
  readonly upward?: boolean;
  /** Follows in the second ink, smaller: the other unit. */
  readonly second?: { readonly text: string; readonly size: number };
  /** A drawn diameter sign before the text. */
  readonly diameter?: boolean;
  /** Clears what lies underneath; on unless it is false. */
  readonly halo?: boolean;
}

/** A length between two points of the geometry, measured along a direction. */
export interface Dimension extends Common {
  readonly kind: 'dimension';
  readonly role: 'dimension' | 'misfit';
  readonly from: Point;
  readonly to: Point;
  /** Unit vector along which it is measured. */
  readonly along: Point;
  /** Where the dimension line lies, counted along (along₂, −along₁). */
  readonly at: number;
  readonly label: Lettering | null;
  /** On how many sides the length occurs: 2 where a total is shared by left and right. */
  readonly sides: 1 | 2;
  /** True millimetres that one millimetre of the scene stands for. */
  readonly mmPerUnit: number;
}

/** The number of a note, with a leader to what it is about; a further note about the same thing has none. */
export interface Balloon extends Common {
  readonly kind: 'balloon';
  readonly at: Point;
  readonly number: number;
  readonly leaderTo: Point | null;
  /** Filled with the accent: something is wrong. */
  readonly filled: boolean;
}

/** A bar of a stated length in divisions, alternately filled. */
export interface ScaleBar extends Common {
  readonly kind: 'scaleBar';
  readonly at: Point;
  readonly division: number;
  readonly divisions: number;
  readonly label: string;
}

/** Anything a scene is made of. */
export type Item = Stroke | Circle | Hatch | Lettering | Dimension | Balloon | ScaleBar;

/** The box that a drawing fills [mm]. */
export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A drawing in millimetres, in painter's order, from which every writer works. */
export interface Scene {
  readonly title: string;
  readonly subtitle: string;
  readonly bounds: Bounds;
  /** Scene millimetres to one millimetre of paper: sizes of letters and widths of lines are given on paper. */
  readonly scale: number;
  readonly items: readonly Item[];
  /** The drawing in words: title, scale, every dimension shown, and the misfit. */
  readonly description: string;
}
