import type { Judged as AnsweredSetup } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import type { Fonts } from '../fonts/fonts.ts';
import type { PaperName } from '../pdf/paper.ts';

/** What a sheet is about: the setup as it was written, as it was read, and its answer. */
export interface Judged extends AnsweredSetup {
  readonly document: SetupDocument;
}

/** How a sheet is printed. */
export interface SheetOptions {
  readonly fonts: Fonts;
  readonly paper: PaperName;
  readonly system: UnitSystem;
  /** The day that the sheet bears [ISO 8601]. */
  readonly date: string;
  /** Whom it is for, who hands it over, its number and revision, as the house counts them. */
  readonly customer?: string;
  readonly issuer?: string;
  readonly number?: string;
  readonly revision?: string;
  /** Address of the page that opens links, up to `#`; without it the sheet bears a reference to its setup file. */
  readonly site?: string;
}
