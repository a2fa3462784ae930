import type { Interval } from '../geometry/index.ts';

/** What makes a reading doubtful; `meant` is what it may have been meant for [canonical unit]. */
export type Doubt =
  | { readonly kind: 'decimal' | 'unit' | DoubtOfPlace; readonly meant: number }
  | { readonly kind: 'outside'; readonly expected: Interval }
  | { readonly kind: 'bushing' | 'worn' | 'coated' | DoubtTogether };

/** It was perhaps read between other points than asked for. */
export type DoubtOfPlace = 'tips' | 'centres' | 'insidePlates' | 'outsidePlates';

/** It doesn’t go with another figure of the machine. */
type DoubtTogether = 'pastHole' | 'drawnOut' | 'weighedLoaded';
