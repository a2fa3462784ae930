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
  withOneLess,
  withOneMore,
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

describe('a drive shaft and what is done to it', () => {
  const driven = example('tiller-driven-direct');
  const own = (changes: Readonly<Record<string, unknown>>): SetupDocument =>
    withEdits(
      driven,
      Object.entries(changes).map(([path, value]) => ({ path: `shaft.${path}`, value })),
    );
  const shafts = (document: SetupDocument) => answer(document).cures.filter(({ on }) => on === 'shaft');

  test('another shaft is never told with a cut that was worked out for the one in its place', () => {
    const wrong = own({ tractorType: 3, closedLength: 600, closedOverlap: 430, profileLength: 500 });
    const shelved = { ...(driven['shaft'] as object), closedLength: 700, closedOverlap: 530, profileLength: 600 };
    const document = withEdits(wrong, [{ path: 'parts', value: [{ kind: 'driveShaft', name: 'X', shaft: shelved }] }]);
    const set = counted(document);
    const isShaft = set.some(({ edits }) => edits.some(({ path }) => path === 'shaft'));
    const isBelow = set.some(({ edits }) => edits.some(({ path }) => path.startsWith('shaft.')));
    expect(isShaft && isBelow).toBe(false);
    const done = answer(
      withEdits(
        document,
        set.flatMap(({ edits }) => edits),
      ),
    );
    if (answer(document).verdict === 'withParts') expect(done.verdict).toBe('works');
    // Counted on, the shaft is cut as its own length wants, and both together work.
    const [x] = shafts(document)
      .filter(({ part }) => part === 'X')
      .map(kept);
    const withX = withChosen(document, [
      x ??
        kept({ ...(plate as CureRecord), cures: [], inSmallestSet: false, edits: [{ path: 'shaft', value: shelved }] }),
    ]);
    const all = counted(withX);
    expect(all.length).toBeGreaterThan(1);
    expect(answer(withX).verdict).toBe('withParts');
    const both = withEdits(
      document,
      all.flatMap(({ edits }) => edits),
    );
    expect(answer(both).verdict).toBe('works');
  });
  test('cut twice it is cut by both; without the first the second goes too; a new shaft takes the place of cuts', () => {
    const cut = (value: number, amount: number): CureRecord => ({
      ...(plate as CureRecord),
      kind: 'cutShaft',
      part: null,
      on: 'shaft',
      amount,
      edits: [{ path: 'shaft.closedLength', value: { value } }],
    });
    const [first, second] = [cut(544, 56), cut(479, 65)];
    const both = withOneMore(withOneMore([], first), second);
    expect(both).toEqual([first, second]);
    expect(withChosenDone(withChosen(driven, both))).toEqual(own({ closedLength: { value: 479 } }));
    expect(withOneLess(both, first)).toEqual([]);
    expect(withOneLess(both, second)).toEqual([first]);
    const shaft = { ...first, kind: 'part', edits: [{ path: 'shaft', value: {} }] } as const;
    expect(withOneMore(both, shaft)).toEqual([shaft]);
    expect(withOneMore([shaft], first)).toEqual([shaft, first]);
  });
  test('a cure that is counted on and leaves something open, or makes it worse, is no yes', () => {
    expect(answer(driven).verdict).toBe('works');
    const bad = (value: unknown) =>
      answer(
        withChosen(driven, [{ ...(plate as CureRecord), on: 'shaft', edits: [{ path: 'shaft.closedLength', value }] }]),
      ).verdict;
    expect(bad({ value: 900 })).not.toBe('works');
    expect(bad({ between: [500, 900] })).toBe('measureFirst');
  });
});

test('what can’t be read as cures is refused by its field, and counted on by nobody', () => {
  for (const odd of [5, [null], [{}], 'x', {}, [{ ...plate, edits: [{}] }]]) {
    const document = withEdits(blade, [{ path: 'chosen', value: odd }]);
    expect(chosenIn(document)).toEqual([]);
    expect(withChosenDone(document)).toBe(document);
    const reading = readSetup(document);
    expect(reading.ok ? [] : reading.errors.map(({ path }) => path.split('.')[0])).toContain('chosen');
  }
});
