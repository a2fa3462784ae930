import { describe, it } from 'vitest';
import { sceneToSvg, tapeDrawing, type Scene, type TapeOptions } from '../../src/drawings/index.ts';
import { expectGolden } from './expectGolden.ts';

const cases: Readonly<Record<string, readonly [string, TapeOptions]>> = {
  'tape-shoulder-span-phone': ['implement.shoulderSpan', { system: 'us', format: 'phone', reading: '26 5/8' }],
  'tape-stub-behind-axle-phone': ['tractor.stubBehindAxle', { system: 'metric', format: 'phone' }],
  'tape-lift-arm-highest-print': ['tractor.liftArmHighest', { system: 'metric', format: 'print', reading: '61' }],
  'tape-hook-seat-phone': ['coupler.hookSeat', { system: 'us', format: 'phone', reading: '15/16' }],
  'tape-closed-length-desk': ['shaft.closedLength', { system: 'us', format: 'desk', reading: '24 3/8' }],
  'tape-implement-mass-phone': ['implement.mass', { system: 'metric', format: 'phone' }],
};

describe('golden drawings of where the tape goes', () => {
  for (const [name, [path, options]] of Object.entries(cases)) {
    it(`${name} looks as it did`, () => {
      expectGolden(name, sceneToSvg(tapeDrawing(path, options) as Scene, { idPrefix: 'tape' }));
    });
  }
});
