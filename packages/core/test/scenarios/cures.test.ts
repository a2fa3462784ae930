import { describe, expect, test } from 'vitest';
import { withEdits } from '../../src/records/index.ts';
import { answer, example } from '../asked.ts';

const direct = example('kinds/bareBalls-fits');
const bushings = { kind: 'lowerBushings', name: 'long bushings', inside: 22.3, outside: 28.5, length: 45 };
/** A category 1 implement on category 2 balls, with pins whose retaining hole is too near for the whole bushing. */
const loose = withEdits(direct, [
  { path: 'tractor.lowerBallBore', value: 28.7 },
  { path: 'implement.shoulderToHole', value: 40 },
  { path: 'parts', value: [bushings] },
]);

describe('what is offered', () => {
  test('a bushing that is too long is offered cut to what the hole and washer leave, and can’t be returned then', () => {
    const { cures, cautions, outcomes } = answer(loose);
    expect(outcomes.hooksUp).toBe('withParts');
    expect(cures.map(({ kind, returnable }) => ({ kind, returnable }))).toEqual([
      { kind: 'cutBushing', returnable: false },
    ]);
    expect(cures[0]?.edits).toContainEqual({ path: 'implement.lowerBushingLength', value: 38 });
    expect(cautions).toContain('cutPart');
  });
  test('a bushing that is short enough is offered whole, returnable, and first', () => {
    const short = withEdits(loose, [{ path: 'parts', value: [{ ...bushings, length: 35 }] }]);
    const [first] = answer(short).cures;
    expect(first).toMatchObject({ kind: 'part', returnable: true, inSmallestSet: true });
    expect(answer(short).cautions).not.toContain('cutPart');
  });
  test('a bushing goes up, never down: nothing makes a pin that is too thick thinner', () => {
    const { cures, outcomes } = answer(withEdits(example('rear-blade'), [{ path: 'parts', value: undefined }]));
    expect(outcomes.hooksUp).toBe('willNot');
    expect(cures.flatMap((cure) => cure.cures)).not.toContain('front.lowerPin');
  });
  test('a machine that is rented or under warranty is not altered, but a bushing still slips on', () => {
    for (const alteration of ['rented', 'warranty']) {
      const aerator = withEdits(example('rented-aerator-on-coupler'), [
        { path: 'implement.alteration', value: alteration },
      ]);
      expect(answer(aerator).cures, alteration).toEqual([]);
      expect(answer(aerator).outcomes.hooksUp, alteration).toBe('willNot');
      const slipped = withEdits(loose, [{ path: 'implement.alteration', value: alteration }]);
      expect(answer(slipped).outcomes.hooksUp, alteration).toBe('withParts');
    }
  });
  test('the same machine, owned, gets the pins, and the caution that goes with them', () => {
    const owned = withEdits(example('rented-aerator-on-coupler'), [{ path: 'implement.alteration', value: 'allowed' }]);
    const { cures, cautions, outcomes } = answer(owned);
    expect(outcomes.hooksUp).toBe('withParts');
    expect(cures.map(({ part, altersMachine }) => ({ part, altersMachine }))).toEqual([
      { part: 'pair of pins with 26 1/2-in shoulders', altersMachine: true },
    ]);
    expect(cautions).toContain('boltedPlate');
  });
  test('welded pins are not exchanged or turned round', () => {
    const welded = withEdits(example('rake-on-coupler'), [{ path: 'implement.pinFixing', value: 'welded' }]);
    expect(answer(welded).cures).toEqual([]);
  });
  test('pins are turned round where their plates are known, and then point inward', () => {
    const wide = withEdits(direct, [
      { path: 'implement.shoulderSpan', value: 755 },
      { path: 'implement.plateThickness', value: 20 },
      { path: 'implement.pinFixing', value: 'reversible' },
    ]);
    const [cure] = answer(wide).cures;
    expect(cure).toMatchObject({ kind: 'reversePins', cures: ['front.span'] });
    const after = answer(withEdits(wide, cure?.edits ?? []));
    expect(after.outcomes.hooksUp).toBe('works');
    expect(after.findings.find(({ id }) => id === 'front.span')?.quantity?.low).toBeCloseTo(755 - 40 - 35, 9);
  });
  test('a part for another implement is left on the shelf', () => {
    const renamed = withEdits(example('rake-on-coupler'), [{ path: 'implement.name', value: 'Wickset 72-in seeder' }]);
    expect(answer(renamed).cures).toEqual([]);
  });
  test('a spacer narrows a clevis that is too wide, and claw balls exchange balls that are too large', () => {
    expect(answer(example('ripper-two-pin-rows')).cures.map(({ part }) => part)).toEqual([
      'pair of 5/16-in clevis spacers',
    ]);
    const balls = { kind: 'pinBalls', name: 'pair of 44-mm claw balls', bore: 22.4, diameter: 44, width: 35 };
    const claws = answer(withEdits(example('kinds/clawEnds-fails'), [{ path: 'parts', value: [balls] }]));
    expect(claws.outcomes.hooksUp).toBe('withParts');
    expect(claws.cures.map(({ cures }) => cures)).toEqual([['rear.claw']]);
  });
});

test('every cure in the example setups turns what it cures into a pass, and the smallest set turns all of it', () => {
  const names = ['box-blade-on-coupler', 'rake-on-coupler', 'ripper-two-pin-rows', 'cutter-on-utility-tractor'];
  for (const name of names) {
    const document = example(name);
    const { cures, findings } = answer(document);
    expect(cures.length, name).toBeGreaterThan(0);
    for (const cure of cures) {
      const after = answer(withEdits(document, cure.edits)).findings;
      for (const id of cure.cures) expect(after.find((one) => one.id === id)?.status, `${name} ${id}`).toBe('pass');
      const worse = after.filter(({ status }, i) => status === 'fail' && findings[i]?.status === 'pass');
      expect(worse, name).toEqual([]);
    }
    const all = withEdits(
      document,
      cures.filter((cure) => cure.inSmallestSet).flatMap((cure) => cure.edits),
    );
    expect(answer(all).outcomes.hooksUp, name).toBe('works');
  }
});
