import { expect, test } from 'vitest';
import { assess } from '../engine/assess/index.ts';
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

test('an adjustable hook is told where to be set', () => {
  const slot = { adjustable: { between: [356, 470] } };
  const [first] = remarks({ mounting: 'threePoint', mastHeight: 457, mastSetback: 0 }, slot);
  expect(first).toMatch(/Set the top hook 45[5-9] mm/);
  expect(remarks({ mounting: 'threePoint', mastHeight: 521, mastSetback: 0 }, slot).join(' ')).not.toContain(
    'Set the top hook',
  );
});
