import type { CautionId } from '../engine/assess/index.ts';

/** Cautions in our own words; what each rests on stands in docs/sources.md under “Cautions”. */
export const cautionWords: Readonly<Record<CautionId, string>> = {
  steeringNeedsWeight:
    'Axle loads are worked out on level ground, standing still. On slopes, in turns and over bumps less stays on the front wheels: carry low, drive slowly.',
  frontMayLift:
    'With too little on the front axle it steers and brakes badly and can rear up faster than anyone can react. Liquid in the rear tyres does not help: it puts nothing on the front axle.',
  loaderCounterweight:
    'A loader needs its counterweight behind: without it the rear wheels, and with them the brakes, lose the ground. Carry the load low; nobody under it or in it.',
  rollBarUp: 'Roll bar up, seat belt on; no belt on a tractor without a roll bar. Nobody rides along.',
  weighIt: 'Papers often understate a tractor. Weigh it, and weigh both axles again with the implement raised.',
  shaftEntangles:
    'A turning shaft catches clothing and pulls in before anyone can let go. Every guard and shield in place, nobody near it, drive off and engine stopped before you get down.',
  noAdaptors:
    'Never join different splines or speeds with an adaptor: at the wrong speed parts fly off, and what hangs on the stub overloads it and stands out of its shield.',
  stubExtender:
    'An extender hangs on the stub, overloads its bearing and stands out of the master shield. Makers of shafts and implements forbid it; take a longer shaft.',
  raisedLoad:
    'Never go under or reach into what hangs on the lift: lower it to the ground, or block it, before you work on it.',
  ratingCompares:
    'A lift rating compares tractors under test; its own standard says it is no permission to carry that mass. Weigh, lift slowly, and keep the steering loaded.',
  mayUnhook: 'What is pushed up from below may lift its pins out of open hooks. Latch them, and keep off rough ground.',
  standClear: 'Engine off, key out, implement blocked before anyone reaches or stands between it and the tractor.',
  notRetained: 'A pin that can’t take its retaining pin can work out of its ball or hook. Do not lift it so.',
  pinRoundSmall:
    'Never drill a ball out or turn a pin down to make them fit: bushings go up in size, pins never go down.',
  boltedPlate:
    'Parts bolted or welded to the hitch carry the whole machine. We give no opinion on their strength; have it done by a qualified person, and mind the warranty.',
  cutPart: 'What has been cut, drilled or welded can’t be returned.',
  shaftMovesBack: 'A coupler moves the implement back. Measure the drive shaft again before it turns.',
  firstLift:
    'After the first hook-up raise and lower slowly through the whole travel, drive off, and look for contact.',
  manualPrevails: 'The operator’s manuals, the makers, local rules and licensed people come before this answer.',
};
