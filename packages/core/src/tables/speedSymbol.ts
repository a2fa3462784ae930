import type { Figure } from './figure.ts';
import { indexFromMemory, openTables, tyreArticle, tyreLimits } from './loadCitations.ts';

/** Speed symbols of tyres, slowest first. */
export const speedSymbols = [
  'A1',
  'A2',
  'A3',
  'A4',
  'A5',
  'A6',
  'A7',
  'A8',
  'B',
  'C',
  'D',
  'E',
  'F',
  'G',
  'J',
  'K',
  'L',
] as const;

/** One speed symbol as it stands behind the load index. */
export type SpeedSymbol = (typeof speedSymbols)[number];

const speed = (source: typeof openTables, value: number): Figure => source(value, String(value), 'km/h');
const recalled = (value: number): Figure => ({ ...speed(indexFromMemory, value), confidence: 'high' });

const figures: Readonly<Record<SpeedSymbol, Figure>> = {
  A1: recalled(5),
  A2: recalled(10),
  A3: recalled(15),
  A4: recalled(20),
  A5: recalled(25),
  A6: recalled(30),
  A7: recalled(35),
  A8: speed(tyreLimits, 40),
  B: speed(tyreLimits, 50),
  C: recalled(60),
  D: speed(tyreArticle, 65),
  E: recalled(70),
  F: recalled(80),
  G: recalled(90),
  J: speed(openTables, 100),
  K: speed(openTables, 110),
  L: speed(openTables, 120),
};

/**
 * The speed up to which a tyre carries what its load index says. Slower it may carry more, by a table that no source here
 * shows; that is never counted on.
 *
 * @param symbol speed symbol [one of speedSymbols]
 * @returns the row [km/h]
 * @example speedSymbolFigure('A8').value; // 40
 * @source manual-tyre-limits, tyre-article, load-index-open-tables; the others from memory
 */
export function speedSymbolFigure(symbol: SpeedSymbol): Figure {
  return figures[symbol];
}
