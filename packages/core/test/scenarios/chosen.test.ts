import { describe, expect, test } from 'vitest';
import type { Cure } from '../../src/engine/assess/index.ts';
import { linkOf, readLink } from '../../src/exchange/index.ts';
import { listingOf, replyTo } from '../../src/handover/index.ts';
import {
  chosenIn,
  editedByHand,
  readSetup,
  withChosen,
  withChosenDone,
  withEdits,
  type CureRecord,
  type SetupDocument,
} from '../../src/records/index.ts';
import { cureText } from '../../src/words/index.ts';
import { answer, example } from '../asked.ts';

/** A cure as a setup keeps it. */
function kept({ kind, part, price, count, amount, edits, returnable, altersMachine, on }: Cure): CureRecord {
  return { kind, part, price, count, amount, edits, returnable, altersMachine, on };
}

function counted(document: SetupDocument): readonly Cure[] {
  return answer(document).cures.filter(({ inSmallestSet }) => inSmallestSet);
}

const blade = example('box-blade-on-coupler');
const [plate] = answer(blade).cures.map(kept);
const withPlate = withChosen(blade, plate === undefined ? [] : [plate]);

describe('a cure that is counted on', () => {
  test('leaves the machine as it is, and the verdict as it stands: works with parts', () => {
    expect(withPlate['implement']).toEqual(blade['implement']);
    const { verdict, lead } = answer(withPlate);
    expect(verdict).toBe('withParts');
    expect(lead?.id).toBe('rear.mast');
    expect(counted(withPlate).map(kept)).toEqual([plate]);
  });
  test('works once it is done', () => {
    const done = withChosenDone(withPlate);
    expect(chosenIn(done)).toEqual([]);
    expect(answer(done).verdict).toBe('works');
  });
  test('is named by the reply beside what is wrong, and never by the listing, which shows the machine as it is', () => {
    const reply = replyTo(withPlate, { system: 'us' });
    expect(reply.ok && reply.reply.text).toContain('Works with parts. The upper pin sits');
    expect(reply.ok && reply.reply.text).toContain(plate === undefined ? '?' : cureText(plate, 'us'));
    expect(listingOf(withPlate, { system: 'us', machine: 'implement' })).toEqual(
      listingOf(blade, { system: 'us', machine: 'implement' }),
    );
  });
  test('travels in a link', () => {
    const reading = readLink(linkOf(withPlate));
    expect(reading.ok && chosenIn(reading.document)).toEqual([plate]);
    expect(reading.ok && answer(reading.document)).toEqual(answer(withPlate));
  });
  test('is let go of where one of its fields, or the machine, is given by hand', () => {
    const by = (path: string, value: unknown) => chosenIn(editedByHand(withPlate, [{ path, value }]));
    expect(by('implement.mastHeight', 480)).toEqual([]);
    expect(by('implement', {})).toEqual([]);
    expect(by('implement.mass', 200)).toEqual([plate]);
    expect(by('tractor.wheelbase', 1600)).toEqual([plate]);
  });
  test('is refused where it can’t be done to the machines it stands beside', () => {
    const broken = withChosen(blade, [
      { ...(plate as CureRecord), edits: [{ path: 'implement.mastHeight', value: -3 }] },
    ]);
    expect(readSetup(broken)).toMatchObject({ ok: false, errors: [{ path: 'chosen' }] });
    for (const path of ['parts', 'implement.__proto__', 'hitchwright', 'chosen', 'implement..x']) {
      const odd = withChosen(blade, [{ ...(plate as CureRecord), edits: [{ path, value: 1 }] }]);
      expect(readSetup(odd), path).toMatchObject({ ok: false });
    }
  });
});

test('of every example, each cure that is offered can be counted on, and is then in the set wherever there is one', () => {
  const names = ['box-blade-on-coupler', 'rake-on-coupler', 'ripper-two-pin-rows', 'cutter-on-utility-tractor'];
  let sets = 0;
  for (const name of names) {
    const document = example(name);
    for (const cure of answer(document).cures.map(kept)) {
      const chosen = withChosen(document, [cure]);
      const set = counted(chosen).map(kept);
      if (set.length === 0) continue;
      sets += 1;
      expect(set, name).toContainEqual(cure);
      const after = answer(
        withEdits(
          document,
          set.flatMap(({ edits }) => edits),
        ),
      ).findings;
      expect(
        after.filter(({ core, status }) => core && status === 'fail'),
        name,
      ).toEqual([]);
    }
  }
  expect(sets).toBeGreaterThan(3);
});

test('a shaft that is counted on is kept, where another would be liked better', () => {
  const document = example('tiller-driven-direct');
  const shelved = { kind: 'driveShaft', shaft: document['shaft'] };
  const short = withEdits(document, [
    { path: 'parts', value: ['a shorter shaft', 'another'].map((name) => ({ ...shelved, name })) },
    { path: 'shaft.closedLength', value: 700 },
  ]);
  const offered = answer(short).cures.map(kept);
  expect(counted(short)[0]?.part).toBe('a shorter shaft');
  const another = offered.find(({ part }) => part === 'another') as CureRecord;
  expect(counted(withChosen(short, [another])).map(kept)).toEqual([another]);
});
