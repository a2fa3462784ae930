import type { UnitSystem } from '../../../units/index.ts';
import type { UnitFrom } from '../cells/bareUnit.ts';
import type { RowKind } from '../kinds.ts';
import type { Target } from './target.ts';

/** How sure a target is that a person chose; nothing that is guessed is as sure. */
export const chosen = 1;

/** One column: what it holds, and what is said once for all of its cells. */
export interface Column {
  readonly letter: string;
  /** Its heading as shown; the parts of a heading over two rows joined. */
  readonly heading: string;
  readonly target: Target;
  /** How sure the target is [0–1]; 1 where a person chose it. */
  readonly confidence: number;
  /** The unit of figures without one, or the currency; null where each figure is looked at by itself, from a `person` where one chose that. */
  readonly unit: string | null;
  readonly unitFrom: UnitFrom | null;
  /** The reference points of its readings; null where nothing says. */
  readonly from: string | null;
  /** Fields that the heading may stand for as well as any other: a person has to choose. */
  readonly rivals: readonly string[];
}

/** What each column of a table holds and where its rows start: all that is needed to read it. Plain JSON, so that it can be kept. */
export interface Mapping {
  /** What a row is where no column says so. */
  readonly kind: RowKind;
  /** Kinds that a column of kinds names besides. */
  readonly otherKinds?: readonly RowKind[];
  /** Rows of the headings and their units, counted from 0. */
  readonly headingRows: readonly number[];
  /** The first row under them, counted from 0. */
  readonly firstRow: number;
  readonly columns: readonly Column[];
  /** Whose units figures without one are in, where a person said so. */
  readonly system: UnitSystem | null;
}

/** Something that a person has to say before a column can be read; `suggested` is the likelier answer, where there is one. */
export interface Ask {
  readonly about: 'kind' | 'field' | 'unit' | 'currency' | 'from';
  /** The column asked about, or null for the whole table. */
  readonly column: string | null;
  readonly question: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly suggested: string | null;
}

/** What a mapping takes for granted, in a sentence, and where. */
export interface MappingTold {
  readonly column: string | null;
  readonly row: number | null;
  readonly sentence: string;
}
