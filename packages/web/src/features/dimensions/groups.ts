import type { CouplerKind } from '@hitchwright/core/records';
import type { Machine } from '../yard/sampleYard.ts';

/** Fields that are asked together; paths lie below `at`. */
export interface FieldGroup {
  readonly title: string;
  readonly at: string;
  readonly fields: readonly string[];
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
  { title: 'What it is', at: 'implement', fields: ['name', 'category', 'mounting', 'floatSits', 'alteration'] },
  {
    title: 'Lower pins',
    at: 'implement',
    fields: [...pinFields, 'pinsPoint', 'pinFixing', 'lowerPinPlates', 'doublePlateGap'],
  },
  { title: 'Mast and upper pin', at: 'implement', fields: upperPinFields },
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
    fields: ['rise', 'behind', ...pinFields, 'pinsPoint', 'pinFixing'],
  },
];

const tractorGroups: readonly FieldGroup[] = [
  { title: 'What it is', at: 'tractor', fields: ['name', 'category'] },
  { title: 'Ends of the lower links', at: 'tractor', fields: ['lowerBallBore', 'lowerBallWidth', 'ballSpan'] },
  { title: 'End of the top link', at: 'tractor', fields: ['upperBallBore', 'upperBallWidth', 'topLinkLength'] },
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
    ],
  },
];

const hookFields = ['hookSpan', 'hookWidth', 'hookSeat', 'hookBehind', 'hookRise', 'roomNeededLower', 'retainingPin'];
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
    { title: 'Lower hooks', at: 'coupler', fields: hookFields },
    { title: 'Top hook', at: 'coupler', fields: topHookFields },
  ],
  hookEnds: [{ title: 'Hooks', at: 'coupler', fields: hookFields }],
  clawEnds: [
    {
      title: 'Claws',
      at: 'coupler',
      fields: ['clawSize', 'hookBehind', 'hookRise', 'roomNeededLower', 'retainingPin'],
    },
  ],
  triangle: [
    { title: 'Triangular frame', at: 'coupler', fields: ['frameWidth', 'frameAngle', 'hookBehind', 'hookRise'] },
  ],
  bar: [{ title: 'Bar', at: 'coupler', fields: ['barDiameter', 'barLength', 'hookBehind', 'hookRise'] }],
};

/** The groups of a machine's fields, in the order in which people are asked. */
export function groupsOf(machine: Machine, kind: CouplerKind): readonly FieldGroup[] {
  if (machine === 'implement') return implementGroups;
  if (machine === 'tractor') return tractorGroups;
  const front = {
    title: 'Its own pins, to the tractor',
    at: 'coupler.front',
    fields: [...pinFields, 'pinsPoint', ...upperPinFields],
  };
  const bushings = { title: 'Bushings on its own pins', at: 'coupler.front', fields: bushingFields };
  const isPinned = kind !== 'clawEnds';
  return [
    { title: 'What it is', at: 'coupler', fields: ['name', 'kind', 'category'] },
    ...holds[kind],
    ...(isPinned ? [front, bushings] : []),
  ];
}
