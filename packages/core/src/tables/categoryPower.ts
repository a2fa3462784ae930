import type { Category } from './category.ts';
import {
  dealerPage,
  examBanksIso,
  explainer,
  memory,
  olderEncyclopedia,
  paes,
  plough,
  seedDrill,
  shopPageA,
  shopPageB,
  shopSummary,
  type Cite,
} from './citations.ts';
import { chooseFigures, type Figure, type FigureChoice } from './figure.ts';

const wattsPerHorsepower = 745.699872;
const medium = memory('medium');
const disputed = { disputed: true } as const;

function horsepower(cite: Cite, from: number, to: number): Figure {
  const kilowatts = (hp: number) => (hp * wattsPerHorsepower) / 1000;
  if (from === 0) return cite(kilowatts(to), `up to ${to}`, 'hp', { ...disputed, bound: 'most' });
  return cite(kilowatts(from), `${from}–${to}`, 'hp', { ...disputed, high: kilowatts(to) });
}

function range(cite: Cite, from: number, to: number): Figure {
  return cite(from, `${from}–${to}`, 'kW', { ...disputed, high: to });
}

function upTo(cite: Cite, to: number, printed = `≤ ${to}`, printedUnit = 'kW'): Figure {
  return cite(to, printed, printedUnit, { ...disputed, bound: 'most' });
}

const powerRows: Readonly<Partial<Record<Category, readonly Figure[]>>> = {
  '0': [
    horsepower(olderEncyclopedia, 0, 20),
    upTo(shopSummary, 15, '15 / 20', 'kW / PS'),
    upTo(examBanksIso, 15, '< 15', 'kW'),
  ],
  '1N': [upTo(medium, 35)],
  '1': [
    range(paes, 15, 35),
    horsepower(olderEncyclopedia, 20, 45),
    upTo(medium, 48),
    upTo(shopSummary, 35, '35 / 48', 'kW / PS'),
    upTo(examBanksIso, 48),
    upTo(examBanksIso, 35),
    horsepower(dealerPage, 20, 45),
    horsepower(shopPageA, 16, 50),
    horsepower(shopPageB, 14, 55),
    horsepower(explainer, 20, 50),
  ],
  '2N': [upTo(seedDrill, 92)],
  '2': [
    range(paes, 30, 75),
    horsepower(olderEncyclopedia, 40, 100),
    upTo(seedDrill, 92),
    upTo(shopSummary, 75, '75 / 100', 'kW / PS'),
    range(examBanksIso, 30, 92),
    horsepower(dealerPage, 40, 100),
    horsepower(shopPageA, 45, 120),
    horsepower(shopPageB, 45, 120),
  ],
  '3N': [range(seedDrill, 80, 185), range(plough, 60, 185)],
  '3': [
    range(paes, 60, 168),
    horsepower(olderEncyclopedia, 80, 225),
    range(seedDrill, 80, 185),
    upTo(shopSummary, 168, '168 / 230', 'kW / PS'),
    range(plough, 60, 185),
    range(examBanksIso, 60, 185),
  ],
  '4N': [range(seedDrill, 150, 350), range(plough, 110, 350)],
  '4': [range(paes, 135, 300), horsepower(olderEncyclopedia, 180, 400), range(seedDrill, 150, 350)],
};

/**
 * Tractor power [kW] that different editions and pages print for a category. For information only: the rows disagree,
 * their bases differ (drawbar, PTO, unstated) and they overlap on purpose, so power never decides a category and
 * nothing here leads from power back to one.
 *
 * @param category - size class [name]
 * @param choice - picks an edition or source; all rows when left out [options]
 * @returns rows [kW]
 * @example categoryPower('2', { source: 'manual-seed-drill' })[0]?.value; // 92, an upper limit
 * @source paes-118-2001, encyclopedia-category-table, manual-seed-drill, din-iso-730-1-shop-summary, manual-plough,
 * exam-banks-hitch, dealer-category-page, shop-category-page-a, shop-category-page-b, engineering-explainer, memory
 */
export function categoryPower(category: Category, choice: FigureChoice = {}): readonly Figure[] {
  return chooseFigures(powerRows[category] ?? [], choice);
}
