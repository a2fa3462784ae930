import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/engine/assess/index.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import { shaftSweepOf, type ShaftStation } from '../../src/engine/shaft/index.ts';
import { withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';
import { questionOf } from '../references/engineAt.ts';
import { middlesOf } from '../references/shaftAt.ts';
import { setup } from './yard.ts';

/** The drive with the implement level at work and every range at its middle, as the stories reckon. */
function levelSweep(document: SetupDocument) {
  const { shaft, ...question } = questionOf(document);
  const sweep = shaftSweepOf(shaft, middlesOf({ shaft, ...question }));
  if (sweep === null) throw new Error('no sweep');
  return sweep;
}

/** A figure at a height, on the straight line between two stations. */
function at(stations: readonly ShaftStation[], height: number, of: (station: ShaftStation) => number): number {
  const after = Math.max(
    1,
    stations.findIndex(({ ballHeight }) => ballHeight >= height),
  );
  const [a, b] = [stations[after - 1], stations[after]] as [ShaftStation, ShaftStation];
  const share = (height - a.ballHeight) / (b.ballHeight - a.ballHeight);
  return of(a) + share * (of(b) - of(a));
}

/** The stories take 114 mm off the distance between the two shaft ends, however they stand. */
const betweenTips = ({ stub, input }: ShaftStation): number => Math.hypot(input[0] - stub[0], input[1] - stub[1]) - 114;
const slopeOfTips = ({ stub, input }: ShaftStation): number =>
  (Math.atan2(input[1] - stub[1], input[0] - stub[0]) * 180) / Math.PI;

/** The stories reckon with lower links that do not splay: as wide apart at their pivots as at their balls. */
const straight = (span: number): Edit[] => [{ path: 'tractor.lowerLinkPivotSpan', value: span }];

const statuses = (of: Answer, ids: readonly CheckId[]) => ids.map((id) => finding(of, id).status);
const offered = ({ cures }: Answer, kind: string) => cures.filter((cure) => cure.kind === kind);

/**
 * What passes holds at the setting that is shown with it, over everything uncertain; what no one setting serves for all of
 * it is named, and holds there for some of it.
 */
function expectShownToHold({ findings }: Answer, servedApart: readonly CheckId[] = []): void {
  for (const { id, status, margin } of findings) {
    if (status !== 'pass' || margin === null) continue;
    const end = servedApart.includes(id) ? margin.high : margin.low;
    if (end !== null) expect(end, id).toBeGreaterThanOrEqual(-1e-9);
  }
}

describe('scenario D: a tiller whose shaft was trimmed for direct use', () => {
  const direct = answer(setup('35', null, 'tiller'));
  const onCoupler = answer(setup('35', 'U-28', 'tiller'));
  test('direct it runs', () => {
    expect(direct.outcomes.runs).toBe('works');
    expectShownToHold(direct);
  });
  test('by the story’s own reckoning: overlap 171 mm at 430 and 161 at 650, 24.6° at 650 and 40° at full lift', () => {
    const { stations } = levelSweep(setup('35', null, 'tiller', straight(701)));
    const overlap = (height: number): number => 300 - (at(stations, height, betweenTips) - 470);
    expect(Math.abs(overlap(430) - 171)).toBeLessThan(0.6);
    expect(Math.abs(overlap(650) - 161)).toBeLessThan(0.6);
    expect(at(stations, 650, slopeOfTips)).toBeCloseTo(24.6, 0);
    expect(at(stations, 810, slopeOfTips)).toBeCloseTo(40, 0);
  });
  test('with splayed links and both yokes along their shafts: 181 mm at 430, 162 at 650, and a joint bends 29° there', () => {
    const { stations } = levelSweep(setup('35', null, 'tiller'));
    const overlap = (height: number): number => at(stations, height, (station) => station.overlap ?? NaN);
    expect(overlap(430)).toBeCloseTo(181.1, 0);
    expect(overlap(650)).toBeCloseTo(162.1, 0);
    expect(at(stations, 650, (station) => station.tractorAngle)).toBeCloseTo(29.2, 0);
    expect(at(stations, 810, (station) => station.tractorAngle)).toBeCloseTo(46.9, 0);
  });
  test('with the coupler by the story’s reckoning 56 mm at work and 52 at 650', () => {
    const { stations } = levelSweep(setup('35', 'U-28', 'tiller', straight(718)));
    const overlap = (height: number): number => 300 - (at(stations, height, betweenTips) - 470);
    expect(Math.abs(overlap(430) - 56)).toBeLessThan(0.6);
    expect(Math.abs(overlap(650) - 52)).toBeLessThan(0.8);
  });
  test('with the coupler the halves overlap too little, and do not part', () => {
    expect(finding(onCoupler, 'shaft.overlap').status).toBe('cured');
    expect(finding(onCoupler, 'shaft.overlap').quantity?.high).toBeLessThan(80);
    expect(finding(onCoupler, 'shaft.apart').status).toBe('pass');
    expect(onCoupler.outcomes.runs).toBe('withParts');
    expect(onCoupler.lead?.id).toBe('shaft.overlap');
    // The slot of the top hook is set by the mast as it is found.
    expectShownToHold(onCoupler, ['rear.mast']);
  });
  test('cured by a shaft from the shelf, or by longer halves; an extender comes last', () => {
    expect(onCoupler.cures.map(({ kind }) => kind)).toEqual(['part', 'longerTubes', 'stubExtender']);
    const [shelf, longer] = onCoupler.cures;
    expect([shelf?.part, shelf?.inSmallestSet]).toEqual(['medium shaft, closed 23 in, from the shelf', true]);
    // 56 mm are 94 short of 150: 47 mm on both halves; the setting that is best leaves 72 short.
    expect(longer?.amount).toBe(45);
    expect(onCoupler.cautions).toContain('stubExtender');
    for (const cure of onCoupler.cures) {
      const after = answer(withEdits(setup('35', 'U-28', 'tiller'), cure.edits));
      expect(after.outcomes.runs, cure.kind).toBe('works');
    }
  });
  test('the story’s new shaft, 115 mm longer, runs on the coupler', () => {
    const longer = [
      { path: 'shaft.closedLength', value: 585 },
      { path: 'shaft.closedOverlap', value: 415 },
    ];
    expect(answer(setup('35', 'U-28', 'tiller', longer)).outcomes.runs).toBe('works');
  });
});

describe('scenario E: a chipper with too long a shaft', () => {
  const under = (driveShaft: string) => setup('24', null, 'chipper', [{ path: 'rules', value: { driveShaft } }]);
  const usual = answer(setup('24', null, 'chipper'), { full: true });
  test('it bottoms by 87 mm, before any clearance', () => {
    const { status, quantity } = finding(usual, 'shaft.bottoming');
    expect(status).toBe('fail');
    expect(quantity?.low).toBeGreaterThan(-89);
    expect(quantity?.high).toBeCloseTo(-87, 0);
    expect(usual.outcomes.runs).toBe('willNot');
    expectShownToHold(usual);
  });
  test('342 to 350 mm between the crosses at the low heights, the joints over 25° from about 400 on', () => {
    const low = (usual.shaft?.stations ?? []).filter(({ ballHeight }) => ballHeight <= 350);
    expect(Math.min(...low.map(({ shortest }) => shortest))).toBeCloseTo(342, 0);
    expect(Math.max(...low.map(({ longest }) => longest))).toBeCloseTo(350, 0);
    expect(Math.abs((usual.shaft?.aboveTurning ?? NaN) - 400)).toBeLessThan(5);
  });
  test('at full lift the line between the tips rises by 55° (the story: 56°), and the joint at the tractor bends 64°', () => {
    const { stations } = levelSweep(setup('24', null, 'chipper'));
    expect(Math.abs(at(stations, 620, slopeOfTips) - 56)).toBeLessThan(2);
    expect(at(usual.shaft?.stations ?? [], 620, (station) => station.tractorAngle)).toBeCloseTo(63.7, 0);
  });
  test('under the usual rules no cut is offered: 139 mm off leave 134 of overlap, short of 150', () => {
    expect(offered(usual, 'cutShaft')).toEqual([]);
    const cut = [
      { path: 'shaft.closedLength', value: 430 - 139 },
      { path: 'shaft.closedOverlap', value: 330 - 139 },
    ];
    const after = answer(setup('24', null, 'chipper', cut));
    expect(finding(after, 'shaft.overlap').status).toBe('fail');
    expect(finding(after, 'shaft.overlap').quantity?.high).toBeLessThan(150);
    // Longer halves and a further cut each undo what the other one does.
    expect(after.outcomes.runs).toBe('willNot');
  });
  for (const [rules, amount] of [
    ['thirdOfTube', 129],
    ['oneInch', 114],
  ] as const) {
    test(`under ${rules} both halves are cut by ${amount} mm, and it runs`, () => {
      const document = under(rules);
      const cuts = offered(answer(document), 'cutShaft');
      expect(cuts.map((cut) => cut.amount)).toEqual([amount]);
      expect(cuts[0]?.returnable).toBe(false);
      const after = answer(withEdits(document, cuts[0]?.edits ?? []));
      expect(after.outcomes.runs).toBe('works');
      expect(finding(after, 'shaft.bottoming').margin?.low).toBeLessThan(1);
    });
  }
});

const raised = ['shaft.tractorJointRaised', 'shaft.implementJointRaised'] as const;

describe('scenario H: a snow blower raised with its drive on', () => {
  const document = setup('35', null, 'snow blower');
  const blower = answer(document);
  test('turning it is within 25°, at full lift neither joint is within 35°', () => {
    expect(statuses(blower, ['shaft.tractorJoint', 'shaft.implementJoint'])).toEqual(['pass', 'pass']);
    for (const id of raised) {
      expect(finding(blower, id).margin?.high, id).toBeLessThan(0);
      expect(['fail', 'cured']).toContain(finding(blower, id).status);
    }
    expectShownToHold(blower);
  });
  test('25° at 506 to 511 mm, 35° at 616 to 624: the links as they splay, and as the story has them', () => {
    const splayed = levelSweep(document);
    const asTold = levelSweep(setup('35', null, 'snow blower', straight(715)));
    expect([splayed.aboveTurning, asTold.aboveTurning].map((height) => Math.round(height ?? NaN))).toEqual([506, 511]);
    expect([splayed.aboveStop, asTold.aboveStop].map((height) => Math.round(height ?? NaN))).toEqual([616, 623]);
  });
  test('the joints are unequal where it pitches', () => {
    const { stations } = levelSweep(document);
    expect(at(stations, 350, (station) => station.equivalentAngle)).toBeLessThan(2);
    expect(at(stations, 810, (station) => station.equivalentAngle)).toBeGreaterThan(30);
  });
  test('a lift stop is offered, cures both joints, and is kept', () => {
    const stops = offered(blower, 'liftStop');
    expect(stops).toHaveLength(1);
    expect(stops[0]?.cures).toEqual(expect.arrayContaining([...raised]));
    expect(stops[0]?.amount).toBeGreaterThan(500);
    expect(stops[0]?.amount).toBeLessThan(630);
    expect(blower.outcomes.runs).toBe('withParts');
    expect(answer(withEdits(document, stops[0]?.edits ?? [])).outcomes.runs).toBe('works');
  });
  test('a stop that is set by hand at 605 mm does it', () => {
    const stopped = setup('35', null, 'snow blower', [{ path: 'tractor.liftStopHeight', value: 605 }]);
    expect(answer(stopped).outcomes.runs).toBe('works');
  });
});

describe('scenario I: a stone burier for 1000 rpm', () => {
  const mismatched = ['shaft.splines', 'shaft.speed'] as const;
  for (const [tractor, power] of [
    ['35', 'fail'],
    ['55', 'pass'],
  ] as const) {
    test(`on the ${tractor}: splines and speed fail, the power ${power === 'fail' ? 'too' : 'alone would do'}`, () => {
      const burier = answer(setup(tractor, null, 'stone burier'));
      expect(statuses(burier, [...mismatched, 'shaft.power'])).toEqual(['fail', 'fail', power]);
      expect([finding(burier, 'shaft.splines').reason, finding(burier, 'shaft.speed').reason]).toEqual([
        'stubAndInput',
        'speed',
      ]);
      expect(burier.outcomes.runs).toBe('willNot');
      expect(burier.verdict).toBe('willNot');
      expect(burier.cautions).toContain('noAdaptors');
    });
    test(`on the ${tractor} nothing is offered against splines, speed or power, and no extender`, () => {
      const { cures } = answer(setup(tractor, null, 'stone burier'));
      const cured = cures.flatMap((cure) => cure.cures);
      for (const id of [...mismatched, 'shaft.power'] as const) expect(cured).not.toContain(id);
      expect(cures.map(({ kind }) => kind)).not.toContain('stubExtender');
    });
    test(`on the ${tractor} what passes holds at the setting that is shown`, () => {
      expectShownToHold(answer(setup(tractor, null, 'stone burier')), ['shaft.implementJointRaised']);
    });
  }
  test('46 of 45 hp on the 55: by 0.7 kW', () => {
    const { margin } = finding(answer(setup('55', null, 'stone burier')), 'shaft.power');
    expect(margin?.low).toBeCloseTo(0.75, 2);
  });
});
