import { describe, expect, it } from 'vitest';
import { readLink } from './link.ts';
import { printedLinkOf, readPrinted } from './printed.ts';

const document = { hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } };

describe('link of a printed sheet', () => {
  it('opens the setup and tells what the sheet said', () => {
    const fragment = printedLinkOf(document, { date: '2026-11-26', verdict: 'withParts' });
    const { link, printed } = readPrinted(`#${fragment}`);
    expect(readLink(link)).toEqual({ ok: true, document });
    expect(printed).toEqual({ date: '2026-11-26', verdict: 'withParts' });
  });

  it('opens the setup where nothing was printed, or something that is not understood', () => {
    const link = printedLinkOf(document, { date: '2026-11-26', verdict: 'works' }).split('&')[0] ?? '';
    for (const more of [
      '',
      '&printed=yesterday.works',
      '&printed=2026-11-26.perhaps',
      '&printed=2026-99-99.works',
      '&later=kind',
    ])
      expect(readPrinted(link + more)).toEqual({ link, printed: null });
  });
});
