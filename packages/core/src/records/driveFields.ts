import { length, sized, type Rules } from './rule.ts';

/** Reference points of a reading at a splined shaft: its groove, its end, or the cross centre of the joint on it. */
const splinePoints = ['groove', 'shaftEnd', 'crossCentre'] as const;

/** Reference points of the reach of a yoke. */
const reachPoints = ['shaftEnd', 'groove'] as const;

/** Reference points of the closed length of a drive shaft. */
const closedPoints = ['crossCentre', 'pinToPin', 'yokeEnds'] as const;

/** The tractor's power and its PTO stub [mm, kW]; heights are above the ground, distances behind the rear axle centre. */
export const tractorDriveFields = {
  enginePower: sized('power', 1, 500, 'engine power', 'From the plate or the manual.'),
  ptoPower: sized('power', 1, 500, 'PTO power', 'From the plate or the manual: what reaches the PTO, not the engine.'),
  stubBehindAxle: length(
    -500,
    1500,
    'PTO stub behind the axle',
    'Plumb line from the rear axle centre; distance back to the groove round the PTO stub, or to its end.',
    splinePoints,
  ),
  stubHeight: length(100, 1500, 'PTO stub height', 'Ground to the centre of the PTO stub.'),
  stubAside: length(
    -400,
    400,
    'PTO stub to the right',
    'How far the PTO stub stands to the right of the middle; left is negative.',
  ),
  topLinkRadius: length(5, 80, 'half of the top link’s thickness', 'Half of the top link over its thickest part.'),
  stubGrooveToEnd: length(10, 80, 'groove to end of the PTO stub', 'Middle of the groove to the end of the PTO stub.'),
} as const satisfies Rules;

/** The input shaft of a driven implement [mm, deg, kW]; from the lower pins, implement standing level. */
export const implementDriveFields = {
  inputBehind: length(
    -800,
    3000,
    'input shaft behind the pins',
    'Distance from the lower pins back to the groove round the input shaft, or to its end; forward is negative.',
    splinePoints,
  ),
  inputAbove: length(
    -800,
    1500,
    'input shaft above the pins',
    'Height of the centre of the input shaft above the lower pins, implement standing level.',
  ),
  inputAside: length(
    -1500,
    1500,
    'input shaft to the right',
    'How far the input shaft stands to the right of the middle between the pins; left is negative.',
  ),
  inputAngle: sized(
    'angle',
    -45,
    45,
    'tilt of the input shaft',
    'Angle of the input shaft with the implement standing level; positive where its rear end is higher.',
  ),
  inputYaw: sized(
    'angle',
    -45,
    45,
    'turn of the input shaft to the right',
    'Angle from above by which the input shaft points to the right as it goes forward; left is negative.',
  ),
  inputGrooveToEnd: length(
    10,
    80,
    'groove to end of the input shaft',
    'Middle of the groove to the end of the input shaft.',
  ),
  shiftLeft: length(0, 2000, 'shift to the left', 'How far the implement can be shifted to the left in use.'),
  shiftRight: length(0, 2000, 'shift to the right', 'How far the implement can be shifted to the right in use.'),
  powerWanted: sized('power', 1, 400, 'PTO power wanted', 'From the plate or manual of the implement.'),
} as const satisfies Rules;

/** The opening of a coupler that a drive shaft passes [mm]; from the link ends, coupler standing upright. */
export const couplerDriveFields = {
  windowWidth: length(50, 1400, 'width of the opening', 'Clear width between the posts of the coupler.'),
  windowTop: length(
    -300,
    1200,
    'top of the opening above the link ends',
    'Height of the lowest bar or brace above the opening, over the lower-link ball centres.',
  ),
  windowBottom: length(
    -800,
    800,
    'bottom of the opening above the link ends',
    'Height of whatever crosses below the opening, over the lower-link ball centres; below them is negative.',
  ),
  windowBehind: length(
    -200,
    600,
    'opening behind the link ends',
    'Distance from the lower-link ball centres back to the frame round the opening.',
  ),
} as const satisfies Rules;

/** A drive shaft [mm, deg, N·m]. */
export const shaftFields = {
  closedLength: length(
    200,
    2500,
    'closed length',
    'Push the shaft right together; cross centre of one joint to cross centre of the other.',
    closedPoints,
  ),
  closedOverlap: length(
    50,
    2000,
    'overlap when closed',
    'How far the two profile tubes reach into each other with the shaft right together.',
  ),
  profileLength: length(
    50,
    2000,
    'free length of the profile',
    'Length of the profile tube that can slide, from its end to the yoke or the guard bearing.',
  ),
  yokeReachFront: length(
    15,
    200,
    'reach of the yoke at the tractor',
    'From the end of the PTO stub, yoke latched on it, to the cross centre; or from its groove.',
    reachPoints,
  ),
  yokeReachRear: length(
    15,
    200,
    'reach of the yoke at the implement',
    'From the end of the input shaft, yoke latched on it, to the cross centre; or from its groove.',
    reachPoints,
  ),
  yokeOverCross: length(
    20,
    200,
    'yoke beyond the cross',
    'From the cross centre to the outer end of the yoke that slides on the splines.',
  ),
  bindAngle: sized(
    'angle',
    15,
    90,
    'angle at which a joint binds',
    'Bend one joint by hand, shaft off the tractor, until its yokes touch.',
  ),
  guardTubeDiameter: length(30, 200, 'guard tube diameter', 'Over the plastic tube of the guard.'),
  guardConeDiameter: length(50, 350, 'guard cone diameter', 'Over the widest part of the cone of the guard.'),
  guardConeLength: length(30, 400, 'guard cone length', 'From the cross centre to where the cone ends in the tube.'),
  shieldOverlapFront: length(
    0,
    300,
    'shield overlap at the tractor',
    'How far the master shield of the tractor reaches over the guard of the shaft.',
  ),
  shieldOverlapRear: length(
    0,
    300,
    'shield overlap at the implement',
    'How far the shield of the implement reaches over the guard of the shaft.',
  ),
  limiterTorque: sized(
    'torque',
    20,
    10000,
    'torque of the limiter',
    'Torque at which the slip clutch slips or the bolt shears, from the manual.',
  ),
} as const satisfies Rules;
