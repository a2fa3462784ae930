import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { assess } from '../engine/assess/index.ts';
import { toBase64Url } from './base64url.ts';
import { linkOf, readLink } from './link.ts';

/** Made on 2026-11-25, when version 1 was frozen: it must open for ever, to the same setup and the same answer. */
const frozen = '1.G20HjrYDR9uBo-3A0XbgaDtwtB042g4cbQdSox0YWwsA';

describe('links', () => {
  test('a link frozen with version 1 still opens to the same setup', () => {
    const reading = readLink(`#${frozen}`);
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    const { implement, coupler, tractor } = reading.document as Record<string, Record<string, unknown>>;
    expect(implement?.['name']).toBe('Wickset 60-in box blade');
    expect(implement?.['mastHeight']).toMatchObject({ value: 521, plusMinus: 1.5 });
    expect(coupler?.['hookSpan']).toBe(712);
    expect(tractor?.['lowerBallBore']).toBe(22.4);
    const assessment = assess(reading.document, { full: false });
    const mast = assessment.ok ? assessment.answer.findings.find(({ id }) => id === 'rear.mast') : undefined;
    expect([mast?.status, mast?.side]).toEqual(['cured', 'high']);
  });
  test('names in any script and hostile names come back letter for letter', () => {
    for (const name of ['Плуг', '犁 🚜', '</script><b>"\'&', '\u202eevil', 'x'.repeat(200)]) {
      const document = { hitchwright: 1, tractor: { name }, implement: {} };
      expect(readLink(linkOf(document))).toEqual({ ok: true, document });
    }
  });
  test('a link that is cut, foreign, or opens to a flood is refused with a hint', () => {
    const flood = `1.${toBase64Url(deflateSync(strToU8(`{"a":"${'x'.repeat(2_000_000)}"}`), { level: 9 }))}`;
    for (const bad of ['', '1.', frozen.slice(0, 30), '2.abc', '1.!!!!', '1.AAAA', flood]) {
      const reading = readLink(bad);
      expect(reading.ok, bad.slice(0, 20)).toBe(false);
      if (!reading.ok) expect(reading.errors[0]?.hint).not.toBe('');
    }
  });
});
