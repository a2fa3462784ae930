import { describe, expect, it } from 'vitest';
import { liftPlots, sideView, stationWords, type Scene } from '../../src/drawings/index.ts';
import type { Station, Sweep } from '../../src/engine/lift/index.ts';
import { documentOf, judgedFully, lifts, swept, withStation, type Swept } from './sideSetups.ts';

const tiller = () => swept(['Ostrey 35', 'U-28', 'tiller']);

/** What the slider speaks at a station with some of its figures given by hand. */
function spoken(station: Partial<Station>, sweep: Partial<Sweep> = {}, system: 'us' | 'metric' = 'us'): string {
  const { answer } = tiller();
  return stationWords(
    withStation(answer, { ballHeight: 648, pitch: 6.2, clearance: 300, ...station }, sweep),
    0,
    system,
  );
}

describe('what the slider speaks', () => {
  const load = { load: 100 };

  it('is the ball height, how the implement stands, and what the lift has to spare, rounded to the unsafe side', () => {
    expect(spoken({ proven: 601, estimated: 700 }, load)).toBe(
      '25 1/2 in (648 mm): 6° nose down; lift 1,104 lb (501 kg) to spare',
    );
    expect(spoken({ proven: 601, estimated: 700 }, load, 'metric')).toBe(
      '648 mm (25 1/2 in): 6° nose down; lift 501 kg (1,104 lb) to spare',
    );
  });

  it('calls a negative pitch nose up, and less than half a degree level', () => {
    expect(spoken({ pitch: -3.4, proven: 601, estimated: 700 }, load)).toContain(': 3° nose up;');
    expect(spoken({ pitch: -0.4, proven: 601, estimated: 700 }, load)).toContain(': level;');
  });

  it('says where the linkage binds before anything else', () => {
    expect(spoken({ closes: false, proven: 20, estimated: 30 }, load)).toBe('25 1/2 in (648 mm): the linkage binds');
  });

  it('tells what is certain to be short from what is only not proven', () => {
    expect(spoken({ proven: 80, estimated: 90 }, load)).toContain('; lift 23 lb (10 kg) short');
    expect(spoken({ proven: 80, estimated: 120 }, load)).toContain('; lift not proven, 45 lb (20 kg) short of it');
  });

  it('warns that pins may lift out of hooks that hold by weight alone, and only of those', () => {
    const rising = { lowerForceUp: -1, proven: 601, estimated: 700 };
    const { answer } = lifts['hooks on the link ends']?.() as Swept;
    expect(stationWords(withStation(answer, rising, load), 0, 'us')).toContain(
      'the lower pins may lift out of their hooks',
    );
    expect(spoken(rising, load)).not.toContain('hooks');
  });

  it('asks for ground clearance only from the carrying height up', () => {
    const low = { clearance: 50.8, proven: 601, estimated: 700 };
    expect(spoken(low, { ...load, carry: 640 })).toContain(
      'lowest part 2 in (51 mm) off the ground, 3 15/16 in (100 mm) wanted',
    );
    expect(spoken({ ...low, clearance: -3 }, { ...load, carry: 640 })).toContain(
      'lowest part on the ground, 3 15/16 in (100 mm) wanted',
    );
    expect(spoken(low, { ...load, carry: 650 })).toContain('to spare');
  });

  it('says so where the lift is not known, and nothing where there is no lift to speak of', () => {
    expect(spoken({ proven: null, estimated: null }, load)).toBe('25 1/2 in (648 mm): 6° nose down; lift not known');
    const { answer } = judgedFully(documentOf(['Ostrey 35', null, 'auger']));
    expect(stationWords(answer, 0, 'us')).toBe('');
  });

  it('stands on the drawing as well, word for word, in the accent where it is in the way', () => {
    for (const name of ['rigid frame, arms known', 'no coupler, arms not known, too heavy']) {
      const { setup, answer } = lifts[name]?.() as Swept;
      const words = stationWords(answer, 30, 'us');
      const { items } = sideView(setup, answer, { system: 'us', station: 30 }) as Scene;
      const lines = items.filter((item) => item.kind === 'text' && item.weight === 600 && words.includes(item.text));
      expect(lines.map((item) => (item.kind === 'text' ? item.text : '')).join(' ')).toContain(words);
      const isBad = words.includes('short');
      for (const item of lines)
        expect(item.kind === 'text' && item.text.length > 8 ? item.tone === 'accent' : isBad).toBe(isBad);
    }
  });
});

describe('the pictures in words', () => {
  const described = (station: Partial<Station>, sweep: Partial<Sweep>, system: 'us' | 'metric' = 'us') => {
    const { setup, answer } = tiller();
    const changed = withStation(answer, station, sweep);
    const options = { system, station: 0 } as const;
    return [sideView(setup, changed, options), liftPlots(setup, changed, options)].map((scene) => scene?.description);
  };

  it('give heights, pitch, load, lift proven and estimated, and binding, in both units', () => {
    const station = {
      ballHeight: 648,
      ball: [700, 648],
      centre: [1208, 762],
      pitch: 6.24,
      clearance: 254,
      proven: 601,
      estimated: 700.5,
    } as const;
    for (const text of described(station, { load: 99.2, pickUp: 430, work: 431, carry: 600 })) {
      for (const part of [
        'Balls at 25 1/2 in (648 mm).',
        'The linkage closes at this height.',
        'The implement stands 6.2° nose down.',
        'Load, the implement: 219 lb (100 kg).',
        'Centre of all that is lifted: 20 in (508 mm) behind the balls and 30 in (762 mm) above the ground.',
        'In the load’s place the lift is proven for 1,324 lb (601 kg), estimated for 1,544 lb (700 kg), the allowance off.',
        'Lowest part 10 in (254 mm) above the ground line.',
        'to spare.',
        'Ball heights: pick-up 16 15/16 in (430 mm), work 16 15/16 in (431 mm), carry 23 5/8 in (600 mm), full lift 31 7/8 in (810 mm).',
        'The linkage closes all through the lift.',
      ])
        expect(text).toContain(part);
    }
  });

  it('put the chosen unit first', () => {
    for (const text of described({ ballHeight: 648 }, {}, 'metric'))
      expect(text).toContain('Balls at 648 mm (25 1/2 in).');
  });

  it('tell where the linkage binds and that it binds here', () => {
    for (const text of described({ closes: false }, { unreachable: { low: 200, high: 254 } })) {
      expect(text).toContain('The linkage binds at this height.');
      expect(text).toContain('The linkage binds between 7 7/8 in (200 mm) and 10 in (254 mm).');
    }
  });

  it.each(Object.entries(lifts))('stand at the heights that are asked of it, not near them: %s', (_, make) => {
    const { sweep } = make() as Swept;
    const heights = sweep.stations.map(({ ballHeight }) => ballHeight);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    const [low, high] = [heights[0] ?? 0, heights.at(-1) ?? 0];
    const asked = [sweep.pickUp, sweep.work, sweep.carry].filter(
      (height): height is number => height !== null && height > low && height < high,
    );
    for (const height of asked) expect(Math.min(...heights.map((at) => Math.abs(at - height)))).toBeLessThan(1e-6);
  });

  it('name the heights that a station stands for, what is carried, and the machines', () => {
    const { setup, answer, sweep } = lifts['carried higher than it lifts, loaded']?.() as Swept;
    const { title, subtitle, description } = sideView(setup, answer, { system: 'us' }) as Scene;
    expect(title).toBe('Side view: Wickset 60-in tiller on the links of Ostrey 35');
    expect(sweep.pickUp).toBe(sweep.work);
    expect(subtitle).toBe('Balls at 16 15/16 in (430 mm): pick-up, work.');
    expect(description).toContain('Load, what the implement carries: 1,544 lb (700 kg).');
  });

  it('tell the scale of a printed sheet and the length of the scale bar', () => {
    const { setup, answer } = tiller();
    const { description, scale } = sideView(setup, answer, { system: 'metric', format: 'print' }) as Scene;
    expect(description).toContain(`Printed 186 mm wide the scale is 1:${scale}.`);
    expect(description).toMatch(/the scale bar is \d+ mm long/);
  });
});
