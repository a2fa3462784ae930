import { describe, expect, test } from 'vitest';
import { setupFrom, withEdits, yardErrors, type SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';
import { named, setup, yard } from './yard.ts';

test('every record of the sample yard can be read', () => {
  expect(yardErrors(yard)).toEqual([]);
});

describe('scenario A: what does not hook up fails for the reason of the story', () => {
  test('35 hp, box blade on the coupler: the upper pin is about 51 mm too high, a plate cures it', () => {
    const result = answer(setup('35', 'U-28', 'box blade'));
    const mast = finding(result, 'rear.mast');
    expect(mast.side).toBe('high');
    expect(mast.quantity?.low).toBeCloseTo(49.5, 1);
    expect(mast.quantity?.high).toBeCloseTo(52.5, 1);
    expect(result.outcomes.hooksUp).toBe('withParts');
    expect(result.lead?.id).toBe('rear.mast');
  });
  test('35 hp, rake on the coupler: the shoulders are 9.5 mm too wide on each side', () => {
    const shoulders = finding(answer(setup('35', 'U-28', 'rake')), 'rear.shoulders');
    const middle = ((shoulders.margin?.low ?? 0) + (shoulders.margin?.high ?? 0)) / 2;
    expect(middle / 2).toBeCloseTo(-9.5, 9);
  });
  test('35 hp, rear blade without coupler: its pin is thicker than the bore', () => {
    const result = answer(setup('35', null, 'rear blade'));
    expect(result.outcomes.hooksUp).toBe('willNot');
    expect(result.lead?.id).toBe('front.lowerPin');
    expect(result.lead?.side).toBe('low');
  });
  test('55 hp, rear blade on the coupler: the span is 64.5 mm too wide on each side', () => {
    const shoulders = finding(answer(setup('55', 'U-28', 'rear blade')), 'rear.shoulders');
    expect(shoulders.status).toBe('fail');
    expect(((shoulders.margin?.low ?? 0) + (shoulders.margin?.high ?? 0)) / 4).toBeCloseTo(-64.5, 9);
  });
  for (const tractor of ['35', '55']) {
    test(`${tractor} hp, post auger on the coupler: there is no upper pin`, () => {
      const result = answer(setup(tractor, 'U-28', 'auger'));
      expect(result.outcomes.hooksUp).toBe('willNot');
      expect(result.lead?.id).toBe('mounting');
      expect(finding(result, 'rear.mast').reason).toBe('noUpperPin');
    });
  }
  test('35 hp, everything else of the story hooks up on the coupler as it stands', () => {
    for (const implement of ['rotary cutter', 'tiller', 'bale spear', 'finish mower']) {
      expect(answer(setup('35', 'U-28', implement)).outcomes.hooksUp, implement).toBe('works');
    }
  });
  test('55 hp, the coupler needs two lower bushings and a top bushing at its front', () => {
    const result = answer(setup('55', 'U-28', 'tiller'));
    expect(result.outcomes.hooksUp).toBe('withParts');
    const needed = result.cures.filter((cure) => cure.inSmallestSet && cure.on !== 'shaft');
    expect(needed.map(({ on }) => on)).toEqual(['coupler.front', 'coupler.front']);
    expect(new Set(needed.flatMap(({ cures }) => cures))).toEqual(new Set(['front.lowerPin', 'front.upperPin']));
  });
});

describe('scenario F: an inherited box blade', () => {
  test('without the coupler it hooks up; with links that do not splay the top link reaches 628 mm at its working height of 430 mm', () => {
    const direct = setup('35', null, 'box blade');
    expect(answer(direct).outcomes.hooksUp).toBe('works');
    // The story reckons with a straight link.
    const straight = withEdits(direct, [{ path: 'tractor.lowerLinkPivotSpan', value: 696 }]);
    const { low, high } = finding(answer(straight), 'front.topLink').quantity ?? { low: null, high: null };
    expect(((low ?? 0) + (high ?? 0)) / 2).toBeCloseTo(628.35, 1);
  });
  test('with a top link that ends at 570 mm it does not, even tilted by 3°, and says so', () => {
    const short = withEdits(setup('35', null, 'box blade'), [
      { path: 'tractor.topLinkLength', value: { adjustable: { between: [450, 570] } } },
    ]);
    const result = answer(short);
    expect(result.outcomes.hooksUp).toBe('willNot');
    expect(result.lead?.id).toBe('front.topLink');
    expect(result.lead?.side).toBe('high');
  });
  test('if nobody sells the plate, it will not hook up on the coupler', () => {
    const bare = withEdits(setup('35', 'U-28', 'box blade'), [{ path: 'parts', value: [] }]);
    expect(answer(bare).outcomes.hooksUp).toBe('willNot');
  });
  test('a rented one is not offered the plate', () => {
    const rented = withEdits(setup('35', 'U-28', 'box blade'), [{ path: 'implement.alteration', value: 'rented' }]);
    expect(answer(rented).cures).toEqual([]);
  });
});

/** Every pairing of the yard; of those with a drive, which take longer, the ones on the 35 without a coupler. */
function pairings(): SetupDocument[] {
  const couplers = [null, ...yard.couplers];
  return yard.tractors.flatMap((tractor) =>
    couplers.flatMap((coupler, i) =>
      yard.implements
        .filter(({ driven }) => driven === false || (i === 0 && tractor === named(yard.tractors, '35')))
        .map((implement) => setupFrom(yard, tractor, coupler, implement)),
    ),
  );
}

test('every cure that is offered in the yard really turns its failure into a pass when it is applied', () => {
  let applied = 0;
  for (const document of pairings()) {
    for (const cure of answer(document).cures) {
      const after = answer(withEdits(document, cure.edits));
      for (const id of cure.cures) expect(finding(after, id).status, `${cure.part} for ${id}`).toBe('pass');
      applied += 1;
    }
  }
  expect(applied).toBeGreaterThan(10);
});
