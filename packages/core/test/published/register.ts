import { test } from 'vitest';
import { type SourceId, sourceIds } from '../../src/tables/index.ts';

/** One check against a published figure, as the validation page lists it. */
export interface PublishedCheck {
  /** id of an entry in docs/sources.md */
  readonly source: SourceId;
  /** page, table, clause or thread inside the source */
  readonly locator: string;
  /** `computes`: goes through a computing function · `reads`: only reads a table row back */
  readonly kind: 'computes' | 'reads';
  readonly title: string;
}

/** Registers a vitest test whose title carries source, locator and kind, so that a script can print the folder as a page. */
export function published({ source, locator, kind, title }: PublishedCheck, check: () => void): void {
  if (!sourceIds.includes(source)) throw new Error(`no source ${source} in docs/sources.md`);
  test(`[${kind}] ${source} · ${locator} · ${title}`, check);
}
