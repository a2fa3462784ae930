import type { CouplerKind } from '@hitchwright/core/records';
import type { Machine } from '../yard/sampleYard.ts';
import { tractorBalance } from './balanceGroups.ts';
import { implementWork, tractorHydraulics } from './workGroups.ts';
import { couplerDrive, implementDrive, shaftGroups, tractorDrive } from './driveGroups.ts';

/** Whose dimensions are typed: a machine, or the drive shaft between them. */
export type Side = Machine | 'shaft';

/** Fields that are asked together; paths lie below `at`. */
export interface FieldGroup {
  readonly title: string;
  readonly at: string;
  readonly fields: readonly string[];
  /** True where nearly every question needs it: the group stands open. */
  readonly isUsual?: boolean;
  /** True where it is asked only of what a shaft drives. */
  readonly ofDrive?: boolean;
}

/** Full paths of a group's fields; a rule of the whole setup keeps its own. */
export function pathsOf({ at, fields }: FieldGroup): string[] {
  return fields.map((field) => (field.startsWith('rules.') ? field : `${at}.${field}`));
}

const pinFields = ['lowerPinDiameter', 'shoulderSpan', 'standOut', 'shoulderToHole', 'washer', 'plateThickness'];
const upperPinFields = ['mastHeight', 'mastSetback', 'upperPinDiameter', 'clevisGap', 'clevisOuterWidth'];
const bushingFields = [
  'lowerBushingInside',
  'lowerBushingOutside',
  'lowerBushingLength',
  'upperBushingInside',
  'upperBushingOutside',
];

const implementGroups: readonly FieldGroup[] = [
  {
    title: 'What it is',
    at: 'implement',
    fields: ['name', 'category', 'mounting', 'floatSits', 'alteration'],
    isUsual: true,
  },
  {
    title: 'Lower pins',
    at: 'implement',
    fields: [...pinFields, 'pinsPoint', 'pinFixing', 'lowerPinPlates', 'doublePlateGap', 'lowerPinRatedLoad'],
    isUsual: true,
  },
  { title: 'Mast and upper pin', at: 'implement', fields: upperPinFields, isUsual: true },
  {
    title: 'Weight and balance',
    at: 'implement',
    fields: ['mass', 'centreBehind', 'centreAbove', 'centreAside'],
    isUsual: true,
  },
  { title: 'Heights', at: 'implement', fields: ['parkedPinHeight', 'workPinHeight', 'carryHeight'], isUsual: true },
  ...implementDrive,
  ...implementWork,
  {
    title: 'What is carried on it',
    at: 'implement',
    fields: ['carriedMass', 'carriedBehind', 'carriedAbove'],
  },
  { title: 'Ground clearance', at: 'implement', fields: ['lowestBehind', 'lowestBelow', 'clearanceWanted'] },
  { title: 'Bushings on its pins', at: 'implement', fields: bushingFields },
  {
    title: 'Free room and loose balls',
    at: 'implement',
    fields: ['freeRoomLower', 'freeRoomUpper', 'pinBallDiameter', 'pinBallWidth', 'pinBallBore'],
  },
  {
    title: 'Counterpart for a triangle or a bar',
    at: 'implement',
    fields: ['receiver', 'receiverWidth', 'receiverAngle', 'jawOpening', 'jawSpan'],
  },
  {
    title: 'Second row of lower pins',
    at: 'implement.secondRow',
    fields: ['rise', 'behind', ...pinFields, 'pinsPoint', 'pinFixing', 'lowerPinRatedLoad'],
  },
];

const tractorGroups: readonly FieldGroup[] = [
  { title: 'What it is', at: 'tractor', fields: ['name', 'category', 'enginePower', 'wheelsDriven'], isUsual: true },
  {
    title: 'Ends of the lower links',
    at: 'tractor',
    fields: ['lowerBallBore', 'lowerBallWidth', 'ballSpan'],
    isUsual: true,
  },
  {
    title: 'End of the top link',
    at: 'tractor',
    fields: ['upperBallBore', 'upperBallWidth', 'topLinkLength'],
    isUsual: true,
  },
  {
    title: 'Links at the tractor',
    at: 'tractor',
    fields: [
      'lowerLinkLength',
      'lowerLinkPivotSpan',
      'lowerLinkPivotBehindAxle',
      'lowerLinkPivotHeight',
      'topLinkPivotBehindAxle',
      'topLinkPivotHeight',
      'topLinkRadius',
    ],
    isUsual: true,
  },
  {
    title: 'Lift heights',
    at: 'tractor',
    fields: ['ballHeightLow', 'ballHeightHigh', 'liftStopHeight'],
    isUsual: true,
  },
  {
    title: 'Lift ratings',
    at: 'tractor',
    fields: ['liftAtBalls', 'liftAt610', 'rules.liftAllowance'],
    isUsual: true,
  },
  ...tractorBalance,
  ...tractorDrive,
  {
    title: 'Tyres and side play',
    at: 'tractor',
    fields: ['tyreRadius', 'tyreInnerSpan', 'outerWidth', 'lowerLinkThickness', 'sidePlay'],
  },
  {
    title: 'Lift arms and rods',
    at: 'tractor',
    fields: [
      'liftArmPivotBehindAxle',
      'liftArmPivotHeight',
      'liftArmLength',
      'liftArmLowest',
      'liftArmHighest',
      'liftRodLength',
      'liftRodAlong',
      'liftRodAbove',
      'liftRodAside',
    ],
  },
  {
    title: 'Lift cylinder',
    at: 'tractor',
    fields: [
      'cylinderBore',
      'liftCylinders',
      'liftPressure',
      'cylinderPivotBehindAxle',
      'cylinderPivotHeight',
      'cylinderCrank',
      'cylinderCrankAngle',
    ],
  },
  { title: 'How its lift was tested', at: 'tractor', fields: ['liftTestMastHeight', 'liftTestTopLink'] },
  ...tractorHydraulics,
];

const hookFields = [
  'hookSpan',
  'hookWidth',
  'hookSeat',
  'hookBehind',
  'hookRise',
  'seatDepth',
  'roomNeededLower',
  'retainingPin',
];
const topHookFields = [
  'topHookHeight',
  'topHookBehind',
  'topHookThroat',
  'topHookThickness',
  'topHookCheekGap',
  'topHookPlay',
  'roomNeededUpper',
];

/** What each kind of coupler takes hold with. */
const holds: Readonly<Record<CouplerKind, readonly FieldGroup[]>> = {
  uFrame: [
    { title: 'Lower hooks', at: 'coupler', fields: hookFields, isUsual: true },
    { title: 'Top hook', at: 'coupler', fields: topHookFields, isUsual: true },
  ],
  hookEnds: [{ title: 'Hooks', at: 'coupler', fields: hookFields, isUsual: true }],
  clawEnds: [
    {
      title: 'Claws',
      at: 'coupler',
      fields: ['clawSize', 'hookBehind', 'hookRise', 'seatDepth', 'roomNeededLower', 'retainingPin'],
      isUsual: true,
    },
  ],
  triangle: [
    {
      title: 'Triangular frame',
      at: 'coupler',
      fields: ['frameWidth', 'frameAngle', 'hookBehind', 'hookRise'],
      isUsual: true,
    },
  ],
  bar: [
    {
      title: 'Bar',
      at: 'coupler',
      fields: ['barDiameter', 'barLength', 'hookBehind', 'hookRise'],
      isUsual: true,
    },
  ],
};

const couplerLoad: readonly FieldGroup[] = [
  {
    title: 'Weight and rated load',
    at: 'coupler',
    fields: ['mass', 'centreBehind', 'centreAbove', 'ratedLoad'],
    isUsual: true,
  },
  { title: 'Weights hung on it', at: 'coupler', fields: ['hungMass', 'hungBehind', 'hungAbove'] },
];

/** A coupler's own pins toward the tractor. */
const couplerFront: readonly FieldGroup[] = [
  {
    title: 'Its own pins, to the tractor',
    at: 'coupler.front',
    fields: [...pinFields, 'pinsPoint', 'lowerPinRatedLoad', ...upperPinFields],
  },
  { title: 'Bushings on its own pins', at: 'coupler.front', fields: bushingFields },
];

/** The groups of fields of a machine or of the drive shaft, in the order in which people are asked. */
export function groupsOf(side: Side, kind: CouplerKind): readonly FieldGroup[] {
  if (side === 'shaft') return shaftGroups;
  if (side === 'implement') return implementGroups;
  if (side === 'tractor') return tractorGroups;
  return [
    { title: 'What it is', at: 'coupler', fields: ['name', 'kind', 'category'], isUsual: true },
    ...holds[kind],
    ...couplerDrive(kind),
    ...couplerLoad,
    ...(kind === 'clawEnds' ? [] : couplerFront),
  ];
}
