/** How an implement is carried; which coupler kinds each style rules out stands in engine/joint/mounting. */
export const mountingStyles = [
  'threePoint',
  'boomOnTopLinkBracket',
  'subframe',
  'swingingDrive',
  'floatingTopLink',
  'twoPointsAndWheels',
  'armMower',
] as const;
export const couplerKinds = ['uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds'] as const;
export const pinFixings = ['bolted', 'welded', 'reversible'] as const;
export const alterations = ['allowed', 'rented', 'warranty'] as const;
export const outlineParts = ['plate', 'brace', 'gearbox', 'hose', 'guard', 'hook', 'post', 'lever', 'body'] as const;
/** Parts of a tractor that what it carries can strike. */
export const tractorParts = ['tyre', 'fender', 'cab', 'rollBar', 'drawbar', 'body'] as const;
/** How much of a lift rating is counted on; sources in docs/method/lift.md. */
export const liftAllowances = ['tenPercentOff', 'asRated'] as const;

/** Joints of a drive shaft: one cross, or a wide-angle joint of two. */
export const jointKinds = ['single', 'wideAngle'] as const;
/** What limits the torque of a drive shaft. */
export const limiters = ['none', 'shearBolt', 'slipClutch', 'overrunning'] as const;
/** Which way a shaft turns, seen from behind the tractor. */
export const rotations = ['clockwise', 'counterclockwise'] as const;

/** What is done with the front loader: it is off, on and empty, or on with its load. */
export const loaderStates = ['absent', 'empty', 'loaded'] as const;

/**
 * Kinds of work that some table says something of: their power by width, their draft, or their pace; engine/power/works says
 * which. A land plane stands for a box blade too.
 */
export const works = [
  'brushCutter',
  'finishMower',
  'flailMower',
  'discMower',
  'cutterBarMower',
  'rotaryTiller',
  'sideRake',
  'rotaryRake',
  'tedder',
  'landPlane',
  'plough',
  'subsoiler',
  'chisel',
  'cultivator',
  'discHarrow',
  'springToothHarrow',
  'spikeToothHarrow',
  'tineHarrow',
  'packer',
  'drill',
  'rowPlanter',
  'fertiliserSpreader',
] as const;
/** Wheels that pull: the rear ones, or all of them with the front axle engaged. */
export const drivenWheels = ['rear', 'all'] as const;

/** One of `works`. */
export type Work = (typeof works)[number];
/** One of `drivenWheels`. */
export type DrivenWheels = (typeof drivenWheels)[number];
/** One of `loaderStates`. */
export type LoaderState = (typeof loaderStates)[number];
/** One of `jointKinds`. */
export type JointKind = (typeof jointKinds)[number];
/** One of `limiters`. */
export type Limiter = (typeof limiters)[number];
/** One of `rotations`. */
export type Rotation = (typeof rotations)[number];
/** One of `mountingStyles`. */
export type MountingStyle = (typeof mountingStyles)[number];
/** One of `couplerKinds`. */
export type CouplerKind = (typeof couplerKinds)[number];
/** Whether the machine may be altered: freely, or not because it is rented or under warranty. */
export type Alteration = (typeof alterations)[number];
/** How the lower pins are held. */
export type PinFixing = (typeof pinFixings)[number];
