import { describe, expect, test } from 'vitest';
import {
  cautionWords,
  cureText,
  openFindings,
  sentenceOf,
  titleOf,
  topicWords,
  verdictWords,
} from '@hitchwright/core/words';
import { sheetPdf } from '../src/index.ts';
import { readPdf, squeezed, textOf, withoutSigns } from './readPdf.ts';
import { example, judged, usual } from './setups.ts';

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
        const sentences = findings.flatMap((finding) => [titleOf(finding), sentenceOf(finding, setup, system)]);
        const wanted = [
          verdictWords(answer),
          ...Object.values(topicWords),
          ...sentences,
          ...answer.cures.map((cure) => cureText(cure, system)),
          ...answer.cautions.map((id) => cautionWords[id]),
        ];
        expect(findings.length).toBeGreaterThan(20);
        expect(wanted.filter((sentence) => !text.includes(withoutSigns(sentence)))).toEqual([]);
      },
    );
  },
);

test('readings stand with their value, tolerance, who and when', async () => {
  const { bytes } = await sheetPdf(judged(example('box-blade-on-coupler')), usual);
  const text = textOf(await readPdf(bytes));
  for (const said of ['20 1/2 in (521 mm)', '± 1/16 in', 'scale, yard, 2026-09-14', 'Lay a bar across both lower pins'])
    expect(text).toContain(squeezed(said));
});

test('the title block is the last thing that is said', async () => {
  const { bytes, pages } = await sheetPdf(judged(example('box-blade-on-coupler')), usual);
  const { pieces } = await readPdf(bytes);
  expect(pieces.slice(-2).map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual(['Page', `${pages} of ${pages}`]);
});
