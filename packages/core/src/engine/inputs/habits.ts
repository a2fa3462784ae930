/** A range that stands in where a figure is left out and the trade has a habit: common practice, no source. */
export interface Habit {
  readonly low: number;
  readonly high: number;
  readonly origin: 'habit';
  readonly basis: string;
}

const washer: Habit = { low: 0, high: 3, origin: 'habit', basis: 'at most 3 mm thick, common practice, no source' };
const besideTheEnds: Habit = {
  low: -50,
  high: 50,
  origin: 'habit',
  basis: 'within 50 mm of the link ends, our own wide default',
};
const nearlyAbove: Habit = {
  low: -10,
  high: 25,
  origin: 'habit',
  basis: 'nearly straight above, our own wide default',
};
const sweep: Habit = { low: 75, high: 100, origin: 'habit', basis: 'a block of 75 to 100 mm, from memory and weak' };

const shares: Habit = {
  low: 0,
  high: 1,
  origin: 'habit',
  basis: 'the true lift lies between what the ratings prove and what they suggest',
};
const own = (low: number, high: number, basis: string): Habit => ({ low, high, origin: 'habit', basis });

const grooveToEnd = own(20, 45, 'between 20 and 45 mm by the type of the shaft end, from memory and weak');
const yokeReach = own(
  52,
  75,
  'a yoke’s cross 52 to 75 mm beyond the end of the shaft: a snow-blower manual takes 4½ or 5½ in for both ends',
);

/** Stand-ins by path; a path that is not here has none. Each is listed under what was assumed. */
const habits: Readonly<Record<string, Habit>> = {
  'implement.washer': washer,
  'implement.secondRow.washer': washer,
  'coupler.front.washer': washer,
  'coupler.hookRise': besideTheEnds,
  'coupler.topHookBehind': nearlyAbove,
  'coupler.front.mastSetback': nearlyAbove,
  'implement.secondRow.behind': nearlyAbove,
  'coupler.roomNeededLower': sweep,
  'coupler.roomNeededUpper': sweep,
  'coupler.hookBehind': own(85, 140, 'about 4 1/2 in behind the link ends, common practice, no source; our own width'),
  'coupler.mass': own(10, 120, 'between 10 and 120 kg, our own wide default'),
  'coupler.centreBehind': own(0, 150, 'within 150 mm behind the link ends, our own wide default'),
  'coupler.centreAbove': own(0, 450, 'within 450 mm above the link ends, our own wide default'),
  'coupler.seatDepth': own(15, 45, 'a hook drops 15 to 45 mm below the pin, our own default'),
  'coupler.hungBehind': own(-50, 200, 'near the frame, our own wide default'),
  'coupler.hungAbove': own(-100, 500, 'on the frame, our own wide default'),
  'implement.centreAbove': own(-100, 600, 'between 100 mm below and 600 mm above the pins, our own wide default'),
  'implement.carriedAbove': own(-100, 1000, 'between 100 mm below and 1 m above the pins, our own wide default'),
  'implement.centreAside': own(-50, 50, 'within 50 mm of the middle, our own default'),
  'implement.parkedPinHeight': own(340, 500, 'parked with its pins 340 to 500 mm above the ground, our own default'),
  'implement.carryHeight': own(450, 700, 'carried with the link ends 450 to 700 mm above the ground, our own default'),
  'implement.clearanceWanted': own(100, 250, 'between 100 and 250 mm of clearance, our own default'),
  'tractor.liftTestMastHeight': own(400, 700, 'mast of the test frame by its category, our own width'),
  'tractor.liftEfficiency': own(0.8, 0.95, 'a lift cylinder passes on 80 to 95 % of its push, our own default'),
  'tractor.liftSupplyShare': shares,
  'tractor.lowerLinkThickness': own(12, 30, 'a lower link is 12 to 30 mm thick, our own default'),
  'tractor.sidePlay': own(5, 25, 'pins and stabilisers leave 5 to 25 mm of side play, our own default'),
  'tractor.topLinkRadius': own(12, 35, 'a top link is 12 to 35 mm about its line, our own default'),
  'tractor.driverAhead': own(200, 700, 'a seat 200 to 700 mm ahead of the rear axle, our own default'),
  'tractor.frontWeightAhead': own(300, 900, 'front weights 300 to 900 mm ahead of the front axle, our own default'),
  'tractor.stubAside': own(-50, 50, 'within 50 mm of the middle, from memory and weak'),
  'tractor.stubGrooveToEnd': grooveToEnd,
  'implement.inputGrooveToEnd': grooveToEnd,
  'implement.inputAside': own(-25, 25, 'within 25 mm of the middle, our own default'),
  'implement.inputAngle': own(-2, 2, 'level within 2° with the implement level, our own default'),
  'coupler.windowBehind': own(0, 120, 'within 120 mm behind the link ends, our own wide default'),
  'shaft.yokeReachFront': yokeReach,
  'shaft.yokeReachRear': yokeReach,
  'shaft.yokeOverCross': own(60, 120, 'a yoke reaches 60 to 120 mm beyond its cross, our own wide default'),
  'shaft.bindAngle': own(37.5, 90, 'joints bind between 37.5° and 90°: sources differ'),
  'shaft.guardConeLength': own(80, 200, 'a guard cone is 80 to 200 mm long, our own wide default'),
};

/** The stand-in for a path, or null where it must be asked. */
export function habit(path: string): Habit | null {
  return habits[path] ?? null;
}
