/** The words of one check. `{m}` stands for the size of a miss or of what is left to spare. */
export interface CheckWords {
  readonly title: string;
  /** What is wrong when the low end of the band is missed, and the high end. */
  readonly low: string;
  readonly high: string;
  /** What holds, with `{m}` to spare. */
  readonly holds: string;
  /** Short form for a cell of the yard. */
  readonly short: { readonly low: string; readonly high: string };
}
