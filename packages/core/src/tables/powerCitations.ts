import { cite } from './citations.ts';

export const powerRules = cite({ source: 'extension-power-rules', locator: 'power conversion tables' });
export const capacityPage = cite({ source: 'extension-field-capacity', locator: 'speed and efficiency table' });
export const draftTextbook = cite({ source: 'textbook-draft', locator: 'draft example, metric problems' });
export const clayLoamPaper = cite({ source: 'paper-draft-clay-loam', locator: 'abstract, fitted values' });
export const cutterForum = cite({
  source: 'forum-cutter-power',
  locator: 'four threads on power for a cutter',
  status: 'practice',
});
export const cutterPage = cite({ source: 'parts-page-cutter-power', locator: 'power by width', status: 'practice' });

const recalled = cite({ source: 'memory', locator: 'ASABE D497, from memory', status: 'memory' });

/** A row of ASABE D497 as remembered; only its cover was read. */
export const d497: typeof recalled = (...row) => ({ ...recalled(...row), confidence: 'medium' });
