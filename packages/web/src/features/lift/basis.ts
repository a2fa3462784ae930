import type { Answer } from '@hitchwright/core/assess';

/** How the lift of an answer was worked out. */
export type LiftBasis = Answer['liftBasis'];

/** What has to be said of the lift where it can't be drawn; null where the notes say it. */
export const undrawnWords: Readonly<Record<LiftBasis, string | null>> = {
  cylinder: null,
  linkage: null,
  ratings: 'Until then what it lifts is taken from its ratings alone, with everything standing level.',
  none: 'Until then, and until a lift rating is typed, what it can lift is not known.',
};

/** What places the links on the tractor, in the order in which people are asked. */
export const linkFields = [
  'lowerLinkLength',
  'lowerLinkPivotBehindAxle',
  'lowerLinkPivotHeight',
  'topLinkPivotBehindAxle',
  'topLinkPivotHeight',
] as const;
