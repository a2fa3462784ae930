import { describe, expect, it } from 'vitest';
import { machineDrawing, pinPlanDrawing, plainSvg, sceneToSvg } from '../../src/drawings/index.ts';
import { chartHtml, chartOf, listingOf, pinPlan, replyTo } from '../../src/handover/index.ts';
import { readSetup, withEdits, type SetupDocument, type YardDocument } from '../../src/records/index.ts';
import { example } from '../asked.ts';
import { readMarkup } from './strictMarkup.ts';

const long = 'x'.repeat(200);
const names: readonly (readonly [string, string])[] = [
  ['markup', '<b onmouseover="alert(1)">bold</b>'],
  ['a script', '</script><script>alert(1)</script>'],
  ['the end of a style and of a comment', '</style>--><svg onload=alert(1)>'],
  ['a formula', '=HYPERLINK("https://example.org","x")'],
  ['parts of a path', '../../../etc/passwd\\..\\..'],
  ['entities', '&lt;script&gt; &amp; "quotes" \'and\' more'],
  ['replacement signs', '$& $1 $` $$ {m}'],
  ['signs that turn text round', 'abc\u202edef\u0007\u001b[31m\u200b'],
  ['emoji', '🚜🛠️ 60-in'],
  ['half a sign', 'a\ud83d b'],
  ['as long as a name may be', long],
];

function named(name: string): SetupDocument {
  return withEdits(example('box-blade-on-coupler'), [
    { path: 'implement.name', value: name },
    { path: 'tractor.name', value: name },
    { path: 'coupler.name', value: name },
    { path: 'implement.mastHeight', value: { value: 521, plusMinus: 1.5, method: name, source: name, when: name } },
    { path: 'parts', value: [{ kind: 'upperPinPlate', name, mastHeight: 457, mastSetback: 0 }] },
  ]);
}

/** What may be left of a name: one line without anything that acts. */
function expectHarmless(markup: string): void {
  expect(markup).not.toMatch(/<script|<b |<svg onload|onmouseover="|<\/style>-->/);
  expect([...markup].filter((sign) => /[\u0000-\u0008\u000b-\u001f\u202e\u200b]/.test(sign))).toEqual([]);
}

describe.each(names)('a record named by %s', (_, name) => {
  const document = named(name);
  it('is text in a reply', () => {
    const result = replyTo(document, { system: 'us', names: { tractor: name } });
    if (!result.ok) throw new Error('refused');
    const { text, html, subject } = result.reply;
    expect(readMarkup(html).faults).toEqual([]);
    expectHarmless(html);
    expect(subject).not.toMatch(/[\r\n\u0000-\u001f]/);
    expect(text.split('\n')[0]).toMatch(/^You asked about .+\.$/s);
    const words = (written: string): string => written.replace(/^- /gm, '').replace(/\s+/g, ' ').trim();
    expect(words(readMarkup(html).text)).toBe(words(text));
  });
  it('is text in a listing and its data', () => {
    const result = listingOf(document, { system: 'us' });
    if (!result.ok) throw new Error('refused');
    const { html, bareHtml, script, product, name: shown } = result.listing;
    for (const markup of [html, bareHtml]) {
      expect(readMarkup(markup).faults).toEqual([]);
      expectHarmless(markup);
      expect(readMarkup(markup).text).toContain(shown);
    }
    const body = script.split('\n').slice(1, -1).join('\n');
    expect(body).not.toMatch(/[<>&]/);
    expect(JSON.parse(body)).toEqual(product);
  });
  it('is text in a chart', () => {
    const { tractor, coupler, implement } = document as Record<string, SetupDocument>;
    const yard: YardDocument = {
      hitchwright: 1,
      tractors: [tractor ?? {}],
      couplers: [coupler ?? {}],
      implements: [implement ?? {}],
    };
    const result = chartOf(yard, { system: 'us', date: '2026-11-26', tractor: name });
    if (!result.ok) throw new Error(JSON.stringify(result.errors));
    const page = chartHtml(result.chart);
    expectHarmless(page);
    expect(page).not.toMatch(
      /<(?!\/?(?:!doctype|html|head|meta|title|style|body|h1|h2|p|ul|li|section|table|thead|tbody|tr|th|td|strong)\b)/,
    );
  });
  it('is text in the drawings', () => {
    const plan = pinPlan(document);
    const reading = readSetup(document);
    if (!plan.ok || !reading.ok) throw new Error('refused');
    const machine = machineDrawing(reading.setup, { machine: 'implement', system: 'us' });
    if (machine === null) throw new Error('not drawn');
    for (const svg of [sceneToSvg(pinPlanDrawing(plan.plan, { system: 'us' })), plainSvg(machine)]) expectHarmless(svg);
    expect(readMarkup(plainSvg(machine)).faults).toEqual([]);
  });
});

describe('ten thousand characters', () => {
  const name = 'y'.repeat(10_000);
  it('are refused as a record’s name', () => {
    expect(listingOf(named(name), { system: 'us' })).toMatchObject({ ok: false });
    expect(replyTo(named(name), { system: 'us' })).toMatchObject({ ok: false });
    expect(pinPlan(named(name))).toMatchObject({ ok: false, refused: null });
  });
  it('are cut short where a name is given by whoever writes', () => {
    const result = replyTo(example('box-blade-direct'), { system: 'us', names: { tractor: name } });
    if (!result.ok) throw new Error('refused');
    expect(result.reply.subject.length).toBeLessThan(300);
    expect(result.reply.subject).toContain('y…');
  });
});
