import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rearView, sceneToSvg, type Format } from '../../src/drawings/index.ts';
import type { SetupDocument } from '../../src/records/index.ts';
import { misfitsIn, type MeasuredMisfit } from './readSvg.ts';
import { gallery, judged, setupOn, setupWith } from './setups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];

function drawnMisfits(document: SetupDocument, format: Format = 'desk'): MeasuredMisfit[] {
  const { setup, answer } = judged(document);
  return misfitsIn(sceneToSvg(rearView(setup, answer, { system: 'us', format })));
}

/** Every misfit in the drawing has the length of its finding's margin, at its worse end. */
function expectTrue(document: SetupDocument, format: Format = 'desk'): MeasuredMisfit[] {
  const { answer } = judged(document);
  const misfits = drawnMisfits(document, format);
  for (const { finding, total } of misfits) {
    const found = answer.findings.find(({ id }) => id === finding);
    expect(['fail', 'cured']).toContain(found?.status);
    expect(Math.abs(total - Math.abs(found?.margin?.low ?? NaN)), `${finding}: ${total}`).toBeLessThan(0.01);
  }
  return misfits;
}

interface Case {
  readonly document: SetupDocument;
  readonly finding: string;
  /** Worked out by hand from the figures of the setup [mm]. */
  readonly margin: number;
}

const cases: Readonly<Record<string, Case>> = {
  'a mast too high': {
    document: setupWith({ implement: { mastHeight: 521 } }),
    finding: 'rear.mast',
    margin: 521 - 470 - 5,
  },
  'a mast too low': {
    document: setupWith({ implement: { mastHeight: 440 } }),
    finding: 'rear.mast',
    margin: 470 - 5 - 440,
  },
  'a mast too high and set back': {
    document: setupWith({ implement: { mastHeight: 500, mastSetback: 60 } }),
    finding: 'rear.mast',
    margin: Math.hypot(60, 500) - 470 - 5,
  },
  'a mast somewhere too high': {
    document: setupWith({ implement: { mastHeight: { value: 521, plusMinus: 3 } } }),
    finding: 'rear.mast',
    margin: 524 - 470 - 5,
  },
  'shoulders too wide': {
    document: setupWith({ implement: { shoulderSpan: { value: 697, plusMinus: 1 } } }),
    finding: 'rear.shoulders',
    margin: 698 + 25 - 712,
  },
  'shoulders too close on pins that point in': {
    document: setupWith({ implement: { shoulderSpan: 730, pinsPoint: 'in' } }),
    finding: 'rear.shoulders',
    margin: 712 + 25 - 730,
  },
  'pins too short to cross the hooks': {
    document: setupWith({ implement: { standOut: 36, shoulderToHole: 24 } }),
    finding: 'rear.pinSeat',
    margin: 712 + 25 - 661 - 2 * 36,
  },
  'retaining holes covered': {
    document: setupWith({ implement: { shoulderToHole: 30 } }),
    finding: 'rear.retention',
    margin: 712 + 25 - 661 - 2 * 30,
  },
  'links that can’t reach out': {
    document: setupWith({ coupler: null, implement: { shoulderSpan: 780 } }),
    finding: 'front.span',
    margin: 780 + 35 - 760,
  },
  'links that can’t come in': {
    document: setupWith({ coupler: null, implement: { shoulderSpan: 580 } }),
    finding: 'front.span',
    margin: 640 - 580 - 35,
  },
  'links that can’t reach the coupler': {
    document: setupWith({
      coupler: { front: { ...(setupWith({})['coupler'] as { front: object }).front, shoulderSpan: 800 } },
    }),
    finding: 'front.span',
    margin: 800 + 35 - 760,
  },
  'a pin too thick for the hook': {
    document: setupWith({ implement: { lowerPinDiameter: { value: 28.4, plusMinus: 0.2 } } }),
    finding: 'rear.lowerPin',
    margin: 28.6 - 22.8,
  },
  'a pin too loose in the hook': {
    document: setupWith({ implement: { lowerPinDiameter: 19 } }),
    finding: 'rear.lowerPin',
    margin: 22.8 - 19 - 2,
  },
  'a pin too thick for the ball': {
    document: setupWith({ coupler: null, implement: { lowerPinDiameter: 28.4 } }),
    finding: 'front.lowerPin',
    margin: 28.4 - 22.4,
  },
  'an upper pin too thick': {
    document: setupWith({ implement: { upperPinDiameter: 25.4 } }),
    finding: 'rear.upperPin',
    margin: 25.4 - 24,
  },
  'a clevis too narrow': {
    document: setupWith({ implement: { clevisGap: 20, clevisOuterWidth: 44 } }),
    finding: 'rear.clevis',
    margin: 25 - 20,
  },
  'a ball too big for the claw': {
    document: setupOn({ kind: 'clawEnds', clawSize: 56 }, { pinBallDiameter: 64, pinBallWidth: 40, pinBallBore: 22.6 }),
    finding: 'rear.claw',
    margin: 64 - 56 - 1,
  },
  'a receiver too narrow': {
    document: gallery['triangle-frame-too-wide'] as SetupDocument,
    finding: 'rear.receiverWidth',
    margin: 10,
  },
  'a retaining hole covered by the ball': {
    document: gallery['claw-ends-hole-covered'] as SetupDocument,
    finding: 'rear.retention',
    margin: 1,
  },
  'jaws too far apart': {
    document: gallery['bar-jaws-too-far-apart'] as SetupDocument,
    finding: 'rear.jawSpan',
    margin: 40,
  },
};

describe('the misfit in the drawing is as long as the finding says', () => {
  for (const [name, { document, finding, margin }] of Object.entries(cases)) {
    it(`${name}: ${margin.toFixed(2)} mm, in every format`, () => {
      for (const format of formats) {
        const found = expectTrue(document, format).filter((misfit) => misfit.finding === finding);
        expect(found.length).toBeGreaterThan(0);
        for (const { total } of found) expect(Math.abs(total - margin)).toBeLessThan(0.01);
      }
    });
  }
});

describe('the ends of the misfit are real geometry', () => {
  it('runs from the highest seat of the hook, 470 and 5 mm of play, to the pin at 521 mm', () => {
    const [misfit] = drawnMisfits(setupWith({ implement: { mastHeight: 521 } }));
    expect([misfit?.from[1], misfit?.to[1]]).toEqual([475, 521]);
  });

  it('runs from the inner face of the right hook to the right shoulder at the wider end of its tolerance', () => {
    const [misfit] = drawnMisfits(setupWith({ implement: { shoulderSpan: { value: 697, plusMinus: 1 } } }));
    expect([misfit?.from[0], misfit?.to[0]]).toEqual([712 / 2 - 25 / 2, 698 / 2]);
    expect(misfit?.sides).toBe(2);
  });

  it('runs from where the right ball can stand at most to where the pin wants it', () => {
    const [misfit] = drawnMisfits(setupWith({ coupler: null, implement: { shoulderSpan: 780 } }));
    expect([misfit?.from[0], misfit?.to[0]]).toEqual([380, 407.5]);
  });

  it('is drawn again enlarged where it is small, and says by how much', () => {
    const misfits = drawnMisfits(setupWith({ implement: { mastHeight: 480 } }));
    expect(misfits.map(({ mmPerUnit }) => mmPerUnit < 1)).toEqual([false, true]);
  });
});

describe('nothing false is drawn', () => {
  it('draws no misfit where the way of mounting is what fails', () => {
    expect(drawnMisfits(setupWith({ implement: { mounting: 'swingingDrive' } }))).toEqual([]);
  });

  it('draws no misfit where everything fits', () => {
    expect(drawnMisfits(setupWith({}))).toEqual([]);
  });

  it('draws no misfit where nothing was measured', () => {
    expect(drawnMisfits(gallery['u-frame-nothing-measured'] as SetupDocument)).toEqual([]);
  });

  it('measures true for any figures, tolerances and directions of the pins', () => {
    const near = (base: number, spread: number) =>
      fc
        .tuple(fc.integer({ min: -10 * spread, max: 10 * spread }), fc.integer({ min: 0, max: 20 }))
        .map(([off, slack]) => ({
          value: base + off / 10,
          plusMinus: slack / 10,
        }));
    const changes = fc.record({
      mastHeight: near(470, 90),
      mastSetback: near(20, 60),
      shoulderSpan: near(670, 90),
      lowerPinDiameter: near(22.4, 6),
      upperPinDiameter: near(20, 6),
      standOut: near(70, 20),
      shoulderToHole: near(38, 9),
      clevisGap: near(36, 14),
      clevisOuterWidth: near(80, 10),
      pinsPoint: fc.constantFrom('in', 'out'),
    });
    let drawn = 0;
    fc.assert(
      fc.property(changes, fc.boolean(), fc.constantFrom(...formats), (implement, isBare, format) => {
        drawn += expectTrue(setupWith({ implement, ...(isBare ? { coupler: null } : {}) }), format).length;
      }),
      { numRuns: 120 },
    );
    expect(drawn).toBeGreaterThan(100);
  });
});
