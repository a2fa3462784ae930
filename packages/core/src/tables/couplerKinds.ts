import type { Category } from './category.ts';
import type { SourceId } from './sources.ts';

/** The kinds of quick coupler told apart. */
export const couplerKinds = ['uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds'] as const;

/** One kind of quick coupler. */
export type CouplerKind = (typeof couplerKinds)[number];

/** What a kind of coupler is and what it takes hold of. */
export interface CouplerKindFacts {
  /** the part of the standard that describes it, with its edition; null where none does */
  readonly standard: { readonly source: SourceId; readonly edition: string } | null;
  /** categories the standard's scope names; null where the scope was not seen */
  readonly categories: readonly Category[] | null;
  /** a frame stays on the tractor between links and implement */
  readonly frame: boolean;
  /** what the implement brings to the lower joints */
  readonly lowerJoint: 'implementPins' | 'ballsOnPins' | 'triangleOnImplement' | 'barOnImplement';
  /** the coupler's own height decides which mast height fits */
  readonly fixesMastHeight: boolean;
  /** the coupler's own width decides which shoulder span fits; otherwise the links swing to it */
  readonly fixesSpan: boolean;
  /** what moves rearward: the hook-up points with the frame, or the ends of longer links */
  readonly setsBack: 'frame' | 'links' | 'nothing';
  /** status of the descriptive fields above */
  readonly status: 'own';
  readonly meaning: string;
}

const uFrameCategories: readonly Category[] = ['1', '2N', '2', '3N', '3', '4N', '4'];

const kinds: Readonly<Record<CouplerKind, CouplerKindFacts>> = {
  uFrame: {
    standard: { source: 'iso-11001-1', edition: 'ISO 11001-1:2016' },
    categories: uFrameCategories,
    frame: true,
    lowerJoint: 'implementPins',
    fixesMastHeight: true,
    fixesSpan: true,
    setsBack: 'frame',
    status: 'own',
    meaning: 'rigid frame with an open upper hook and two latched lower seats for the implement’s own pins',
  },
  triangle: {
    standard: { source: 'iso-11001-2', edition: 'ISO 11001-2:1993' },
    categories: null,
    frame: true,
    lowerJoint: 'triangleOnImplement',
    fixesMastHeight: false,
    fixesSpan: false,
    setsBack: 'frame',
    status: 'own',
    meaning: 'A-shaped frame that slides up into a matching pocket fixed to the implement',
  },
  clawEnds: {
    standard: { source: 'iso-11001-3', edition: 'ISO 11001-3:2009' },
    categories: null,
    frame: false,
    lowerJoint: 'ballsOnPins',
    fixesMastHeight: false,
    fixesSpan: false,
    setsBack: 'nothing',
    status: 'own',
    meaning: 'claws built into the lower links that close over loose balls slipped on the implement’s pins',
  },
  bar: {
    standard: { source: 'iso-11001-4', edition: 'ISO 11001-4:1994' },
    categories: null,
    frame: true,
    lowerJoint: 'barOnImplement',
    fixesMastHeight: true,
    fixesSpan: true,
    setsBack: 'frame',
    status: 'own',
    meaning: 'frame that takes a cross bar of the implement instead of two separate pins',
  },
  hookEnds: {
    standard: null,
    categories: null,
    frame: false,
    lowerJoint: 'implementPins',
    fixesMastHeight: false,
    fixesSpan: false,
    setsBack: 'links',
    status: 'own',
    meaning: 'hooks pinned into the tractor’s own link ends, each taking one implement pin by itself',
  },
};

/**
 * What a kind of coupler is: frame or not, what it takes hold of, what it fixes, what it moves back.
 *
 * @param kind coupler kind [name]
 * @returns the facts of the kind [record]
 * @example couplerKindFacts('hookEnds').fixesMastHeight; // false
 * @source iso-11001-1, iso-11001-2, iso-11001-3, iso-11001-4 for the parts and their editions; the rest own
 */
export function couplerKindFacts(kind: CouplerKind): CouplerKindFacts {
  return kinds[kind];
}
