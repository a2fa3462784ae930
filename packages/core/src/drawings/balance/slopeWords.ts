import { printQuantity, type UnitSystem } from '../../units/index.ts';
import { heightText } from '../side/readings.ts';
import { halfGrade, tangent, type AtLimit, type Tipping } from './slopeModel.ts';

/** An angle to a whole degree, never more than it is. */
export function limitText(degrees: number): string {
  return printQuantity(degrees, 'angle', { system: 'us', step: 1, round: 'down' });
}

const names: Readonly<Record<Tipping, string>> = {
  sideways: 'Across the slope, from behind',
  uphill: 'Facing uphill, from its left',
};

/** What is said under a sketch: what it shows, the limit, that it is none to work on, and half the grade. */
export interface SlopeCaption {
  readonly name: string;
  readonly limit: string;
  readonly warning: string;
  readonly rest: string;
}

/** The words of a sketch. */
export function captionOf(limit: AtLimit, isLeast: boolean, system: UnitSystem): SlopeCaption {
  const { which, angle, ballHeight } = limit;
  const at = `Balls at ${heightText(ballHeight, system)}${isLeast ? ', where it is least' : ''}.`;
  if (angle === null) {
    const limitWords = 'The front wheels leave the ground';
    return { name: names[which], limit: limitWords, warning: 'It does not even stand on the level.', rest: at };
  }
  const half = halfGrade(angle);
  const percent = Math.floor(tangent(half) * 100 + 1e-9);
  return {
    name: names[which],
    limit: `${limitText(angle)} ideal limit at rest`,
    warning: 'Not a slope to work on.',
    rest: `Half of that grade is ${limitText(half)} (${percent} %): a reserve of 2, our own choice, no permission. ${at}`,
  };
}

/** What the limits leave out. */
export const slopeNote =
  'Rigid, even ground, standing still. Soft tyres, ruts, turning, braking and swinging loads tip it earlier. For information only.';

/** A sketch in words. */
export function slopeSentences({ name, limit, warning, rest }: SlopeCaption): string[] {
  return [`${name}: ${limit}.`, warning, rest];
}
