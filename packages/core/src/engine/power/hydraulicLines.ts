import type { Bound, Value } from '../../records/index.ts';
import type { CheckId, Line, Need, Reason } from '../findings/index.ts';
import type { Joint } from '../joint/index.ts';

/**
 * The checks of what the implement takes of the tractor’s hydraulics: how many remotes, and the flow and the pressure of one.
 * They compare two figures and no more, so they are settled as they are read.
 */
export function hydraulicLines(joint: Joint): Line<Reason>[] {
  return [
    remotesLine(joint),
    figureLine(joint, 'limit.flow', 'flowWanted', 'remoteFlow'),
    figureLine(joint, 'limit.pressure', 'pressureWanted', 'remotePressure'),
  ];
}

const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });
const settled = (id: CheckId, status: 'pass' | 'fail'): Line<Reason> => ({ id, kind: 'settled', status, reason: null });

function remotesLine({ setup }: Joint): Line<Reason> {
  const id = 'limit.remotes';
  const [taken, there] = [setup.implement.remotes, setup.tractor.remotes];
  if (taken === undefined) return notChecked(id, 'remotesTaken');
  if (taken === 0) return { id, kind: 'notNeeded', reason: 'noRemotes' };
  if (there === undefined) return notChecked(id, 'remotes');
  return settled(id, there >= taken ? 'pass' : 'fail');
}

/** What one remote gives against what the implement wants of it; where both could be, the looser figure is asked for. */
function figureLine(
  { setup, ledger }: Joint,
  id: CheckId,
  wantedKey: 'flowWanted' | 'pressureWanted',
  givenKey: 'remoteFlow' | 'remotePressure',
): Line<Reason> {
  const { remotes } = setup.implement;
  if (remotes === 0) return { id, kind: 'notNeeded', reason: 'noRemotes' };
  const [wantedPath, givenPath] = [`implement.${wantedKey}`, `tractor.${givenKey}`];
  if (!ledger.given(wantedPath)) return notChecked(id, remotes === undefined ? 'remotesTaken' : wantedKey);
  if (!ledger.given(givenPath)) return notChecked(id, givenKey);
  const wanted = rangeOf(ledger.value(wantedPath));
  const given = rangeOf(ledger.value(givenPath));
  if (given.low >= wanted.high) return settled(id, 'pass');
  if (given.high < wanted.low) return settled(id, 'fail');
  const isLooser = given.high - given.low > wanted.high - wanted.low;
  return { id, kind: 'ask', ask: isLooser ? givenPath : wantedPath };
}

/** The range of a figure that nobody can set; everything where it is not known. */
export function rangeOf(value: Value | undefined): Bound {
  return value !== undefined && 'bound' in value ? value.bound : { low: -Infinity, high: Infinity };
}
