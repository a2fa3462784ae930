import { withEdits, type Implement, type Setup } from '../../records/index.ts';
import type { Answer } from '../assess/index.ts';
import type { Driver, Finding } from '../findings/index.ts';
import { middle, width } from '../geometry/index.ts';
import { groundOf, type Ground } from './ground.ts';
import { movable, type PinRefusal } from './plan.ts';

/** What speaks against a plan before any place is sought; null where nothing does. */
export function refusalBefore(ground: Ground, { coupler, implement }: Setup, before: Answer): PinRefusal | null {
  if (coupler === undefined) return { why: 'noCoupler' };
  if (coupler.kind === 'triangle' || coupler.kind === 'bar') return { why: 'counterpart', kind: coupler.kind };
  const mounting = before.findings.find(({ id }) => id === 'mounting');
  if (mounting?.status === 'fail') return { why: 'notByMoving', findings: [mounting] };
  const fixed = findingsOf(ground, before, false);
  const failing = fixed.filter(isMissed);
  if (failing.length > 0) return { why: 'notByMoving', findings: failing };
  const open = [...fixed.filter(isOpen), ...(mounting !== undefined && isOpen(mounting) ? [mounting] : [])];
  const moved = findingsOf(ground, before, true);
  const unknown = [...open.flatMap(openPaths), ...moved.flatMap(unmeasured), ...unsaidSpan(implement)];
  if (unknown.length > 0) return { why: 'measureFirst', paths: [...new Set(unknown)] };
  if (moved.every(({ status }) => status === 'pass')) return { why: 'fitsAlready' };
  const { alteration } = implement;
  return alteration === undefined || alteration === 'allowed' ? null : { why: 'mayNotAlter', alteration };
}

/** Findings of the checks that moving pins reaches, and what is at odds only with one of those, or all the others. */
function findingsOf({ checks, movableChecks }: Ground, { findings }: Answer, isMovable: boolean): Finding[] {
  const [all, moved] = [checks.map(({ id }) => id), movableChecks.map(({ id }) => id)];
  const isReached = ({ id, conflictsWith }: Finding): boolean =>
    [id, ...conflictsWith].some((one) => moved.includes(one));
  return findings.filter((finding) => all.includes(finding.id) && isReached(finding) === isMovable);
}

function isMissed({ status }: Finding): boolean {
  return status === 'fail' || status === 'cured';
}

function isOpen({ status }: Finding): boolean {
  return status === 'undecided';
}

/** What would settle an open finding: what nobody measured, else what was not measured closely enough. */
function openPaths(finding: Finding): string[] {
  const paths = unmeasured(finding);
  if (finding.asks.length > 0) return finding.asks.map(({ path }) => path);
  return paths.length > 0 ? paths : finding.drivers.filter(isWide).map(({ path }) => path);
}

/** Figures that a class or nothing stands in for: nobody cuts or welds by those. */
function unmeasured({ drivers }: Finding): string[] {
  return drivers.filter(({ origin }) => origin === 'class' || origin === 'unknown').map(({ path }) => path);
}

function isWide({ range }: Driver): boolean {
  return width(range) > 0;
}

/** A spread of which nobody said what points it lies between may be a whole ball width off. */
function unsaidSpan({ shoulderSpan }: Implement): string[] {
  return shoulderSpan?.provenance.from === 'unsaid' ? ['implement.shoulderSpan'] : [];
}

/**
 * Why no place was found: where one would be with every figure exactly in the middle of its range, the figures are too coarse;
 * else these checks can’t be met.
 */
export function whyNoPlace(ground: Ground, isFoundOn: (easier: Ground) => boolean): PinRefusal {
  const { before, question, movableChecks } = ground;
  const read = new Set(movableChecks.flatMap((check) => [...question.field.reads(check)]));
  const wide = question.ledger.entries.filter(
    ({ index, role, range, path }) =>
      role === 'uncertain' && read.has(index) && width(range) > 0 && !movable.some((one) => one === path),
  );
  const edits = wide.map(({ path, range }) => ({ path, value: middle(range) }));
  if (wide.length > 0 && isFoundOn(groundOf(withEdits(ground.document, edits), before)))
    return { why: 'tooCoarse', paths: wide.map(({ path }) => path) };
  const findings = findingsOf(ground, before, true).filter(({ status }) => status !== 'pass');
  return { why: 'noPlace', findings };
}
