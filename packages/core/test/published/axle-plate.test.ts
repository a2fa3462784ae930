import { expect } from 'vitest';
import { answer, example, finding } from '../asked.ts';
import { published } from './register.ts';

/** What the axles bear themselves, as the rows show where the tyres bear more: 2·400 in front, 2·595 behind [kg]. */
const structure = { front: 700, rear: 1040 };

const plates = [
  { tyres: '4.5-10 and 7-16', each: [205, 485], printed: [410, 970] },
  { tyres: '5-12 and 8-16', each: [220, 475], printed: [440, 950] },
  { tyres: '6-12 and 9.5-16', each: [290, 595], printed: [580, 1040] },
  { tyres: '20x8-10 and 212-80-15', each: [400, 435], printed: [700, 870] },
] as const;

for (const { tyres, each, printed } of plates) {
  published(
    {
      source: 'manual-axle-plate',
      locator: 'p. 86, masses on public roads',
      kind: 'computes',
      title: `tyres ${tyres} of ${each.join(' and ')} kg each let the axles carry ${printed.join(' and ')} kg`,
    },
    () => {
      const told = answer(
        example('box-blade-direct', [
          { path: 'tractor.wheelbase', value: 1500 },
          { path: 'tractor.mass', value: 780 },
          { path: 'tractor.frontAxleMass', value: 320 },
          { path: 'tractor.frontTyreLimit', value: each[0] },
          { path: 'tractor.rearTyreLimit', value: each[1] },
          { path: 'tractor.frontAxleLimit', value: structure.front },
          { path: 'tractor.rearAxleLimit', value: structure.rear },
        ]),
      );
      const most = (id: 'limit.frontTyres' | 'limit.frontAxle' | 'limit.rearTyres' | 'limit.rearAxle'): number => {
        const found = finding(told, id);
        return 'band' in found ? (found.band?.high ?? NaN) : NaN;
      };
      expect(Math.min(most('limit.frontTyres'), most('limit.frontAxle'))).toBe(printed[0]);
      expect(Math.min(most('limit.rearTyres'), most('limit.rearAxle'))).toBe(printed[1]);
    },
  );
}
