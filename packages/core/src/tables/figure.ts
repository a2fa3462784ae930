import type { SourceId } from './sources.ts';

/**
 * How a figure is known: `read` in the source itself · `readSecondHand` in a text that quotes it · `memory`, unread ·
 * `derived` by our arithmetic · `practice`, common in the trade without a source · `own`, our choice.
 */
export type FigureStatus = 'read' | 'readSecondHand' | 'memory' | 'derived' | 'practice' | 'own';

/** How far a figure from memory is trusted. */
export type MemoryConfidence = 'high' | 'medium' | 'low';

/** The two families of mast height in circulation: the international table, and the shorter older American one. */
export type MastGeneration = 'iso' | 'older';

/** One printed figure with where it stands and how it is known. */
export interface Figure {
  /** [mm, kW, rad, deg, rpm, a share or a plain count, by the table's field]; the lower end where a range is printed */
  readonly value: number;
  /** upper end of a printed range, in the unit of `value` */
  readonly high?: number;
  /** the print limits the quantity on one side only */
  readonly bound?: 'least' | 'most';
  /** printed tolerance above and below, both as positive amounts, in the unit of `value` */
  readonly plus?: number;
  readonly minus?: number;
  readonly printed: string;
  readonly printedUnit: string;
  readonly source: SourceId;
  readonly edition?: string;
  readonly locator: string;
  readonly status: FigureStatus;
  /** only with status `memory` */
  readonly confidence?: MemoryConfidence;
  /** only mast heights; absent where the print does not say or both families agree */
  readonly generation?: MastGeneration;
  /** another row for the same thing says otherwise, or the print leaves open what was measured */
  readonly disputed?: true;
  /** printed so coarsely that it names a size rather than measures one */
  readonly rounded?: true;
  readonly note?: string;
}

/** What a row adds to its citation. */
export type FigureExtra = Partial<
  Pick<Figure, 'high' | 'bound' | 'plus' | 'minus' | 'generation' | 'disputed' | 'rounded' | 'note'>
>;

/** Chooses among rows that disagree; every given field must match. */
export interface FigureChoice {
  readonly source?: SourceId;
  readonly edition?: string;
  readonly status?: FigureStatus;
}

const trust: readonly FigureStatus[] = ['read', 'readSecondHand', 'derived', 'practice', 'own', 'memory'];
const confidences: readonly MemoryConfidence[] = ['high', 'medium', 'low'];

/**
 * The rows that match every field of the choice, in table order.
 *
 * @param figures rows [list]
 * @param choice which edition, source or status [options]
 * @returns rows that match [list]
 */
export function chooseFigures(figures: readonly Figure[], choice: FigureChoice): readonly Figure[] {
  return figures.filter(
    (figure) =>
      (choice.source === undefined || figure.source === choice.source) &&
      (choice.edition === undefined || figure.edition === choice.edition) &&
      (choice.status === undefined || figure.status === choice.status),
  );
}

/**
 * The row known best: exact print before rounded print, read before quoted before derived before memory. Null when there is none.
 *
 * @param figures rows [list]
 * @param choice which edition, source or status [options]
 * @returns the row to lead with, or null [mm, kW or rad]
 */
export function bestFigure(figures: readonly Figure[], choice: FigureChoice = {}): Figure | null {
  const ranked = [...chooseFigures(figures, choice)].sort((a, b) => rank(a) - rank(b));
  return ranked[0] ?? null;
}

function rank(figure: Figure): number {
  const confidence = figure.confidence === undefined ? 0 : confidences.indexOf(figure.confidence);
  return (figure.rounded ? 100 : 0) + 10 * trust.indexOf(figure.status) + confidence;
}

/**
 * Lowest value a row allows with its printed tolerance, in the unit of `value`.
 *
 * @param figure one row [mm, kW or rad]
 * @returns its lower end [unit of the row]
 */
export function lowestOf(figure: Figure): number {
  return figure.value - (figure.minus ?? 0);
}

/**
 * Highest value a row allows with its printed tolerance, in the unit of `value`.
 *
 * @param figure one row [mm, kW or rad]
 * @returns its upper end [unit of the row]
 */
export function highestOf(figure: Figure): number {
  return (figure.high ?? figure.value) + (figure.plus ?? 0);
}
