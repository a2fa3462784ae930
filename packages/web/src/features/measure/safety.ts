/** What has to be safe before anybody reaches for the tape. Common practice; the operator’s manuals come first. */
export const safetyRules: readonly string[] = [
  'Engine off, key out, parking brake on.',
  'Implement down on the ground, or on blocks that carry it. The hydraulics hold nothing up for a hand.',
  'Nobody between tractor and implement while the engine runs, and nobody under anything raised.',
  'PTO off and standing still. Guards stay on.',
];

/** What else spoils a reading. */
export const readinessChecks: readonly string[] = [
  'Tyres at their pressure.',
  'Both lift arms at the same height; stabilisers as they are used.',
  'Bushings pulled off the pins; pins wiped clean.',
];
