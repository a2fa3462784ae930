import { printBoth, printMarginSize, printQuantity, type UnitSystem } from '../../units/index.ts';
import type { Rounding } from '../../units/index.ts';
import type { Setup } from '../../records/index.ts';
import type { ShaftStation } from '../../engine/shaft/index.ts';
import { sentenceOf, titleOf } from '../../words/index.ts';
import { drivenOf, type Driven } from './driven.ts';
import { faultsAt, isAtFault, turnsAt, worstShaftFinding, type End, type Faults } from './faults.ts';

/** A length of a shaft to an eighth of an inch or a millimetre, in both units. */
export function lengthText(mm: number, system: UnitSystem, round: Rounding = 'nearest'): string {
  const [us, metric] = [
    printQuantity(mm, 'length', { system: 'us', step: 8, round }),
    printQuantity(mm, 'length', { system: 'metric', round }),
  ];
  return system === 'us' ? `${us} (${metric})` : `${metric} (${us})`;
}

/** A length to be cut, as exactly as it is marked, in both units. */
export function cutText(mm: number, system: UnitSystem): string {
  return printBoth(mm, 'length', { system });
}

/** An angle to a tenth of a degree, never smaller than it is. */
export function angleText(degrees: number): string {
  return printQuantity(degrees, 'angle', { system: 'us', round: 'up' });
}

/** What is to be said of the shaft at one height: its worst, or how far it overlaps; then how far its joints bend. */
function shaftWordsAt(driven: Driven, station: ShaftStation, system: UnitSystem): string {
  const faults = faultsAt(driven, station);
  const joints = `joints ${angleText(station.tractorAngle)} and ${angleText(station.implementAngle)}`;
  return `${lengthWords(driven, station, faults, system)}, ${joints}${overWords(driven, station, faults)}`;
}

/** Whether the shaft is in the way at a height. */
function isShaftBad(driven: Driven, station: ShaftStation): boolean {
  return isAtFault(faultsAt(driven, station));
}

/** What is to be said of the shaft at a station, and whether it is in the way; null where there is no shaft. */
export function shaftAt(
  answer: Parameters<typeof drivenOf>[0],
  index: number,
  system: UnitSystem,
): { words: string; isBad: boolean } | null {
  const driven = drivenOf(answer);
  const here = driven?.shaft.stations[index];
  if (driven === null || here === undefined) return null;
  return { words: shaftWordsAt(driven, here, system), isBad: isShaftBad(driven, here) };
}

function lengthWords({ shaft }: Driven, station: ShaftStation, faults: Faults, system: UnitSystem): string {
  const { overlap, toBottom, longest } = station;
  const { limits } = shaft;
  if (faults.apart) return `shaft apart by ${printMarginSize(overlap ?? 0, 'length', system)}`;
  if (faults.bottoms) return `shaft bottoms, ${printMarginSize(toBottom ?? 0, 'length', system)} too long`;
  if (faults.tight)
    return `${lengthText(toBottom ?? 0, system, 'down')} before the shaft bottoms, ${lengthText(limits.clearance, system)} wanted`;
  if (overlap === null) return `${lengthText(longest, system)} between the joints of the shaft`;
  const wanted = faults.short ? `, ${lengthText(limits.overlap ?? 0, system)} wanted` : '';
  return `shaft overlap ${lengthText(overlap, system, 'down')}${wanted}`;
}

/** The lesser of the angles that are gone beyond. */
function overWords({ shaft }: Driven, { ballHeight }: ShaftStation, { over }: Faults): string {
  const ends = (['tractor', 'implement'] as const).filter((end) => over[end] !== null);
  if (ends.length === 0) return '';
  const most = Math.min(...ends.map((end) => over[end] ?? Infinity));
  const when = turnsAt(shaft, ballHeight) ? ' while it turns' : '';
  return `, ${most}° allowed${when}`;
}

/** The shaft at one height in full sentences. */
export function shaftSentencesAt(driven: Driven, station: ShaftStation, system: UnitSystem): string[] {
  const { shortest, longest, overlap, toBottom } = station;
  const between =
    longest - shortest < 1
      ? lengthText(longest, system)
      : `${lengthText(shortest, system)} to ${lengthText(longest, system)}`;
  const words = shaftWordsAt(driven, station, system);
  return [
    `Between the joints of the drive shaft: ${between}.`,
    ...(overlap === null ? [] : [overlapSentence(overlap, system)]),
    ...(toBottom === null ? [] : [bottomSentence(toBottom, system)]),
    `The joint at the tractor bends ${angleText(station.tractorAngle)} at most, that at the implement ${angleText(station.implementAngle)}.`,
    turnsAt(driven.shaft, station.ballHeight) ? 'The drive turns here.' : 'The drive does not turn here.',
    ...(isShaftBad(driven, station) ? [`${words.charAt(0).toUpperCase()}${words.slice(1)}.`] : []),
  ];
}

function overlapSentence(overlap: number, system: UnitSystem): string {
  if (overlap < 0) return `Its halves are apart by ${printMarginSize(overlap, 'length', system)}.`;
  return `Its halves overlap ${lengthText(overlap, system, 'down')}.`;
}

function bottomSentence(toBottom: number, system: UnitSystem): string {
  if (toBottom < 0) return `It is ${printMarginSize(toBottom, 'length', system)} too long here: it bottoms.`;
  return `${lengthText(toBottom, system, 'down')} are left before it bottoms.`;
}

/** What holds of the drive shaft all through the lift: what it has to keep, where it turns, where to measure, and the worst found. */
export function shaftAlways(setup: Setup, { answer, shaft }: Driven, system: UnitSystem): string[] {
  const { limits } = shaft;
  const worst = worstShaftFinding(answer);
  return [
    turnsSentence(shaft, system),
    `Shortest between its joints with the balls at ${lengthText(shaft.shortestAt, system)}, longest at ${lengthText(shaft.longestAt, system)}: measure there.`,
    ...(limits.overlap === null ? [] : [`Overlap wanted while it turns: ${lengthText(limits.overlap, system)}.`]),
    `Clearance wanted before it bottoms: ${lengthText(limits.clearance, system)}.`,
    `Joints may bend ${limitsText(limits.turning)} while they turn.`,
    worst === null
      ? 'Nothing found against the drive shaft.'
      : `${titleOf(worst)}: ${sentenceOf(worst, setup, system)}`,
  ];
}

function turnsSentence({ turnsFrom, turnsTo }: Driven['shaft'], system: UnitSystem): string {
  if (turnsTo - turnsFrom < 1) return `The drive turns with the balls at ${lengthText(turnsFrom, system)} only.`;
  return `The drive turns with the balls from ${lengthText(turnsFrom, system)} to ${lengthText(turnsTo, system)}.`;
}

/** One limit, or one for each joint [deg]. */
export function limitsText({ tractor, implement }: Readonly<Record<End, number>>): string {
  return tractor === implement ? `${tractor}°` : `${tractor}° and ${implement}°`;
}
