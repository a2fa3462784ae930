import { describe, expect, it } from 'vitest';
import { shaftDrawing, shaftPlots, sideView, stationWords, topView, type Scene } from '../../src/drawings/index.ts';
import type { ShaftStation, ShaftSweep } from '../../src/engine/shaft/index.ts';
import { drives, withShaft, type Drive } from './shaftSetups.ts';
import { withStation } from './sideSetups.ts';

function named(name: string): Drive {
  return (drives[name] as () => Drive)();
}

/** What the slider speaks at the lowest height, with some figures given by hand. */
function spoken(
  station: Partial<ShaftStation>,
  shaft: Partial<ShaftSweep> = {},
  system: 'us' | 'metric' = 'us',
): string {
  const drive = named('on the links, long enough');
  const [first, ...others] = drive.shaft.stations;
  const here = {
    ...(first as ShaftStation),
    ballHeight: 648,
    overlap: 200,
    toBottom: 100,
    tractorAngle: 12.34,
    implementAngle: 8,
  };
  const swept = {
    ...drive.shaft,
    turnsFrom: 600,
    turnsTo: 700,
    ...shaft,
    stations: [{ ...here, ...station }, ...others],
  };
  const lift = withStation(
    drive.answer,
    { ballHeight: 648, pitch: 6.2, clearance: 300, proven: 601, estimated: 700 },
    { load: 100 },
  );
  return stationWords(withShaft(lift, swept), 0, system);
}

describe('what the slider speaks of a drive', () => {
  it('is the overlap and both angles beside the lift, rounded to the unsafe side', () => {
    expect(spoken({})).toBe(
      '25 1/2 in (648 mm): 6° nose down; lift 1,104 lb (501 kg) to spare; shaft overlap 7 3/4 in (200 mm), joints 12.4° and 8.0°',
    );
    expect(spoken({ overlap: 199.9 }, {}, 'metric')).toContain(
      'shaft overlap 199 mm (7 3/4 in), joints 12.4° and 8.0°',
    );
  });

  it('is the worst alone where the shaft is in the way', () => {
    expect(spoken({ overlap: 100 })).toBe(
      '25 1/2 in (648 mm): 6° nose down; shaft overlap 3 7/8 in (100 mm), 5 7/8 in (150 mm) wanted, joints 12.4° and 8.0°',
    );
    expect(spoken({ overlap: -3 })).toContain('; shaft apart by 1/8 in (3 mm), joints');
    expect(spoken({ toBottom: -3 })).toContain('; shaft bottoms, 1/8 in (3 mm) too long, joints');
    expect(spoken({ toBottom: 30 })).toContain(
      '; 1 1/8 in (30 mm) before the shaft bottoms, 2 in (50 mm) wanted, joints',
    );
  });

  it('asks for the overlap only where the drive turns', () => {
    expect(spoken({ overlap: 100 }, { turnsFrom: 200, turnsTo: 300 })).toContain(
      'shaft overlap 3 7/8 in (100 mm), joints',
    );
    expect(spoken({ overlap: 100 }, { turnsFrom: 648, turnsTo: 648 })).toContain('wanted');
    expect(spoken({ overlap: 100 }, { turnsFrom: 651, turnsTo: 700 })).not.toContain('wanted');
  });

  it('holds a joint to less while it turns, and to what stops it elsewhere', () => {
    expect(spoken({ tractorAngle: 26 })).toContain('joints 26.0° and 8.0°, 25° allowed while it turns');
    expect(spoken({ tractorAngle: 26 }, { turnsFrom: 200, turnsTo: 300 })).not.toContain('allowed');
    expect(spoken({ implementAngle: 36 }, { turnsFrom: 200, turnsTo: 300 })).toContain(', 35° allowed');
  });

  it('is the distance between the joints where no overlap is known', () => {
    expect(spoken({ overlap: null, toBottom: null, longest: 508 })).toContain(
      '; 20 in (508 mm) between the joints of the shaft, joints',
    );
  });
});

describe('the pictures of a drive in words', () => {
  it('give distances, overlap, angles, where it turns, where to measure, and the worst that was found', () => {
    const { setup, answer } = named('a coupler moves it back, too little overlap');
    const options = { system: 'metric', station: 20 } as const;
    for (const draw of [sideView, topView, shaftPlots]) {
      const { description } = draw(setup, answer, options) as Scene;
      for (const part of [
        'Balls at 403 mm (15 7/8 in).',
        'Between the joints of the drive shaft: ',
        'Its halves overlap ',
        'are left before it bottoms.',
        'The joint at the tractor bends ',
        'The drive does not turn here.',
        'The drive turns with the balls from 430 mm (16 7/8 in) to 600 mm (23 5/8 in).',
        'Shortest between its joints with the balls at 200 mm (7 7/8 in), longest at 810 mm (31 7/8 in): measure there.',
        'Overlap wanted while it turns: 150 mm (5 7/8 in).',
        'Clearance wanted before it bottoms: 50 mm (2 in).',
        'Joints may bend 25° while they turn.',
        'Overlap while it turns: ',
      ])
        expect(description, part).toContain(part);
    }
  });

  it('say that nothing was found where all of it holds', () => {
    const { setup, answer } = named('on the links, long enough');
    const findings = answer.findings.map((finding) =>
      finding.id.startsWith('shaft.') ? ({ ...finding, status: 'pass' } as const) : finding,
    );
    const { description } = sideView(setup, { ...answer, findings }, { system: 'us' }) as Scene;
    expect(description).toContain('Nothing found against the drive shaft.');
  });

  it('tell of a shaft by itself what it measures, what is cut off, and where to measure', () => {
    const { setup, answer } = named('bottoms at the bottom');
    const { title, description } = shaftDrawing(setup, answer, { system: 'us', format: 'print', cut: 31.75 }) as Scene;
    expect(title).toBe('Drive shaft: the shaft for Wickset 60-in tiller on Ostrey 35');
    for (const part of [
      'Pushed right together it measures 23 1/4 in (590 mm) from cross to cross.',
      'Its halves then overlap 16 1/2 in (420 mm).',
      'Cut 1 1/4 in (32 mm) off both tubes and both guards: the same off all four.',
      'stub and input shaft come nearest: ',
      'from end to end.',
    ])
      expect(description, part).toContain(part);
  });
});
