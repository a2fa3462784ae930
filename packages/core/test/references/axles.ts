/**
 * The axle loads as implement and loader manuals print them, written out again: nothing here knows of the engine. Masses in
 * kg, lengths in m, letters as they are printed.
 */

/** A tractor with an implement in front and one behind. */
export interface Printed {
  /** Front and rear axle load of the tractor alone. */
  readonly tv: number;
  readonly th: number;
  /** Masses in front and behind. */
  readonly gv: number;
  readonly gh: number;
  /** Front mass ahead of the front axle, wheelbase, rear mass behind the rear axle. */
  readonly a: number;
  readonly b: number;
  readonly cd: number;
}

/** Actual front axle load: [G_V·(a + b) + T_V·b − G_H·(c + d)]/b. @source manual-ballast-formula */
export function actualFront({ tv, gv, gh, a, b, cd }: Printed): number {
  return (gv * (a + b) + tv * b - gh * cd) / b;
}

/** The rest of the total. @source manual-ballast-formula */
export function actualRear(one: Printed): number {
  return one.gv + one.tv + one.th + one.gh - actualFront(one);
}

/** Least front ballast: [G_H·(c + d) − T_V·b + 0.2·T_L·b]/(a + b). @source manual-ballast-formula */
export function leastFront({ tv, th, gh, a, b, cd }: Printed): number {
  return (gh * cd - tv * b + 0.2 * (tv + th) * b) / (a + b);
}

/** Least rear ballast: [G_V·a − T_H·b + 0.45·T_L·b]/(b + c + d). @source manual-ballast-formula */
export function leastRear({ tv, th, gv, a, b, cd }: Printed): number {
  return (gv * a - th * b + 0.45 * (tv + th) * b) / (b + cd);
}

/** A loader tractor: payload, how far ahead of the front axle, wheelbase, rear axle to the pins, rear and front axle load. */
export interface PrintedLoader {
  readonly n: number;
  readonly bl: number;
  readonly i2: number;
  readonly i1: number;
  readonly g: number;
  readonly g1: number;
}

/** Least counterweight: [5·N·b_L + I2·(P + N − 5·G)]/[5·(I1 + I2) − I2]. @source en-12525 */
export function leastCounterweight({ n, bl, i2, i1, g, g1 }: PrintedLoader): number {
  return (5 * n * bl + i2 * (g + g1 + n - 5 * g)) / (5 * (i1 + i2) - i2);
}
