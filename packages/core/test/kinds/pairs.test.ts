import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Answer } from '../../src/engine/assess/index.ts';
import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import type { Hold } from '../../src/engine/joint/index.ts';
import { checksByHold, hookupIds } from '../../src/engine/hookup/index.ts';
import { answer as answerTo, example } from '../asked.ts';

const folder = new URL('../../../../examples/setups/kinds/', import.meta.url);

const answer = (file: string): Answer => answerTo(example(`kinds/${file.replace('.json', '')}`));

function failing({ findings }: Answer): Finding[] {
  return findings.filter(({ status }) => status === 'fail');
}

interface Pair {
  /** Everything that fails in the failing setup. */
  readonly reasons: readonly CheckId[];
  /** By how much, worked by hand from the two figures that disagree [mm, deg]. */
  readonly margins: readonly number[];
  /** The figure whose reading no other way of holding asks for in this way. */
  readonly driver: string;
}

const pairs: Readonly<Record<Hold, Pair>> = {
  bareBalls: { reasons: ['front.lowerPin'], margins: [22.4 - 28.6], driver: 'implement.lowerPinDiameter' },
  uFrame: { reasons: ['rear.mast'], margins: [1 - (521 - 457)], driver: 'implement.mastHeight' },
  triangle: { reasons: ['rear.receiverAngle'], margins: [1 - (60 - 54)], driver: 'implement.receiverAngle' },
  clawEnds: { reasons: ['rear.claw'], margins: [1 - (56 - 44)], driver: 'implement.pinBallDiameter' },
  bar: { reasons: ['rear.jaw'], margins: [36 - 40], driver: 'implement.jawOpening' },
  // One spread of the links leaves 26 − 25 − 2 mm a side for both: the best setting halves what is short.
  hookEnds: {
    reasons: ['rear.shoulders', 'rear.retention'],
    margins: [26 - 25 - 2, 26 - 25 - 2],
    driver: 'implement.shoulderSpan',
  },
};

describe('the example setups of every kind', () => {
  for (const [hold, { reasons, margins, driver }] of Object.entries(pairs)) {
    test(`${hold}-fits.json hooks up`, () => {
      const result = answer(`${hold}-fits.json`);
      expect(result.hold).toBe(hold);
      expect(result.outcomes.hooksUp).toBe('works');
    });
    test(`${hold}-fails.json fails by ${reasons.join(' with ')} and by nothing else`, () => {
      const result = answer(`${hold}-fails.json`);
      expect(result.outcomes.hooksUp).toBe('willNot');
      const failed = failing(result);
      expect(failed.map(({ id }) => id)).toEqual(reasons);
      failed.forEach(({ margin }, i) => expect(margin?.high).toBeCloseTo(margins[i] as number, 6));
      expect(failed.flatMap(({ drivers }) => drivers.map(({ path }) => path))).toContain(driver);
    });
  }
  test('no other kind has the failing check, or reads the failing figure through it', () => {
    const others = (hold: string, id: CheckId) =>
      Object.entries(checksByHold).filter(([other, ids]) => other !== hold && ids.includes(id));
    for (const hold of ['uFrame', 'triangle', 'clawEnds', 'bar'] as const) {
      for (const id of pairs[hold].reasons) expect(others(hold, id), id).toEqual([]);
    }
    for (const hold of ['uFrame', 'triangle', 'bar', 'hookEnds'] as const) {
      const front = answer(`${hold}-fits.json`).findings.find(({ id }) => id === 'front.lowerPin');
      expect(front?.drivers.map(({ path }) => path)).not.toContain('implement.lowerPinDiameter');
    }
    const uFrame = answer('uFrame-fails.json').findings.filter(({ conflictsWith }) => conflictsWith.length > 0);
    expect(uFrame).toEqual([]);
  });
  test('every kind has its pair, and the lists of checks of any two kinds differ', () => {
    const files = Object.keys(pairs).flatMap((hold) => [`${hold}-fails.json`, `${hold}-fits.json`]);
    expect(readdirSync(folder).sort()).toEqual(files.sort());
    const lists = Object.values(checksByHold).map((ids) => [...ids].sort().join());
    expect(new Set(lists).size).toBe(lists.length);
  });
  test('a check that a kind has not is not needed there, and says why', () => {
    for (const hold of Object.keys(pairs) as Hold[]) {
      for (const { id, status, reason } of answer(`${hold}-fits.json`).findings) {
        if (checksByHold[hold].includes(id) || !hookupIds.includes(id)) continue;
        expect(status, `${hold} ${id}`).toBe('notNeeded');
        expect(reason, `${hold} ${id}`).toBe(hold === 'bareBalls' ? 'noCoupler' : 'otherKind');
      }
    }
  });
});
