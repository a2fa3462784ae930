import { useEffect, useMemo, useState } from 'react';
import type { Machine } from '../yard/sampleYard.ts';
import { picksAt } from './rememberedPicks.ts';

/** The question by ids of the yard’s records. */
export interface YardQuestion {
  readonly tractor: string;
  /** A state that is laid over the tractor. */
  readonly state?: string;
  readonly coupler?: string;
  readonly implement: string;
}

/** A machine’s record of the yard; null for one that is from elsewhere, undefined for none. */
type PickedId = { readonly id: string; readonly state?: string } | null | undefined;
type PickedIds = Readonly<Partial<Record<Machine, PickedId>>>;

interface PickedDesk {
  /** The question as the yard’s records have it; null where anything in it is from elsewhere or was changed by hand. */
  readonly asked: YardQuestion | null;
  pick(machine: Machine, id: PickedId): void;
  /** What stands in the question is no longer what the records say. */
  changedByHand(): void;
}

/** The question that a link of these pages leads to, by its fragment. */
let led: { readonly hash: string; readonly question: YardQuestion } | null = null;

/** Says which of the yard’s records the question behind a link is made of, as it is followed. */
export function leadTo(hash: string, question: YardQuestion | null): void {
  led = question === null ? null : { hash, question };
}

/**
 * Remembers which of the yard’s records a question was made of. A question that was opened whole, other than by a link that says so or at an address of this visit, or had
 * anything changed by hand, is not what the records say, and never becomes so again by another pick: something of it may have stayed.
 *
 * @param isOpened whether the page began with a question
 */
export function usePicked(isOpened: boolean): PickedDesk {
  const [first] = useState(() => {
    const question = led?.hash === location.hash ? led.question : picksAt(location.hash);
    return question === null ? null : idsOf(question);
  });
  const [ids, setIds] = useState<PickedIds>(first ?? {});
  const [isOther, setOther] = useState(isOpened && first === null);
  useEffect(() => leadTo('', null), []);
  const asked = useMemo(() => (isOther ? null : questionOf(ids)), [ids, isOther]);
  return {
    asked,
    pick: (machine, id) => setIds((before) => ({ ...before, [machine]: id })),
    changedByHand: () => setOther(true),
  };
}

function idsOf({ tractor, state, coupler, implement }: YardQuestion): PickedIds {
  return {
    tractor: { id: tractor, ...(state === undefined ? {} : { state }) },
    implement: { id: implement },
    ...(coupler === undefined ? {} : { coupler: { id: coupler } }),
  };
}

function questionOf({ tractor, coupler, implement }: PickedIds): YardQuestion | null {
  if (tractor == null || implement == null || coupler === null) return null;
  return {
    tractor: tractor.id,
    ...(tractor.state === undefined ? {} : { state: tractor.state }),
    implement: implement.id,
    ...(coupler === undefined ? {} : { coupler: coupler.id }),
  };
}
