import type { Advice } from '@hitchwright/core/advice';
import type { Answer } from '@hitchwright/core/assess';
import type { Format } from '@hitchwright/core/drawings';
import type { CheckId } from '@hitchwright/core/findings';
import type { InputError, Setup, SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { openAsker, type Asker } from '../../app/asker.ts';

/** One setup to be answered. */
export interface Request {
  readonly document: SetupDocument;
  /** Other couplers at hand. */
  readonly couplers: readonly SetupDocument[];
  /** With measurements, thresholds, other ways to hook up and drawings lettered in this system; null for the bare answer. */
  readonly full: UnitSystem | null;
}

/** One picture of an answer: SVG whose names are escaped, and the same in words. */
export interface Picture {
  readonly svg: string;
  readonly words: string;
}

/** The pictures of an answer for every width, and the numbers of its notes on them. */
export interface Drawings {
  readonly pictures: Readonly<Record<Format, Picture>>;
  /** Three positions of the lift, for paper; null where the lift is not known. */
  readonly strip: Picture | null;
  /** The drive shaft by itself, where to measure and what to cut; null where nothing is driven or its ends are not placed. */
  readonly shaft: Readonly<Record<Format, Picture>> | null;
  /** The same beside the cure that cuts it; null where none does. */
  readonly cut: Readonly<Record<Format, Picture>> | null;
  /** The axle loads where the front axle has least to spare; null where they are not known. */
  readonly axles: Readonly<Record<Format, Picture>> | null;
  /** Slopes at which it would tip at rest; null where a height or width is not known. */
  readonly slopes: Readonly<Record<Format, Picture>> | null;
  readonly balloons: ReadonlyMap<CheckId, number>;
}

export type Reply =
  | {
      readonly kind: 'answer';
      /** The setup as it was asked. */
      readonly document: SetupDocument;
      readonly answer: Answer;
      readonly setup: Setup;
      readonly drawings: Drawings | null;
      /** What to measure next, where the verdict waits for it. */
      readonly advice: Advice | null;
    }
  | { readonly kind: 'errors'; readonly errors: readonly InputError[] }
  | { readonly kind: 'fault'; readonly message: string };

/** A worker that answers setups, one at a time. */
export type Assessor = Asker<Request, Reply>;

/** Opens a worker; it answers in the order in which it is asked. */
export function openAssessor(): Assessor {
  const worker = new Worker(new URL('./assess.worker.ts', import.meta.url), { type: 'module' });
  return openAsker(worker, (message): Reply => ({ kind: 'fault', message }));
}
