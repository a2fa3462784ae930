import type { Figure, FigureExtra, FigureStatus, MemoryConfidence } from './figure.ts';
import type { SourceId } from './sources.ts';

/** Makes a row of one citation: canonical value, the print and its unit, and what else the row says. */
export type Cite = (value: number, printed: string, printedUnit: string, extra?: FigureExtra) => Figure;

/** What makes a row citable: its source, the place in it, and how it was seen. */
interface Citation {
  readonly source: SourceId;
  readonly locator: string;
  readonly edition?: string;
  readonly status?: FigureStatus;
}

/** A maker of rows that all stand in one place of one source; seen in that text itself unless the status says otherwise. */
export function cite({ source, locator, edition, status = 'read' }: Citation): Cite {
  const place = edition === undefined ? { source, locator } : { source, locator, edition };
  return (value, printed, printedUnit, extra = {}) => ({ value, printed, printedUnit, ...place, status, ...extra });
}

const iso7301 = 'ISO 730-1';

export const shopSummary = cite({
  source: 'din-iso-730-1-shop-summary',
  locator: 'the one table of the page',
  edition: 'DIN ISO 730-1:1994',
});
export const seedDrill = cite({ source: 'manual-seed-drill', locator: 'p. 19, hitch table', edition: iso7301 });
export const plough = cite({ source: 'manual-plough', locator: 'p. 43, hitch table', edition: 'ISO 730:2009' });
export const compact = cite({ source: 'manual-compact-category-1', locator: 'implement dimensions for recognition' });
export const olderUtility = cite({
  source: 'manual-utility-category-1-2',
  locator: 'p. 16, implement dimension chart',
  edition: 'older ASAE',
});
export const utility = cite({
  source: 'manual-utility-category-2',
  locator: 'p. 121, implement dimensions, category 2',
});
export const laterUtility = cite({
  source: 'manual-utility-category-2-later',
  locator: 'p. 5-67, implement dimensions, category 2',
});
export const specialist = cite({ source: 'manual-specialist-tractor', locator: 'p. 45, bores of ball ends' });
export const draftLinks = cite({ source: 'manual-draft-links', locator: 'page OULXBER,0002C73', edition: '2017' });
export const hookLinks = cite({ source: 'manual-hook-links', locator: 'page OU12401,0001277', edition: '2005' });
export const mastThread = cite({
  source: 'forum-mast-adjustment',
  locator: 'thread 320699',
  edition: 'ASAE S217.12',
});
export const s217Derived = cite({
  source: 'asae-s217-12',
  locator: 'foreword, clauses 0.1–0.3',
  edition: 'ASAE S217.12 DEC01',
  status: 'derived',
});
export const paes = cite({
  source: 'paes-118-2001',
  locator: 'maximum drawbar power per category, as quoted',
  edition: 'PAES 118:2001, older ASAE basis',
  status: 'readSecondHand',
});
export const examBanks = cite({
  source: 'exam-banks-hitch',
  locator: 'hitch category questions',
  status: 'readSecondHand',
});
export const examBanksIso = cite({
  source: 'exam-banks-hitch',
  locator: 'hitch category questions',
  edition: 'ISO 730:2009',
  status: 'readSecondHand',
});
export const widthPages = cite({ source: 'hitch-width-pages', locator: 'the answer text' });
export const encyclopedia = cite({ source: 'encyclopedia-category-table', locator: 'category table' });
export const olderEncyclopedia = cite({
  source: 'encyclopedia-category-table',
  locator: 'category table',
  edition: 'older ASAE basis',
});
export const linkagePages = cite({ source: 'manual-rear-linkage', locator: 'stabiliser setting page' });
export const forums = cite({ source: 'owner-forums', locator: 'threads on sleeves and spans' });
export const ownerBlog = cite({ source: 'owner-blog', locator: 'entry on link-end connectors' });
export const dealerPage = cite({ source: 'dealer-category-page', locator: 'category table' });
export const shopPageA = cite({ source: 'shop-category-page-a', locator: 'category table' });
export const shopPageB = cite({ source: 'shop-category-page-b', locator: 'category table' });
export const explainer = cite({ source: 'engineering-explainer', locator: 'category paragraph' });
export const practice = cite({
  source: 'common-practice',
  locator: 'common practice, no source',
  status: 'practice',
});
export const own = cite({ source: 'own', locator: 'our own choice', status: 'own' });
export const ptoEncyclopedia = cite({
  source: 'encyclopedia-pto',
  locator: 'type table',
  edition: 'ISO 500-1:2014',
});
export const ptoShield = cite({ source: 'manual-pto-shield', locator: 'page "DX,PTO"', edition: '2017' });
export const ptoOverspeed = cite({ source: 'manual-pto-overspeed', locator: 'overspeed table', edition: '2000' });
export const codeOfPractice = cite({ source: 'tractor-code-of-practice', locator: 'ch. 8, pp. 13–15' });

/** A row nobody here has read: never a published check value. */
export function memory(confidence: MemoryConfidence): Cite {
  const make = cite({ source: 'memory', locator: 'from memory', status: 'memory' });
  return (value, printed, printedUnit, extra = {}) => ({ ...make(value, printed, printedUnit, extra), confidence });
}
