import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shaftCandidates } from '../../src/engine/assess/shaftCandidates.ts';
import type { Candidate } from '../../src/engine/assess/candidate.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import { reader, type Box } from '../../src/engine/proof/index.ts';
import { shaftSweepOf } from '../../src/engine/shaft/index.ts';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';
import { even } from '../even.ts';
import { middlesOf } from '../references/shaftAt.ts';
import { tapePaths, tapes } from './generateLift.ts';
import { shaftCases, type ShaftCase } from './generateShaft.ts';
import { shaftDocument, shaftTapePaths, shaftTapes } from './generateShaftDocument.ts';
import { judgedDrive, type JudgedDrive } from './shaftDrive.ts';

/** A shaft whose closed length stands so far over, or under, the shortest distance less the clearance. */
function withLengths(one: ShaftCase, over: number, mostOverlap: number): ShaftCase {
  const { question } = judgedDrive(shaftDocument(one));
  const sweep = shaftSweepOf(question.shaft, middlesOf(question));
  const shortest = Math.min(...(sweep?.stations ?? []).map((station) => station.shortest));
  const closedLength = Math.max(220, shortest - 50 + over);
  const closedOverlap = Math.min(mostOverlap, closedLength - 20);
  return { ...one, drive: { ...one.drive, closedLength, closedOverlap, profileLength: closedOverlap + 40 } };
}

function candidatesOf(document: SetupDocument, { setup, findings }: JudgedDrive): Candidate[] {
  const failing = findings.filter(({ status, core }) => core && status === 'fail');
  return shaftCandidates({ document, setup, failing, sweep: null });
}

/** The least that a check comes to over all that is uncertain, with everything set as it is in another box. */
function quantity({ question }: JudgedDrive, id: CheckId, setting: Box): number {
  const check = question.checks.find((one) => one.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  const box = question.ledger.entries.map(({ role, range }, i) => (role === 'uncertain' ? range : setting[i]) ?? range);
  return check.measure(reader(box)).quantity.low;
}

/** Fails at every setting, and not only together with another check. */
function failsByItself(drive: JudgedDrive, id: CheckId): boolean {
  const { status, conflictsWith } = drive.of(id);
  return status === 'fail' && conflictsWith.length === 0;
}

const said = (one: ShaftCase, lift: readonly string[], drive: readonly string[], isTaped: boolean): SetupDocument =>
  isTaped ? shaftDocument(one, shaftTapes(drive, tapes(lift))) : shaftDocument(one);

const inputs = [shaftCases(), tapePaths, shaftTapePaths, fc.boolean(), even(2, 80)] as const;

describe('cutting both halves, whichever way the lengths were read', () => {
  test('cut by what is missing, the shaft keeps its clearance by less than a millimetre, and overlaps by twice that less', () => {
    let cut = 0;
    let passed = 0;
    fc.assert(
      fc.property(...inputs, (one, lift, drive, isTaped, over) => {
        const document = said(withLengths(one, over, 700), lift, drive, isTaped);
        const before = judgedDrive(document);
        if (!failsByItself(before, 'shaft.bottoming')) return;
        const cure = candidatesOf(document, before).find(({ kind }) => kind === 'cutShaft');
        const k = cure?.amount ?? NaN;
        const after = judgedDrive(withEdits(document, cure?.edits ?? []));
        expect(failsByItself(after, 'shaft.bottoming')).toBe(false);
        if (after.of('shaft.bottoming').status === 'pass') passed += 1;
        const grown = (id: CheckId): number =>
          quantity(after, id, before.setting) - quantity(before, id, before.setting);
        const left = quantity(after, 'shaft.bottoming', before.setting) - 50;
        expect(left).toBeGreaterThanOrEqual(-1e-9);
        expect(left).toBeLessThan(1);
        expect(grown('shaft.bottoming')).toBeCloseTo(k, 6);
        for (const id of ['shaft.overlap', 'shaft.apart'] as const) expect(grown(id)).toBeCloseTo(-2 * k, 6);
        for (const id of ['shaft.tractorJoint', 'shaft.implementJoint'] as const) expect(grown(id)).toBeCloseTo(0, 9);
        cut += 1;
      }),
      { numRuns: 25, endOnFailure: true },
    );
    expect(cut).toBeGreaterThan(10);
    expect(passed).toBeGreaterThan(cut / 2);
  });
});

describe('longer halves, and the whole answer', () => {
  test('lengthened by half of what is missing, rounded up to 5 mm, the shaft overlaps enough and has that less to its bottom', () => {
    let lengthened = 0;
    fc.assert(
      fc.property(...inputs, (one, lift, drive, isTaped, short) => {
        const slack = withLengths(one, -250, 300);
        const exact = judgedDrive(shaftDocument(slack));
        const enough = quantity(exact, 'shaft.overlap', exact.setting);
        const closedOverlap = slack.drive.closedOverlap - (enough - 150) - short;
        if (closedOverlap < 60 || closedOverlap > slack.drive.closedLength - 20) return;
        const wanting = { ...slack, drive: { ...slack.drive, closedOverlap } };
        const document = said(wanting, lift, drive, isTaped);
        const before = judgedDrive(document);
        if (!failsByItself(before, 'shaft.overlap')) return;
        const cure = candidatesOf(document, before).find(({ kind }) => kind === 'longerTubes');
        const x = cure?.amount ?? NaN;
        const after = judgedDrive(withEdits(document, cure?.edits ?? []));
        expect(x % 5).toBe(0);
        expect(after.of('shaft.overlap').status).toBe('pass');
        const grown = (id: CheckId): number =>
          quantity(after, id, before.setting) - quantity(before, id, before.setting);
        expect(grown('shaft.overlap')).toBeCloseTo(2 * x, 6);
        expect(grown('shaft.bottoming')).toBeCloseTo(-x, 6);
        lengthened += 1;
      }),
      { numRuns: 30, endOnFailure: true },
    );
    expect(lengthened).toBeGreaterThan(8);
  });

  test('the whole answer offers the same cut, and keeps its word', () => {
    let offered = 0;
    fc.assert(
      fc.property(shaftCases(fc.constant('bareBalls')), even(5, 60), (one, over) => {
        const document = shaftDocument(withLengths(one, over, 700));
        const of = answer(document);
        const cure = of.cures.find(({ kind }) => kind === 'cutShaft');
        if (cure === undefined) return;
        expect(cure.returnable).toBe(false);
        const after = answer(withEdits(document, cure.edits));
        for (const id of cure.cures) expect(finding(after, id).status, id).toBe('pass');
        const least = Math.ceil(-(finding(of, 'shaft.bottoming').margin?.low ?? NaN));
        // The least that is missing, or 4 mm more where that does not serve together with everything else.
        expect([least, least + 4]).toContain(cure.amount);
        offered += 1;
      }),
      { numRuns: 6, endOnFailure: true },
    );
    expect(offered).toBeGreaterThan(2);
  });
});

test('an extender on the stub does just what a stub that is as much longer does', () => {
  let extended = 0;
  fc.assert(
    fc.property(...inputs, (one, lift, drive, isTaped, by) => {
      const length = by + 20;
      const short = withLengths(one, -250, 180);
      const parts = [{ path: 'parts', value: [{ kind: 'stubExtender', name: 'extender', length }] }];
      const document = withEdits(said(short, lift, drive, isTaped), parts);
      const before = judgedDrive(document);
      const cure = candidatesOf(document, before).find(({ kind }) => kind === 'stubExtender');
      if (cure === undefined) return;
      const moved = { ...short, drive: { ...short.drive, stubBehind: short.drive.stubBehind + length } };
      const [onStub, longer] = [
        judgedDrive(withEdits(document, cure.edits)),
        judgedDrive(withEdits(said(moved, lift, drive, isTaped), parts)),
      ];
      for (const { id, status } of longer.findings) expect(onStub.of(id).status, id).toBe(status);
      for (const { id } of longer.question.checks.filter((check) => check.id.startsWith('shaft.'))) {
        const [here, there] = [onStub, longer].map((drive) => quantity(drive, id, longer.setting));
        expect(here, id).toBeCloseTo(there ?? NaN, 6);
      }
      const nearer = quantity(onStub, 'shaft.bottoming', before.setting);
      expect(nearer).toBeLessThan(quantity(before, 'shaft.bottoming', before.setting));
      extended += 1;
    }),
    { numRuns: 25, endOnFailure: true },
  );
  expect(extended).toBeGreaterThan(8);
});
