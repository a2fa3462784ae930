import type { CautionId } from '../engine/assess/index.ts';

/** Cautions in our own words; what each rests on stands in docs/sources.md under “Cautions”. */
export const cautionWords: Readonly<Record<CautionId, string>> = {
  hookUpOnly: 'This answers for the hook-up only. Whether it runs, lifts and stays upright is not checked yet.',
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
