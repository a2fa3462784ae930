import { readFileSync } from 'node:fs';
import type { SetupDocument } from '@hitchwright/core/records';
import { describe, expect, it } from 'vitest';
import { said, served, type Refusal } from './served.ts';

const blade = JSON.parse(
  readFileSync(new URL('../../../examples/setups/box-blade-on-coupler.json', import.meta.url), 'utf8'),
) as SetupDocument & { implement: object };

describe('what is handed over, over HTTP', () => {
  it('is the sheet as PDF, always the same for the same setup and day', async () => {
    const { send } = await served();
    const ask = () => send('POST', '/api/sheets?paper=a4&date=2026-11-26&customer=Ada', blade);
    const [first, second] = [await ask(), await ask()];
    expect(first.status).toBe(200);
    expect(first.headers.get('content-type')).toBe('application/pdf');
    expect(first.headers.get('content-disposition')).toBe('attachment; filename="sheet 2026-11-26.pdf"');
    const bytes = new Uint8Array(await first.arrayBuffer());
    expect(new TextDecoder().decode(bytes.slice(0, 5))).toBe('%PDF-');
    expect(bytes).toEqual(new Uint8Array(await second.arrayBuffer()));
  });

  it('is a drawing in each format, and a word on what is missing where it can’t be drawn', async () => {
    const { send } = await served();
    const dxf = await send('POST', '/api/drawings?view=rear&format=dxf', blade);
    expect([dxf.status, dxf.headers.get('content-type')]).toEqual([200, 'image/vnd.dxf']);
    expect(await dxf.text()).toContain('$INSUNITS');
    expect(await (await send('POST', '/api/drawings?view=rear&format=svg', blade)).text()).toContain('<svg');
    const none = await said<Refusal & { message: string }>(
      send('POST', '/api/drawings?view=shaft&format=pdf', blade),
      409,
    );
    expect(none.message).toContain('where a shaft drives the implement');
  });

  it('is a pin plan, but not of what may not be altered', async () => {
    const { send } = await served();
    expect((await send('POST', '/api/pin-plans?format=svg', blade)).status).toBe(200);
    const rented = { ...blade, implement: { ...blade.implement, alteration: 'rented' } };
    const { message } = await said<Refusal & { message: string }>(
      send('POST', '/api/pin-plans?format=pdf', rented),
      409,
    );
    expect(message).toContain('rented');
  });

  it('is a reply and a listing whose names stay text', async () => {
    const { send } = await served();
    const name = '<script>alert(1)</script>';
    const hostile = { ...blade, implement: { ...blade.implement, name } };
    const reply = await said<{ text: string; html: string }>(send('POST', '/api/replies', hostile));
    expect(reply.text).toContain(name);
    expect(reply.html).not.toContain('<script');
    const listing = await said<{ html: string; script: string }>(
      send('POST', '/api/listings?machine=implement', hostile),
    );
    expect(listing.html).not.toContain('<script');
    expect(listing.script.match(/<script/g)).toHaveLength(1);
  });

  it('is refused with every error of the setup', async () => {
    const { send } = await served();
    const wrong = { ...blade, implement: { ...blade.implement, mastHeight: 19 } };
    for (const path of [
      '/api/sheets',
      '/api/drawings?view=rear&format=pdf',
      '/api/pin-plans?format=pdf',
      '/api/replies',
    ])
      expect((await said<Refusal>(send('POST', path, wrong), 400)).errors.map(({ path: at }) => at)).toEqual([
        'implement.mastHeight',
      ]);
  });
});
