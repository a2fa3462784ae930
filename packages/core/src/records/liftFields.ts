import { length, sized, type Rules } from './rule.ts';

/** How high the tractor lifts, with what, and what it is rated for [mm, deg, kg, bar]; heights are above the ground. */
export const tractorLiftFields = {
  ballHeightLow: length(
    0,
    900,
    'lowest ball height',
    'Ground to the centre of a lower-link ball, lift right down and nothing hung on.',
  ),
  ballHeightHigh: length(200, 2000, 'highest ball height', 'Ground to the centre of a lower-link ball, lift right up.'),
  liftStopHeight: length(200, 2000, 'lift stop', 'Ball height at which the lift is set to stop, where a stop is set.'),
  liftArmPivotBehindAxle: length(
    -600,
    1000,
    'lift arm pivot behind the axle',
    'Plumb line from the rear axle centre; distance back to the shaft that the lift arms turn on.',
  ),
  liftArmPivotHeight: length(
    200,
    2000,
    'lift arm pivot height',
    'Ground to the centre of the shaft that the lift arms turn on.',
  ),
  liftArmLength: length(80, 700, 'lift arm length', 'Centre of the shaft to the upper pin of the lift rod.'),
  liftArmLowest: sized(
    'angle',
    -120,
    120,
    'lift arm angle at its lowest',
    'Angle of the lift arm above level rearward, lift right down; below level is negative.',
  ),
  liftArmHighest: sized(
    'angle',
    -120,
    150,
    'lift arm angle at its highest',
    'Angle of the lift arm above level rearward, lift right up.',
  ),
  liftRodLength: length(150, 1200, 'lift rod length', 'Pin centre to pin centre of the lift rod.'),
  liftRodAlong: length(
    100,
    1200,
    'lift rod hole along the lower link',
    'From the front pivot of the lower link along it to the hole of the lift rod in use.',
  ),
  liftRodAbove: length(
    -200,
    200,
    'lift rod hole above the lower link',
    'Square up from the line between pivot and ball to the hole of the lift rod.',
  ),
  liftRodAside: length(
    0,
    300,
    'lift rod lean sideways',
    'How far apart the two pins of one lift rod stand when seen from behind.',
  ),
  liftAtBalls: sized(
    'mass',
    50,
    30000,
    'rated lift at the ball ends',
    'From the manual: lift at the hitch points, as the mass it lifts.',
  ),
  liftAt610: sized(
    'mass',
    30,
    30000,
    'rated lift 610 mm (24 in) behind the ball ends',
    'From the manual: lift 610 mm (24 in) behind the hitch points, as the mass it lifts.',
  ),
  liftTestMastHeight: length(
    200,
    1200,
    'mast height of the lift test',
    'From the test report, where there is one: mast height of the test frame.',
  ),
  liftTestTopLink: length(
    200,
    1500,
    'top link of the lift test',
    'From the test report, where there is one: length of the top link in the test.',
  ),
  cylinderBore: sized('length', 20, 250, 'lift cylinder bore', 'From the manual: inside diameter of a lift cylinder.'),
  liftPressure: sized(
    'pressure',
    30,
    400,
    'lift pressure',
    'From the manual: pressure at which the relief valve opens.',
  ),
  cylinderPivotBehindAxle: length(
    -800,
    1000,
    'lift cylinder pivot behind the axle',
    'Plumb line from the rear axle centre; distance back to the fixed end of the lift cylinder.',
  ),
  cylinderPivotHeight: length(100, 2000, 'lift cylinder pivot height', 'Ground to the fixed end of the lift cylinder.'),
  cylinderCrank: length(
    30,
    600,
    'lift cylinder crank',
    'Centre of the lift-arm shaft to the pin where the cylinder pushes.',
  ),
  cylinderCrankAngle: sized(
    'angle',
    -180,
    180,
    'angle from lift arm to crank',
    'How far the crank stands turned from the lift arm, from rearward toward up counting positive.',
  ),
  tyreRadius: length(200, 1200, 'rear tyre radius', 'Half of the height of a rear tyre, or ground to axle centre.'),
  tyreInnerSpan: length(
    300,
    2500,
    'gap between the rear tyres',
    'Inner wall of one rear tyre to the inner wall of the other, behind the axle.',
  ),
  lowerLinkThickness: length(
    5,
    120,
    'lower link thickness',
    'Thickness of the lower link sideways, with what stands out of it.',
  ),
  sidePlay: length(
    0,
    200,
    'side play of the lower links',
    'How far the lower links can be pushed to one side, stabilisers as set, play of the pins included.',
  ),
} as const satisfies Rules;

/** What an implement weighs, where, and the heights it is picked up, worked and carried at [mm, kg]; heights are above the ground. */
export const loadFields = {
  mass: sized('mass', 5, 8000, 'mass', 'On a scale, or from its plate; with oil, chains and what is always on it.'),
  centreBehind: length(
    -500,
    4000,
    'centre of gravity behind the pins',
    'Hang or balance it: distance from the lower pins back to where it balances.',
  ),
  centreAbove: length(
    -800,
    2000,
    'centre of gravity above the pins',
    'Height of the centre of gravity above the lower pins, implement standing level.',
  ),
  centreAside: length(
    -1500,
    1500,
    'centre of gravity to the right',
    'How far the centre of gravity lies to the right of the middle between the pins; left is negative.',
  ),
  carriedMass: sized(
    'mass',
    0,
    8000,
    'mass of what it carries',
    'Bale, seed, spread or soil carried on the implement.',
  ),
  carriedBehind: length(
    -500,
    4000,
    'centre of what it carries, behind the pins',
    'Distance from the lower pins back to the middle of what is carried.',
  ),
  carriedAbove: length(
    -800,
    2500,
    'centre of what it carries, above the pins',
    'Height of the middle of what is carried above the lower pins, implement standing level.',
  ),
  parkedPinHeight: length(
    0,
    1500,
    'parked pin height',
    'Ground to the centre of the lower pins with the implement parked as it will be picked up.',
  ),
  workPinHeight: length(
    -300,
    1800,
    'working pin height',
    'Ground to the centre of the lower pins with the implement standing level at work.',
  ),
  carryHeight: length(
    0,
    2000,
    'carrying height',
    'Height of the lower-link ball ends above the ground at which it is carried or unloaded.',
  ),
  lowestBehind: length(
    -800,
    5000,
    'lowest point behind the pins',
    'Distance from the lower pins back to the part that hangs lowest when it is carried.',
  ),
  lowestBelow: length(
    -1500,
    2500,
    'lowest point below the pins',
    'Height of the lower pins above the part that hangs lowest, implement standing level.',
  ),
  clearanceWanted: length(0, 1500, 'ground clearance wanted', 'Clearance under the lowest part when it is carried.'),
} as const satisfies Rules;

/** What a coupler weighs and holds [mm, kg]. */
export const couplerLoadFields = {
  mass: sized('mass', 1, 1500, 'mass', 'On a scale, or from its plate.'),
  centreBehind: length(
    -200,
    800,
    'centre of gravity behind the link ends',
    'Distance from the lower-link ball centres back to where the coupler balances.',
  ),
  centreAbove: length(
    -300,
    1000,
    'centre of gravity above the link ends',
    'Height of the coupler’s centre of gravity above the lower-link ball centres.',
  ),
  seatDepth: length(
    0,
    150,
    'depth of the lower hooks',
    'How far a hook has to drop below the pin to pass under it: from the tip of the hook down to its seat.',
  ),
  ratedLoad: sized('mass', 50, 8000, 'rated load', 'From the coupler’s plate or manual.'),
  hungMass: sized('mass', 0, 2000, 'mass of weights hung on it', 'All weights that hang on the coupler together.'),
  hungBehind: length(
    -500,
    1000,
    'hung weights behind the link ends',
    'Distance from the lower-link ball centres back to the middle of the hung weights.',
  ),
  hungAbove: length(
    -500,
    1200,
    'hung weights above the link ends',
    'Height of the middle of the hung weights above the lower-link ball centres.',
  ),
} as const satisfies Rules;

/** What one lower pin is rated for [kg]. */
export const lowerPinRatedLoad = sized(
  'mass',
  50,
  10000,
  'rated load of one lower pin',
  'From the maker of the pin; a pin has no rating by its size alone.',
);
