import { describe, expect, it } from 'vitest';
import { replyTo, type Reply, type ReplyOptions } from '../../src/handover/index.ts';
import { readSetup, type SetupDocument } from '../../src/records/index.ts';
import { cautionWords, sentenceOf, titleOf, topicLine, topicWords } from '../../src/words/index.ts';
import { answer, example } from '../asked.ts';
import { readMarkup } from './strictMarkup.ts';

function reply(document: SetupDocument, options: Partial<ReplyOptions> = {}): Reply {
  const result = replyTo(document, { system: 'us', ...options });
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.reply;
}

function setupOf(document: SetupDocument) {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.setup;
}

const names = [
  'box-blade-on-coupler',
  'flail-measure-first',
  'auger-on-coupler',
  'tiller-driven-direct',
  'snow-blower-direct',
];

describe('a reply says what the findings say', () => {
  it.each(names)('%s', (name) => {
    const document = example(name);
    const [setup, full] = [setupOf(document), answer(document, { full: true })];
    const { text } = reply(document);
    for (const topic of Object.keys(topicWords) as (keyof typeof topicWords)[])
      expect(text).toContain(`${topicWords[topic]}: ${topicLine(full, topic)}.`);
    for (const finding of full.findings.filter(({ status }) => status === 'fail' || status === 'cured'))
      expect(text).toContain(sentenceOf(finding, setup, 'us'));
    for (const finding of full.findings.filter(({ status }) => status === 'notChecked'))
      expect(text, titleOf(finding)).toContain(titleOf(finding));
    for (const id of full.cautions) expect(text).toContain(cautionWords[id]);
  });
  it('begins with the verdict and its reason', () => {
    const [, second] = reply(example('box-blade-on-coupler')).text.split('\n\n');
    expect(second).toBe(
      'Works with parts. The upper pin sits 1 15/16 in (49 mm) to 2 1/16 in (52 mm) too high for the top hook.',
    );
    expect(reply(example('box-blade-on-coupler')).subject).toBe(
      'Wickset 60-in box blade on Ostrey 35 with the Pellin U-28: works with parts',
    );
  });
  it('says what cures it, what to measure next and what was taken for granted', () => {
    expect(reply(example('box-blade-on-coupler')).text).toContain(
      '- Upper-pin plate with a hole at 18 in. (counted on)',
    );
    const open = reply(example('flail-measure-first')).text;
    expect(open).toMatch(
      /Please measure next:\n- Measure the shoulder span of the implement: 27 in \(687 mm\) or less and it fits\./,
    );
    expect(open).toMatch(/What I took for granted:\n- Mast height of the implement/);
  });
  it('never calls an open answer a yes', () => {
    const { text } = reply(example('flail-measure-first'));
    expect(text).toContain('Hooks up: not known yet.');
    expect(text).not.toMatch(/Hooks up: yes/);
  });
  it('takes an answer that is there already', () => {
    const document = example('box-blade-on-coupler');
    const judged = { setup: setupOf(document), answer: answer(document, { full: true }) };
    expect(replyTo(judged, { system: 'us' })).toEqual(replyTo(document, { system: 'us' }));
  });
  it('hands back what is wrong with a setup', () => {
    expect(replyTo({ hitchwright: 1, tractor: {}, implement: { mastHeight: 19 } }, { system: 'us' })).toMatchObject({
      ok: false,
    });
  });
});

describe('the two forms of a reply', () => {
  it.each(names)('say the same: %s', (name) => {
    const { text, html } = reply(example(name), { link: 'https://example.org/check/#1.abc' });
    const words = (written: string): string => written.replace(/^- /gm, '').replace(/\s+/g, ' ').trim();
    const { faults, text: read } = readMarkup(html);
    expect(faults).toEqual([]);
    expect(words(read)).toBe(words(text));
  });
  it('bear a link only where it opens a page', () => {
    const document = example('box-blade-direct');
    expect(reply(document, { link: 'https://example.org/#1.a' }).text).toContain('\nhttps://example.org/#1.a\n');
    for (const link of [
      'javascript:alert(1)',
      'https://example.org/"><script>',
      'data:text/html,x',
      ' https://example.org',
    ])
      expect(reply(document, { link }).html).not.toContain('<a ');
  });
  it('call the machines what they are asked to', () => {
    const { text } = reply(example('box-blade-direct'), {
      names: { tractor: 'your Monday tractor', implement: 'the blade' },
    });
    expect(text).toMatch(/^You asked about the blade on your Monday tractor\./);
  });
});
