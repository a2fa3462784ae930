import type { Alteration, CouplerKind, Implement, JointKind, Limiter, LoaderState } from '../../../records/index.ts';
import type { MountingStyle, Part, PinFixing, Rotation, Tractor } from '../../../records/index.ts';

type Words<Choice extends string> = Readonly<Record<Choice, readonly string[]>>;

/** Trade words for each kind of coupler. */
export const couplerKindWords: Words<CouplerKind> = {
  uFrame: [
    'U-frame',
    'rigid',
    'frame',
    'quick hitch',
    'quick coupler',
    'U frame coupler',
    'rigid quick hitch',
    'hook frame',
  ],
  triangle: ['triangle', 'triangle coupler', 'triangular', 'A-frame', 'A-frame coupler', 'triangle quick hitch'],
  clawEnds: ['claw ends', 'claws', 'claw', 'claw coupler', 'hook lower links', 'quick latch lower links'],
  bar: ['bar', 'bar coupler', 'cross bar'],
  hookEnds: ['hook ends', 'hook end', 'link end connectors', 'link ends', 'link end'],
};

/** Trade words for each way of mounting. */
export const mountingWords: Words<MountingStyle> = {
  threePoint: [
    'three-point',
    '3-point',
    '3 pt',
    '3pt',
    '3ph',
    'three point hitch',
    '3 point hitch',
    'three point linkage',
    'fixed',
  ],
  boomOnTopLinkBracket: ['boom', 'boom on top link bracket', 'boom type'],
  subframe: ['subframe', 'sub-frame'],
  swingingDrive: ['swinging drive', 'swings under drive', 'side shift under drive'],
  floatingTopLink: [
    'floating top link',
    'floating',
    'floating upper pin',
    'flex link',
    'top strap',
    'floating top hitch',
  ],
  twoPointsAndWheels: ['two points and wheels', 'semi-mounted', 'semi mounted', 'two point'],
  armMower: ['arm mower', 'side arm', 'boom mower', 'heavy side arm'],
};

/** Trade words for each kind of work. */
export const workWords: Words<NonNullable<Implement['work']>> = {
  brushCutter: ['brush cutter', 'rotary cutter', 'brush mower', 'topper', 'slasher', 'rough cutter'],
  finishMower: ['finish mower', 'finishing mower', 'grooming mower', 'lawn mower'],
  flailMower: ['flail mower', 'flail'],
  discMower: ['disc mower', 'disk mower'],
  cutterBarMower: ['cutter bar mower', 'sickle bar mower', 'sickle mower', 'finger bar mower'],
  rotaryTiller: ['rotary tiller', 'tiller', 'rotavator', 'rotary cultivator'],
  sideRake: ['side rake', 'side delivery rake', 'wheel rake'],
  rotaryRake: ['rotary rake'],
  tedder: ['tedder'],
  landPlane: ['land plane', 'box blade', 'box scraper', 'grader box', 'grader', 'grading scraper'],
  plough: ['plough', 'plow', 'mouldboard plough', 'moldboard plow'],
  subsoiler: ['subsoiler', 'ripper', 'sub soiler'],
  chisel: ['chisel plough', 'chisel plow', 'chisel'],
  cultivator: ['cultivator', 'field cultivator'],
  discHarrow: ['disc harrow', 'disk harrow', 'discs', 'disks'],
  springToothHarrow: ['spring-tooth harrow', 'spring tine harrow'],
  spikeToothHarrow: ['spike-tooth harrow', 'spike harrow'],
  tineHarrow: ['tine harrow'],
  packer: ['packer', 'cultipacker', 'roller'],
  drill: ['drill', 'seed drill', 'grain drill'],
  rowPlanter: ['row planter', 'planter'],
  fertiliserSpreader: ['fertiliser spreader', 'fertilizer spreader', 'spreader', 'broadcast spreader'],
};

/** How lower pins are held. */
export const pinFixingWords: Words<PinFixing> = {
  bolted: ['bolted', 'bolt on', 'bolted on', 'bolt-in'],
  welded: ['welded', 'weld on', 'welded on'],
  reversible: ['reversible', 'turnable', 'can be reversed'],
};

/** Whether a machine may be altered. */
export const alterationWords: Words<Alteration> = {
  allowed: ['allowed', 'yes', 'ok'],
  rented: ['rented', 'rental', 'hired', 'hire'],
  warranty: ['warranty', 'under warranty'],
};

/** Which way a shaft turns. */
export const rotationWords: Words<Rotation> = {
  clockwise: ['clockwise', 'cw', 'right', 'right hand'],
  counterclockwise: [
    'counterclockwise',
    'anticlockwise',
    'anti-clockwise',
    'counter-clockwise',
    'ccw',
    'acw',
    'left',
    'left hand',
  ],
};

/** Joints of a drive shaft. */
export const jointWords: Words<JointKind> = {
  single: ['single', 'cross', 'universal joint', 'u-joint', 'uj', 'single cross'],
  wideAngle: ['wide-angle', 'wide angle joint', 'constant velocity', 'cv', 'cv joint', '80 degree', '80°'],
};

/** What limits the torque of a drive shaft. */
export const limiterWords: Words<Limiter> = {
  none: ['none', 'no', 'nothing'],
  shearBolt: ['shear bolt', 'shear pin', 'shearbolt'],
  slipClutch: ['slip clutch', 'friction clutch', 'clutch', 'slipclutch'],
  overrunning: ['overrunning', 'overrun', 'overrunning clutch', 'overrun clutch', 'freewheel'],
};

/** What is done with the front loader. */
export const loaderWords: Words<LoaderState> = {
  absent: ['off', 'none', 'no', 'absent', 'no loader'],
  empty: ['on, empty', 'empty', 'on empty', 'fitted empty'],
  loaded: ['on, loaded', 'loaded', 'on loaded', 'with load'],
};

/** Wheels that pull. */
export const wheelsWords: Words<NonNullable<Tractor['wheelsDriven']>> = {
  rear: ['rear', '2wd', 'two wheel drive', '2 wd', 'rear wheels'],
  all: ['all', '4wd', 'mfwd', 'fwa', 'four wheel drive', '4 wd', 'front assist', 'all wheels'],
};

/** Where a float sits. */
export const floatWords: Words<NonNullable<Implement['floatSits']>> = {
  atPin: ['at the pin', 'at pin', 'at the upper pin'],
  behindPin: ['behind the pin', 'behind pin', 'behind the upper pin'],
};

/** What holds each lower pin. */
export const plateWords: Words<NonNullable<Implement['lowerPinPlates']>> = {
  single: ['single', 'one', 'one plate', 'single plate'],
  double: ['double', 'two', 'two plates', 'double plate', 'clevis'],
};

/** The counterpart that an implement carries for a coupler. */
export const receiverWords: Words<NonNullable<Implement['receiver']>> = {
  triangle: ['triangle', 'triangle pocket', 'triangular pocket'],
  jaws: ['jaws', 'jaw'],
  none: ['none', 'no'],
};

/** Whether hooks keep a pin in by themselves. */
export const retainingWords: Readonly<Record<'needed' | 'notNeeded', readonly string[]>> = {
  needed: ['needed', 'yes', 'required'],
  notNeeded: ['not needed', 'no', 'not required'],
};

/** Which way lower pins point. */
export const pointingWords: Readonly<Record<'out' | 'in', readonly string[]>> = {
  out: ['out', 'outward', 'outwards'],
  in: ['in', 'inward', 'inwards'],
};

type PartKind = Part['kind'];

/** Weights. */
export const weightKindWords: Words<Extract<PartKind, 'frontWeights' | 'wheelWeights'>> = {
  frontWeights: [
    'front weights',
    'front weight',
    'suitcase weight',
    'suitcase weights',
    'jerry can weight',
    'wafer',
    'front',
  ],
  wheelWeights: ['wheel weights', 'wheel weight', 'rear wheel weights', 'wheel'],
};

/** Parts on the shelf; drive shafts are records of their own. */
export const partKindWords: Words<Exclude<PartKind, 'frontWeights' | 'wheelWeights' | 'driveShaft'>> = {
  lowerBushings: [
    'lower bushings',
    'lower bushing',
    'lower bush',
    'pair of bushings',
    'lower link bushings',
    'lower sleeves',
  ],
  upperBushing: ['upper bushing', 'top bushing', 'top link bushing', 'upper bush', 'top bush', 'top sleeve'],
  lowerPins: ['lower pins', 'lower pin', 'pair of pins', 'hitch pins', 'lift pins', 'linkage pins'],
  upperPinPlate: ['upper-pin plate', 'top pin plate', 'mast plate', 'mast extension'],
  clevisSpacers: ['clevis spacers', 'clevis spacer', 'spacers', 'spacer'],
  pinBalls: ['pin balls', 'balls', 'claw balls', 'carrying balls'],
  stubExtender: ['stub extender', 'PTO extender', 'spline extender', 'PTO extension'],
};
