import type { Part, Setup, Value } from '../../records/index.ts';
import type { BalanceSweep } from '../balance/index.ts';
import { adjusted, taken, writtenRange, type Candidate } from './candidate.ts';

/**
 * What could be done about too little on an axle: weights on the front, as few as will do; the tractor’s own loader, taken
 * along empty; weights on the rear wheels against a loader.
 *
 * @param setup a setup that was read [record]
 * @param sweep the axle loads of it; null where they are not known [record]
 * @returns candidates, the fewest weights first [list]
 */
export function balanceCandidates(setup: Setup, sweep: BalanceSweep | null): Candidate[] {
  const parts = setup.parts ?? [];
  return [
    ...parts.flatMap((part) => frontWeights(setup, part, sweep)),
    ...loader(setup),
    ...wheelWeights(setup, parts),
  ];
}

/** Weights tried beyond what is enough for the steering by itself: other checks may want another setting. */
const beyond = 2;

/** So many of one kind of weight that at least, and so many that certainly, the rule is met; they replace what hangs there. */
function frontWeights({ tractor }: Setup, part: Part, sweep: BalanceSweep | null): Candidate[] {
  const ballast = sweep?.ballast ?? null;
  if (part.kind !== 'frontWeights' || part.mass.kind !== 'stated' || ballast === null) return [];
  const { low, high } = part.mass.bound;
  const held = tractor.frontBracketLimit?.kind === 'stated' ? tractor.frontBracketLimit.bound.low : Infinity;
  const most = Math.min(part.count, Math.floor(held / high));
  const first = Math.max(1, Math.ceil(ballast.least / high));
  const last = Math.min(most, Math.ceil(ballast.enough / low) + beyond);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i): Candidate => {
    const count = first + i;
    const edits = [{ path: 'tractor.frontWeightMass', value: writtenRange(count * low, count * high) }];
    return { ...taken(part), kind: 'frontWeights', on: 'tractor', count, edits };
  });
}

/** A loader that is there but off puts its own mass on the front axle. */
function loader({ tractor }: Setup): Candidate[] {
  const isOff = (tractor.loader ?? 'absent') === 'absent' && tractor.weighedWithLoader !== true;
  if (!isOff || tractor.loaderMass === undefined) return [];
  return [{ ...adjusted, kind: 'loaderOn', on: 'tractor', edits: [{ path: 'tractor.loader', value: 'empty' }] }];
}

function wheelWeights({ tractor }: Setup, parts: readonly Part[]): Candidate[] {
  return parts.flatMap((part): Candidate[] => {
    if (part.kind !== 'wheelWeights' || part.mass.kind !== 'stated') return [];
    const there = boundOf(tractor.wheelWeightMass);
    const { low, high } = part.mass.bound;
    const value = writtenRange(there.low + low, there.high + high);
    return [{ ...taken(part), on: 'tractor', edits: [{ path: 'tractor.wheelWeightMass', value }] }];
  });
}

function boundOf(value: Value | undefined): { readonly low: number; readonly high: number } {
  return value !== undefined && 'bound' in value ? value.bound : { low: 0, high: 0 };
}
