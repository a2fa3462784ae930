import { printBoth, printQuantity, type Rounding, type UnitSystem } from '../../units/index.ts';

/** A pitch smaller than this is level [deg]. */
const level = 0.05;

/** A height in both units, rounded as it is everywhere: the same height is never told in two figures. */
export function heightText(mm: number, system: UnitSystem): string {
  return printBoth(mm, 'length', { system });
}

/** The same in the chosen unit, and as a bare number in the other. */
export function shortText(mm: number, system: UnitSystem): { readonly text: string; readonly second: string } {
  const printed = (one: UnitSystem): string => printQuantity(mm, 'length', { system: one });
  return { text: printed(system), second: printed(system === 'us' ? 'metric' : 'us').replace(/ (in|mm)$/, '') };
}

/** The size of a pitch, to a tenth of a degree. */
export function pitchText(degrees: number): string {
  return printQuantity(Math.abs(degrees), 'angle', { system: 'us' });
}

/** Which way an implement leans; its nose is its front. */
export function leanWord(degrees: number): string {
  if (Math.abs(degrees) < level) return 'level';
  return degrees > 0 ? 'nose down' : 'nose up';
}

/** A pitch in words to a whole degree, as it is spoken. */
export function pitchWords(degrees: number): string {
  const whole = Math.round(Math.abs(degrees));
  return whole === 0 ? 'level' : `${whole}° ${leanWord(degrees)}`;
}

/** A mass in both units. */
export function massText(kg: number, system: UnitSystem, round: Rounding): string {
  return printBoth(kg, 'mass', { system, round });
}

/** What is to spare or short, in the chosen unit only: rounded so that it never looks better than it is. */
export function spareText(kg: number, system: UnitSystem): string {
  return printQuantity(kg, 'mass', { system, round: 'down' }).replace('−', '');
}
