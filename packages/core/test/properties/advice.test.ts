import { beforeAll, describe, expect, test } from 'vitest';
import { assess } from '../../src/engine/assess/index.ts';
import type { SetupDocument } from '../../src/records/index.ts';
import { setup, yard } from '../scenarios/yard.ts';
import { completed, followed, partly, sheetOrder, type Draw, type Ending, type Story } from './adviceStory.ts';
import { numbers } from './numbers.ts';

/** Stories told; each has its own seed. */
const stories = 300;
const tractors = ['24', '35', '35', '55'];
const couplers = [null, null, 'U-28', 'hook ends'];
const machines = ['box blade', 'landscape rake', 'bale spear', 'rear blade', 'two-row ripper'];

interface Told {
  readonly seed: number;
  readonly truth: string;
  readonly advised: Ending;
  /** Filled in from the top; of every second story only, for time. */
  readonly sheet: Ending | null;
}

function pick<T>(list: readonly T[], draw: Draw): T {
  return list[Math.min(list.length - 1, Math.floor(draw() * list.length))] as T;
}

/** Two parts of the shelf that have nothing to do with a drive. */
function someParts(draw: Draw): SetupDocument[] {
  const shelf = (yard.parts ?? []).filter(({ kind }) => kind !== 'driveShaft' && kind !== 'stubExtender');
  return [pick(shelf, draw), pick(shelf, draw)].filter((part, i, all) => all.indexOf(part) === i);
}

function storyOf(draw: Draw): Story {
  const parts = { path: 'parts', value: someParts(draw) };
  const noLoader = { path: 'tractor.loaderMass', value: undefined };
  const pairing = setup(pick(tractors, draw), pick(couplers, draw), pick(machines, draw), [parts, noLoader]);
  const truth = completed(pairing, draw);
  return { truth, known: partly(truth, draw) };
}

function verdictOf(truth: SetupDocument): string {
  const assessment = assess(truth, { full: false });
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return assessment.answer.verdict;
}

function told(seed: number): Told {
  const stream = numbers(seed);
  const draw = (): number => stream.next().value;
  const story = storyOf(draw);
  const advised = followed(story, draw, (next) => next[0]?.path);
  const sheet = seed % 2 === 0 ? followed(story, draw, sheetOrder(story.known)) : null;
  return { seed, truth: verdictOf(story.truth), advised, sheet };
}

describe('following the advice', () => {
  let all: readonly Told[] = [];
  let ended: readonly Told[] = [];
  beforeAll(() => {
    all = Array.from({ length: stories }, (_, i) => told(i + 1));
    ended = all.filter(({ advised }) => !advised.tooClose);
  }, 900_000);
  test('reaches the verdict that the whole truth gives, unless it ends as too close for its tools', () => {
    const wrong = ended.filter(({ truth, advised }) => advised.verdict !== truth);
    expect(wrong.map(({ seed, truth, advised }) => ({ seed, truth, said: advised.verdict }))).toEqual([]);
    expect(ended.length).toBeGreaterThan(0.8 * stories);
  });
  test('never says on the way that it works where it does not', () => {
    const claims = ['works', 'withParts'];
    const rash = all.filter(
      ({ truth, advised }) => truth === 'willNot' && advised.said.some((one) => claims.includes(one)),
    );
    expect(rash.map(({ seed }) => seed)).toEqual([]);
  });
  test('takes fewer readings, and less time, than a worksheet filled in from the top', () => {
    const both = all.flatMap(({ advised, sheet }) => (sheet === null ? [] : [{ advised, sheet }]));
    const open = both.filter(({ advised, sheet }) => sheet.readings + advised.readings > 0);
    const mean = (of: (one: (typeof open)[number]) => number): number =>
      open.reduce((sum, one) => sum + of(one), 0) / open.length;
    const readings = mean(({ advised }) => advised.readings) / mean(({ sheet }) => sheet.readings);
    const minutes = mean(({ advised }) => advised.minutes) / mean(({ sheet }) => sheet.minutes);
    console.log(
      `${open.length} of ${both.length} stories had something to read: ${mean(({ advised }) => advised.readings).toFixed(1)} readings by the advice, ` +
        `${mean(({ sheet }) => sheet.readings).toFixed(1)} down the worksheet (${readings.toFixed(2)}); minutes ${minutes.toFixed(2)}; ` +
        `${all.length - ended.length} ended too close`,
    );
    expect(readings).toBeLessThan(0.5);
    expect(minutes).toBeLessThan(0.7);
  });
});
