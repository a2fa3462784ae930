import type { CautionId } from '../engine/assess/index.ts';

/** Cautions in our own words; what each rests on stands in docs/sources.md under “Cautions”. */
export const cautionWords: Readonly<Record<CautionId, string>> = {
  hookUpAndLiftOnly:
    'This answers for hook-up and lift. Whether the drive runs and the tractor stays upright is not checked yet.',
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
