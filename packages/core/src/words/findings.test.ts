import { expect, test } from 'vitest';
import { assess } from '../engine/assess/index.ts';
import { shortOf } from './findings.ts';

function lowerPins(implement: object): string {
  const tractor = { category: '1', lowerBallBore: { value: 22.4, plusMinus: 1 } };
  const assessment = assess({ hitchwright: 1, tractor, implement: { mounting: 'threePoint', ...implement } });
  const finding = assessment.ok ? assessment.answer.findings.find(({ id }) => id === 'front.lowerPin') : undefined;
  if (finding === undefined) throw new Error('the pins are not judged');
  return shortOf(finding, 'metric');
}

test('what is open was not measured, or not closely enough', () => {
  expect(lowerPins({ category: '1' })).toBe('lower pins in the balls: not measured');
  expect(lowerPins({ lowerPinDiameter: { value: 22.2, plusMinus: 1 } })).toBe(
    'lower pins in the balls: too close to tell',
  );
  expect(lowerPins({ lowerPinDiameter: 19 })).not.toMatch(/too close|not measured/);
});
