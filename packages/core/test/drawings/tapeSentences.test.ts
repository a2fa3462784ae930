import { describe, expect, it } from 'vitest';
import { fieldRules } from '../../src/records/index.ts';
import { readingOf } from '../../src/engine/advice/index.ts';
import type { Length, TapeRow } from '../../src/drawings/tape/row.ts';
import { named, tapeCases, type TapeCase } from './tapeCases.ts';

/** What the sentence of a field’s rule asks of its row; the figure of the usual reference point only. */
const demands: readonly (readonly [RegExp, (row: TapeRow, length: Length) => boolean, string])[] = [
  [/^Ground to /, ({ sketch }, { from }) => from.at[1] === sketch.ground, 'starts on the ground'],
  [
    /^Ground to |[Ss]quare up from (pin|the lower)|^Height of|\bHeight of the/,
    (_, { along }) => along[0] === 0,
    'is upright',
  ],
  [/^Plumb line|[Hh]orizontal distance|, along the ground/, (_, { along }) => along[1] === 0, 'is level'],
  [
    /^Plumb line from the rear axle centre; distance back/,
    (_, { from, to }) => from.word.includes('rear axle') && to.at[0] > from.at[0],
    'goes back from the rear axle',
  ],
  [
    /distance forward from the rear axle/,
    (_, { from, to }) => from.word.includes('rear axle') && to.at[0] < from.at[0],
    'goes forward from the rear axle',
  ],
  [
    /^Front axle centre to /,
    (_, { from, to }) => from.word.includes('front axle') && to.at[0] < from.at[0],
    'goes forward from the front axle',
  ],
  [
    /^Distance from the lower pins back/,
    (_, { from, to }) => from.word.includes('lower pins') && to.at[0] > from.at[0],
    'goes back from the lower pins',
  ],
  [
    /ball centres back|^Horizontal distance from the lower-link ball/,
    (_, { from, to }) => from.word.includes('ball') && to.at[0] > from.at[0],
    'goes back from the balls',
  ],
  [
    /above the lower pins/,
    (_, { from, to }) => from.word.includes('lower pins') && to.at[1] > from.at[1],
    'goes up from the lower pins',
  ],
  [
    /(above|over) the lower-link ball centres/,
    (_, { from }) => from.word.includes('ball centre') || from.word.includes('ball'),
    'starts at the balls',
  ],
  [
    /^How far .* (to|at) the right of the middle/,
    (_, { from, to }) => from.word.includes('middle') && to.at[0] > from.at[0],
    'goes to the right of the middle',
  ],
  [/to the left in use/, (_, { from, to }) => to.at[0] < from.at[0], 'goes to the left'],
  [/to the right in use/, (_, { from, to }) => to.at[0] > from.at[0], 'goes to the right'],
  [/[Ff]rom the step/, (_, { from }) => from.word.includes('step'), 'starts at the step'],
  [/to its tip/, (_, { to }) => to.word.includes('tip'), 'ends at the tip'],
  [/to the near edge/, (_, { to }) => to.word.includes('near edge'), 'ends at the near edge'],
  [
    /[Cc]aliper across the bore|^Width of the (seat|opening)/,
    (_, { jaws }) => jaws?.grip === 'inside',
    'opens a caliper inside',
  ],
  [/[Cc]aliper (over|on|across the (rod|bar))/, (_, { jaws }) => jaws?.grip === 'over', 'closes a caliper over it'],
  [
    /^Inside width|^Clear width|^Inner wall|^Free length|between the link ends/,
    (_, { isBetween }) => isBetween === true,
    'stands between two faces',
  ],
  [
    /^Outside width|^Over |^Outer wall/,
    (_, length) => length.isBetween !== true && length.jaws?.grip !== 'inside',
    'goes over two faces',
  ],
  [
    /[Cc]entre to .*[Cc]entre|^Between the centres/,
    (_, { from, to }) => from.isCentre === true && to.isCentre === true,
    'runs between centres',
  ],
  [/to the centre of (the|a) /, (_, { to }) => to.isCentre === true, 'ends at a centre'],
  [
    /cross centre/,
    (_, { from, to }) => from.word.includes('cross') || to.word.includes('cross'),
    'has the cross centre at one end',
  ],
  [
    /back to the groove|^Middle of the groove/,
    (_, { from, to }) => from.word.includes('groove') || to.word.includes('groove'),
    'has the groove at one end',
  ],
];

const usual = tapeCases.filter(({ from }) => from === undefined);

function sentenceOf({ path }: TapeCase): string {
  return fieldRules.get(path)?.measure ?? '';
}

describe('a drawing and the sentence of its field', () => {
  for (const [pattern, holds, words] of demands) {
    it(`agree: where it says ${String(pattern)} the tape ${words}`, () => {
      const meant = usual.filter((one) => pattern.test(sentenceOf(one)) && one.row.measured.kind === 'length');
      expect(meant.length).toBeGreaterThan(0);
      const others = meant.filter(({ row }) => !holds(row, row.measured as Length));
      expect(others.map((one) => `${named(one)}: ${sentenceOf(one)}`)).toEqual([]);
    });
  }

  it('agree about what an angle is and what is weighed', () => {
    for (const one of usual) {
      const dimension = fieldRules.get(one.path)?.dimension;
      const kind = { length: 'length', angle: 'angle', mass: 'weight' }[dimension as string];
      expect(one.row.measured.kind, named(one)).toBe(kind);
    }
  });

  it('agree with the table of tools, but where that knows the figure from papers only', () => {
    for (const one of tapeCases) {
      const { tool } = readingOf(one.path, 0);
      expect(one.row.tool === undefined || tool === 'papers', named(one)).toBe(true);
      if (one.row.measured.kind === 'length')
        expect(one.row.measured.jaws !== undefined, named(one)).toBe((one.row.tool ?? tool) === 'caliper');
      if (one.row.measured.kind === 'angle') expect(one.row.tool ?? tool, named(one)).toBe('protractor');
    }
  });
});
