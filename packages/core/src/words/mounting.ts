import type { RuledOut } from '../engine/findings/index.ts';
import type { MountingStyle } from '../records/index.ts';

/** Why each way of mounting rules a coupler out: the mechanics, in one sentence. */
export const mountingReasons: Readonly<Record<RuledOut, string>> = {
  boomOnTopLinkBracket:
    'Its boom is pinned where the top link belongs, so there is no upper pin to hold and nothing left to hold a coupler upright.',
  subframe:
    'It rides on a frame bolted to the tractor with the lower links off, so it does not hang on the three points at all.',
  swingingDrive:
    'It moves sideways under drive, so its frame and drive shaft sweep through the space that a coupler frame fills.',
  floatingTopLink: 'Its upper pin must move fore and aft to follow the ground, and a top hook would hold it fast.',
  twoPointsAndWheels:
    'It hangs on two points and runs on its own wheels, so there is no fixed upper pin for the top hook.',
  armMower:
    'Its heavy side arm is braced to the tractor without play; a coupler adds play and moves the braces out of reach.',
};

/** What a person calls each way of mounting. */
export const mountingNames: Readonly<Record<MountingStyle, string>> = {
  threePoint: 'two lower pins and a fixed upper pin',
  boomOnTopLinkBracket: 'boom on the top-link bracket',
  subframe: 'own subframe under the tractor',
  swingingDrive: 'shifts or swings under drive',
  floatingTopLink: 'floating upper pin',
  twoPointsAndWheels: 'two lower pins and its own wheels',
  armMower: 'heavy side arm',
};

/** Why each way of mounting rules a coupler out, for a cell of the yard. */
export const mountingShort: Readonly<Record<RuledOut, string>> = {
  boomOnTopLinkBracket: 'no upper pin: boom on the bracket',
  subframe: 'rides on its own subframe',
  swingingDrive: 'swings under drive',
  floatingTopLink: 'upper pin has to float',
  twoPointsAndWheels: 'no fixed upper pin',
  armMower: 'braced side arm',
};
