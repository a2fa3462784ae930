import { describe, expect, test } from 'vitest';
import { assess, type Outcome } from '../../src/engine/assess/index.ts';
import { withEdits } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';
import { setup, yard } from './yard.ts';

function middle({ low, high }: { readonly low: number | null; readonly high: number | null }): number {
  return ((low ?? NaN) + (high ?? NaN)) / 2;
}

/** Every cell of scenario A’s table: 35 hp without and with the coupler, 55 hp without and with it. */
const table: readonly (readonly [string, Outcome, Outcome, Outcome, Outcome])[] = [
  ['rotary cutter', 'works', 'works', 'withParts', 'withParts'],
  ['60-in tiller', 'works', 'works', 'withParts', 'withParts'],
  ['box blade', 'works', 'withParts', 'withParts', 'withParts'],
  ['landscape rake', 'works', 'withParts', 'withParts', 'withParts'],
  ['bale spear', 'works', 'works', 'withParts', 'withParts'],
  ['rear blade', 'willNot', 'willNot', 'works', 'willNot'],
  ['post auger', 'works', 'willNot', 'withParts', 'willNot'],
  ['finish mower', 'works', 'works', 'withParts', 'withParts'],
];

describe('scenario A: two tractors, eight implements, one coupler', () => {
  for (const [implement, ...outcomes] of table) {
    test(`the ${implement}: ${outcomes.join(', ')}`, () => {
      const cells = ['35', '55'].flatMap((tractor) => [
        setup(tractor, null, implement),
        setup(tractor, 'U-28', implement),
      ]);
      expect(cells.map((document) => answer(document).outcomes.hooksUp)).toEqual(outcomes);
    });
  }
  test('without the plate and the pins, box blade and rake have no hook on either tractor', () => {
    const kept = yard.parts?.filter(({ kind }) => kind === 'lowerBushings' || kind === 'upperBushing');
    for (const tractor of ['35', '55']) {
      for (const implement of ['box blade', 'landscape rake']) {
        const bare = withEdits(setup(tractor, 'U-28', implement), [{ path: 'parts', value: kept }]);
        expect(answer(bare).outcomes.hooksUp, `${implement} on ${tractor}`).toBe('willNot');
      }
    }
  });
  test('the sizes of the misfits are the story’s on both tractors', () => {
    for (const tractor of ['35', '55']) {
      const mast = finding(answer(setup(tractor, 'U-28', 'box blade')), 'rear.mast');
      expect(middle(mast.quantity as never)).toBeCloseTo(521 - 470, 1);
      const rake = finding(answer(setup(tractor, 'U-28', 'rake')), 'rear.shoulders');
      expect(middle(rake.quantity as never)).toBeCloseTo(712 - 25 - 706, 9);
      const blade = finding(answer(setup(tractor, 'U-28', 'rear blade')), 'rear.shoulders');
      expect(middle(blade.quantity as never)).toBeCloseTo(712 - 25 - 816, 9);
    }
  });
  test('35 hp, rear blade on the coupler: pin, span and top all miss', () => {
    const failed = answer(setup('35', 'U-28', 'rear blade')).findings.filter(({ status }) => status === 'fail');
    expect(failed.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['rear.lowerPin', 'rear.shoulders', 'rear.upperPin', 'rear.mast']),
    );
  });
  test('a floating top strap goes on the coupler only where it floats behind the pin', () => {
    const cutter = setup('35', 'U-28', 'rotary cutter');
    const sits = (floatSits: string | undefined) =>
      answer(withEdits(cutter, [{ path: 'implement.floatSits', value: floatSits }])).outcomes.hooksUp;
    expect([sits('behindPin'), sits('atPin'), sits(undefined)]).toEqual(['works', 'willNot', 'measureFirst']);
  });
  test('the category 2 coupler takes the rear blade on 55 hp, the triangle the chipper alone', () => {
    expect(answer(setup('55', 'U-33', 'rear blade')).outcomes.hooksUp).toBe('works');
    const held = yard.implements.filter(
      (implement) => answer(setup('35', 'A-2', String(implement['name']))).outcomes.hooksUp === 'works',
    );
    expect(held.map(({ name }) => name)).toEqual(['Brackley chipper']);
  });
});

describe('scenario F: the top link of the box blade without the coupler', () => {
  const direct = setup('35', null, 'box blade');
  // By hand: links splay (661 + 35 − 440)/2 = 128, seen from the side √(760² − 128²) = 749.14; at 430 mm they rise by 10 mm.
  const reach = Math.sqrt(760 ** 2 - 128 ** 2 - 10 ** 2) - 150;
  const byHand = Math.hypot(reach, 430 + 521 - 800);
  test('at its working height it reaches 618 mm pin to pin, and a mast of 457 mm would need 605', () => {
    expect(byHand).toBeCloseTo(617.8, 1);
    expect(middle(finding(answer(direct), 'front.topLink').quantity as never)).toBeCloseTo(byHand, 0);
    const lower = withEdits(direct, [{ path: 'implement.mastHeight', value: 457 }]);
    expect(middle(finding(answer(lower), 'front.topLink').quantity as never)).toBeCloseTo(605.4, 0);
  });
  test('without a working height the links stand level: 616 mm, and 604 mm', () => {
    const level = withEdits(direct, [{ path: 'implement.workPinHeight', value: null }]);
    expect(middle(finding(answer(level), 'front.topLink').quantity as never)).toBeCloseTo(615.5, 0);
    const lower = withEdits(level, [{ path: 'implement.mastHeight', value: 457 }]);
    expect(middle(finding(answer(lower), 'front.topLink').quantity as never)).toBeCloseTo(604, 0);
  });
  test('a top link that ends at 570 mm is too short by just what a tilt of 3° leaves', () => {
    // Leaning the mast forward by 3° brings its upper pin nearer: 521·sin 3° forward, 521·(1 − cos 3°) down.
    const tilt = (3 * Math.PI) / 180;
    const tilted = Math.hypot(reach - 521 * Math.sin(tilt), 430 + 521 * Math.cos(tilt) - 800);
    const short = withEdits(direct, [
      { path: 'tractor.topLinkLength', value: { adjustable: { between: [450, 570] } } },
      { path: 'implement.mastHeight', value: 521 },
      { path: 'implement.mastSetback', value: 0 },
      { path: 'implement.shoulderSpan', value: 661 },
    ]);
    const link = finding(answer(short), 'front.topLink');
    expect([link.status, link.side]).toEqual(['fail', 'high']);
    expect(link.margin?.low).toBeCloseTo(570 - tilted, 5);
    expect(link.margin?.high).toBeCloseTo(570 - tilted, 5);
  });
});

describe('the other scenarios, as far as the hook-up goes', () => {
  test('G: a cutter with 749 mm between ball centres is within reach of the 24 hp links', () => {
    const wide = withEdits(setup('24', null, 'heavy cutter'), [
      { path: 'implement.shoulderSpan', value: { value: 749, from: 'ballCentre' } },
    ]);
    expect(finding(answer(wide), 'front.span').margin?.low).toBeCloseTo(760 - 749, 9);
  });
  test('I: the stone burier’s pins all fit the 35 hp tractor', () => {
    expect(answer(setup('35', null, 'stone burier')).outcomes.hooksUp).toBe('works');
  });
  test('J: the flail asks for its shoulder span and its upper pin, and for nothing that can’t change the answer', () => {
    const assessment = assess(setup('35', 'U-28', '1.5-m flail'));
    if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
    const { outcomes, findings } = assessment.answer;
    expect(outcomes.hooksUp).toBe('measureFirst');
    const asked = new Set(findings.flatMap(({ asks }) => asks.map(({ path }) => path)));
    expect(asked).toContain('implement.shoulderSpan');
    expect(asked).toContain('implement.mastHeight');
    expect(asked).not.toContain('implement.lowerPinDiameter');
  });
});

describe('an implement with two rows of pins', () => {
  test('the lower row goes on category 2, the upper on category 1: the tractor chooses', () => {
    const pin = (tractor: string) => finding(answer(setup(tractor, null, 'ripper')), 'front.lowerPin');
    expect([pin('35').status, pin('55').status]).toEqual(['pass', 'pass']);
    const span = (tractor: string) =>
      middle(finding(answer(setup(tractor, null, 'ripper')), 'front.span').quantity as never);
    expect(span('35')).toBeCloseTo(676 + 35, 9);
    expect(span('55')).toBeCloseTo(825 + 45, 9);
  });
  test('the upper row makes the mast as much shorter as it stands higher', () => {
    const mast = finding(answer(setup('35', 'U-28', 'ripper')), 'rear.mast');
    expect(mast.status).toBe('pass');
    const noSlot = withEdits(setup('35', 'U-28', 'ripper'), [{ path: 'coupler.topHookHeight', value: 470 }]);
    const low = finding(answer(noSlot), 'rear.mast');
    expect([low.status, low.side]).toEqual(['fail', 'low']);
    expect(middle(low.quantity as never)).toBeCloseTo(Math.hypot(482 - 25, 30) - 470, 1);
  });
});
