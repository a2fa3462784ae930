import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { assess } from '../engine/assess/index.ts';
import { withEdits, type SetupDocument } from '../records/index.ts';
import { remarksOn } from './remarks.ts';

function remarks(fields: Record<string, unknown>, topHookHeight: unknown = 459): string[] {
  const coupler = { kind: 'uFrame', topHookHeight, topHookBehind: 0, topHookThroat: 22 };
  const assessment = assess(
    { hitchwright: 1, tractor: {}, coupler, implement: { upperPinDiameter: 19, ...fields } },
    { full: false },
  );
  return assessment.ok ? remarksOn(assessment.answer, 'metric') : [];
}

test('a turn in the coupler is told in degrees, rear up counting positive', () => {
  expect(remarks({ mounting: 'threePoint', mastHeight: 455, mastSetback: 60 })[0]).toContain('turned by 7.5°');
  expect(remarks({ mounting: 'threePoint', mastHeight: 459, mastSetback: 0 }).join(' ')).not.toContain('turned');
});

test('the category is told by what the figures say, beside what is stamped', () => {
  const text = remarks({ category: '1', lowerPinDiameter: 28, shoulderSpan: 683 }).join(' ');
  expect(text).toContain('Stated category 1; by its pins 2N or 2, by its span 1 or 2N');
  expect(text).toContain('power never decides it');
});

test('an adjustable hook is told where to be set, once nothing is open', () => {
  const slot = { adjustable: { between: [356, 470] } };
  const file = new URL('../../../../examples/setups/kinds/uFrame-fits.json', import.meta.url);
  const fits = withEdits(JSON.parse(readFileSync(file, 'utf8')) as SetupDocument, [
    { path: 'coupler.topHookHeight', value: slot },
    { path: 'implement.mastHeight', value: 451 },
    { path: 'implement.mastSetback', value: 0 },
    { path: 'coupler.topHookBehind', value: 0 },
  ]);
  const assessment = assess(fits, { full: false });
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  expect(assessment.answer.outcomes.hooksUp).toBe('works');
  expect(remarksOn(assessment.answer, 'metric')[0]).toContain('Set the top hook 451 mm');
  expect(remarks({ mounting: 'threePoint', mastHeight: 457, mastSetback: 0 }, slot).join(' ')).not.toContain('Set the');
});
