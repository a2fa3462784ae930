import { describe, expect, test } from 'vitest';
import {
  cautionWords,
  cureText,
  openFindings,
  sentenceCase,
  sentenceOf,
  spareOf,
  titleOf,
  topicWords,
  verdictWords,
} from '@hitchwright/core/words';
import { sheetPdf } from '../src/index.ts';
import { balloonsOf } from '@hitchwright/core/drawings';
import { readPdf, squeezed, textOf, withoutSigns } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

/** What a check that was not made needs: the heading over it says that it was not. */
function needOf(sentence: string): string {
  expect(sentence).toMatch(/^Not checked: /);
  return sentenceCase(sentence.slice('Not checked: '.length));
}

describe.each(['box-blade-on-coupler', 'tiller-driven-on-coupler', 'flail-measure-first', 'rear-blade'])(
  'the sheet of %s',
  (name) => {
    test.each(['us', 'metric'] as const)(
      'says every finding, cure and caution as the answer does, in %s',
      async (system) => {
        const one = judged(example(name));
        const { answer, setup } = one;
        const { bytes } = await sheetPdf(one, { ...usual, system });
        const text = textOf(await readPdf(bytes));
        const findings = openFindings(answer).filter(({ status }) => status !== 'notNeeded');
        const balloons = balloonsOf(answer);
        const held = findings.filter(({ id, status }) => status === 'pass' && !balloons.has(id));
        const said = findings.flatMap((finding) => {
          const sentence = sentenceOf(finding, setup, system);
          if (finding.status === 'notChecked') return [titleOf(finding), needOf(sentence)];
          if (!held.includes(finding)) return [titleOf(finding), sentence];
          if ((finding.margin?.low ?? 0) < 0) return [`${titleOf(finding)}. ${sentence}`];
          return [`${titleOf(finding)} ${spareOf(finding, system) ?? ''}`];
        });
        const wanted = [
          verdictWords(answer),
          ...Object.values(topicWords),
          ...said,
          ...answer.cures.map((cure) => cureText(cure, system)),
          ...answer.cautions.map((id) => cautionWords[id]),
        ];
        expect(findings.length).toBeGreaterThan(20);
        expect(held.length).toBeGreaterThan(10);
        expect(wanted.filter((sentence) => !text.includes(withoutSigns(sentence)))).toEqual([]);
      },
    );
  },
);

test('what there is to spare is what the sentence of the finding says', () => {
  const { answer, setup } = judged(example('tiller-driven-on-coupler'));
  const told = answer.findings.flatMap((finding) => {
    const spare = spareOf(finding, 'us');
    return spare === null ? [] : [{ spare, sentence: sentenceOf(finding, setup, 'us') }];
  });
  expect(told.length).toBeGreaterThan(15);
  expect(told.filter(({ spare, sentence }) => !sentence.includes(spare))).toEqual([]);
});

test('readings stand with their value, tolerance, who and when; others are counted', async () => {
  const { bytes } = await sheetPdf(judged(example('box-blade-on-coupler')), usual);
  const text = textOf(await readPdf(bytes));
  for (const said of [
    'tape: shoulder span of the implement 26 in (661 mm) ± 1/16 in; mast height of the implement 20 1/2 in (521 mm)',
    'scale, yard, 2026-09-14: mass of the implement 430 lb (195 kg)',
    '85 more figures are taken as they stand in the setup',
  ])
    expect(text).toContain(squeezed(said));
});

test('the title block is the last thing that is said', async () => {
  const { bytes, pages } = await sheetPdf(judged(example('box-blade-on-coupler')), usual);
  const { pieces } = await readPdf(bytes);
  expect(pieces.slice(-2).map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual(['Page', `${pages} of ${pages}`]);
});
