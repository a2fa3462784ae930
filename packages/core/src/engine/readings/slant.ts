import type { SetupDocument } from '../../records/index.ts';
import { interval, multiply, scale, subtract, type Interval } from '../geometry/index.ts';
import { givenAt, likelyAt } from './known.ts';
import { usualFront } from './usual.ts';

/** Ground that looks level [deg]. Common practice, no source. */
const degrees = 3;
const steepness = Math.tan((degrees * Math.PI) / 180);
const slant = interval(-steepness, steepness);

/** How far from its foot something lies that nobody has read [mm]. Our own. */
const usualLever = interval(-200, 1500);
/** Height of a rear axle that nobody has read [mm]. Our own. */
const usualAxle = interval(250, 900);
/** A tractor’s centre of gravity stands this high over its wheelbase. Our own. */
const usualRise = interval(0.3, 0.55);

/**
 * What ground that looks level but is not adds to a reading: to a height by how far back it is read, to a distance back by how
 * high it is read, and to what an axle carries by how high the centre of gravity stands.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, with dots [text]
 * @param read what was read [canonical unit]
 * @returns what it may add, nothing where a slant does no harm [canonical unit]
 */
export function slantOf(document: SetupDocument, path: string, read: Interval): Interval {
  if (path === 'tractor.frontAxleMass') return multiply(slant, shifted(document, read));
  if (/\.(inputAngle|liftArmLowest|liftArmHighest)$/.test(path)) return interval(-degrees, degrees);
  const lever = leverOf(document, path);
  return lever === null ? interval(0, 0) : multiply(slant, lever);
}

/** Mass times rise: what three degrees would move from one axle to the other, were they a whole turn of the tangent. */
function shifted(document: SetupDocument, front: Interval): Interval {
  const mass = givenAt(document, 'tractor.mass') ?? scale(front, 1 / usualFront.low);
  const height = givenAt(document, 'tractor.centreHeight');
  const wheelbase = givenAt(document, 'tractor.wheelbase');
  if (height === null || wheelbase === null) return multiply(mass, usualRise);
  return multiply(mass, interval(height.low / wheelbase.high, height.high / wheelbase.low));
}

/** By its field: the field square to it, at which the slant pulls. */
const partners: readonly (readonly [RegExp, string])[] = [
  [/^(.+)\.mastHeight$/, '$1.mastSetback'],
  [/^(.+)\.mastSetback$/, '$1.mastHeight'],
  [/^coupler\.topHookBehind$/, 'coupler.topHookHeight'],
  [/^coupler\.hookRise$/, 'coupler.hookBehind'],
  [/^coupler\.hookBehind$/, 'coupler.hookRise'],
  [/^implement\.lowestBelow$/, 'implement.lowestBehind'],
  [/^implement\.lowestBehind$/, 'implement.lowestBelow'],
  [/^((?:implement|coupler)\.\w+)Above$/, '$1Behind'],
  [/^((?:implement|coupler)\.\w+)Behind$/, '$1Above'],
  [/^tractor\.(?!centre|frontPivot)(\w+)Height$/, 'tractor.$1BehindAxle'],
  [/^tractor\.(\w+)BehindAxle$/, 'tractor.$1Height'],
];

function leverOf(document: SetupDocument, path: string): Interval | null {
  if (path.startsWith('tractor.ballHeight')) return ballsOf(document);
  const [pattern, partner] = partners.find(([fields]) => fields.test(path)) ?? [];
  if (pattern === undefined || partner === undefined) return null;
  const lever = likelyAt(document, path.replace(pattern, partner)) ?? usualLever;
  return path.endsWith('BehindAxle') ? subtract(lever, axleOf(document)) : lever;
}

/** A plumb line that starts from the axle is off by what lies between its height and that of the point. */
function axleOf(document: SetupDocument): Interval {
  return givenAt(document, 'tractor.tyreRadius') ?? usualAxle;
}

/** The balls hang behind their links’ pivots, at most by the links’ length. */
function ballsOf(document: SetupDocument): Interval {
  const pivot = likelyAt(document, 'tractor.lowerLinkPivotBehindAxle');
  const length = likelyAt(document, 'tractor.lowerLinkLength');
  return pivot === null || length === null ? usualLever : interval(pivot.low, pivot.high + length.high);
}
