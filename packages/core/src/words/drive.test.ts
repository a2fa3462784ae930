import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { assess, type Answer } from '../engine/assess/index.ts';
import { withEdits, type Edit, type SetupDocument } from '../records/index.ts';
import { driveLead, driveRuleText, driveSpare, ruledText, ruledWords, serveText, topicLine } from './index.ts';

function answerTo(name: string, edits: readonly Edit[] = []): Answer {
  const file = new URL(`../../../../examples/setups/${name}.json`, import.meta.url);
  const document = withEdits(JSON.parse(readFileSync(file, 'utf8')) as SetupDocument, edits);
  const assessment = assess(document, { full: true });
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return assessment.answer;
}

const tooLong: readonly Edit[] = [
  { path: 'shaft.closedLength', value: 560 },
  { path: 'parts', value: undefined },
];

test('a shaft that serves says so, and how much overlap it has to spare', () => {
  const answer = answerTo('tiller-driven-direct');
  expect(driveLead(answer)).toBeNull();
  expect(serveText(answer, 'us')).toBe('serves');
  expect(driveSpare(answer, 'us')).toMatch(/^1 3\/16 in \(\d+ mm\) of overlap to spare$/);
  expect(driveSpare(answer, 'metric')).toMatch(/^\d+ mm \(1 3\/16 in\) of overlap to spare$/);
});

test('a shaft that has to be cut serves with parts, and is told by its worst alone', () => {
  const answer = answerTo('tiller-driven-direct', tooLong);
  expect(driveLead(answer)?.id).toBe('shaft.bottoming');
  expect(driveSpare(answer, 'us')).toBeNull();
  expect(serveText(answer, 'metric')).toMatch(/^with parts: shaft \d+ mm \([^)]*\) too long$/);
});

test('what nothing cures is a plain no with the shortest reason', () => {
  const answer = answerTo('stone-burier-direct');
  expect(serveText(answer, 'us')).toBe('no: splines don’t match');
});

test('what nobody said to be driven asks for that one word', () => {
  const answer = answerTo('box-blade-direct', [{ path: 'implement.driven', value: undefined }]);
  expect([answer.outcomes.runs, answer.verdict]).toEqual(['measureFirst', 'measureFirst']);
  expect(topicLine(answer, 'runs')).toBe('say whether a shaft drives it');
  expect(serveText(answer, 'us')).toBe('say whether a shaft drives it');
});

test('a rule set is told in lengths as a tape has them, or in a share of the profile', () => {
  expect(driveRuleText('usual', 'us')).toBe(
    '2 in (50 mm) left at its shortest, 5 7/8 in (150 mm) of overlap while it turns, joints up to 25° turning, drive off above 35°',
  );
  expect(driveRuleText('thirdOfTube', 'metric')).toContain(
    '40 mm (1 5/8 in) left at its shortest, a third of the profile',
  );
  expect(driveRuleText('halfOfTube', 'us')).toContain('half of the profile overlapping while it turns');
});

test('each set of rules says what the drive comes to, the chosen one marked', () => {
  const { otherRules } = answerTo('tiller-driven-direct');
  const lines = otherRules.map((ruled) => ruledText(ruled, 'us'));
  expect(lines).toHaveLength(6);
  expect(lines.filter((line) => line.includes('used here'))).toEqual([
    expect.stringMatching(/^The usual, used here: runs\. /),
  ]);
  const cautious = otherRules.find(({ rules }) => rules === 'mostCautious');
  expect(cautious && ruledWords(cautious, 'us')).toMatch(/^will not run as it stands: overlap .* short$/);
});

test('ends of a miss that print alike are told once', () => {
  const answer = answerTo('tiller-driven-direct', tooLong);
  const lead = driveLead(answer);
  expect(lead?.margin?.low).not.toBe(lead?.margin?.high);
  expect(answer.otherRules.map((ruled) => ruledWords(ruled, 'us')).join(' ')).not.toMatch(
    /(\d[\d/ ]*) in \(\d+ mm\) to \1 in/,
  );
});
