import { atPath, type SetupDocument } from '../../records/index.ts';
import { holds, interval, middle, type Interval } from '../geometry/index.ts';
import type { Doubt } from './doubt.ts';
import { besideOf, givenAt, valueAt } from './known.ts';
import { betweenOwnPoints } from './points.ts';
import { usualFront } from './usual.ts';

/**
 * Readings that don’t go with another figure of the same machine.
 *
 * @param document the setup as far as it is known [JSON]
 * @param field field path, with dots [text]
 * @param value the reading [canonical unit]
 * @param way key of the way that it was read, where it was asked [text]
 * @returns doubts [list]
 */
export function togetherDoubts(
  document: SetupDocument,
  field: string,
  value: number,
  way: string | undefined,
): Doubt[] {
  const read = interval(value, value);
  if (/\.(standOut|shoulderToHole)$/.test(field)) return holeDoubts(document, field, read);
  if (field === 'shaft.closedLength' || field === 'shaft.closedOverlap') return shaftDoubts(document, field, read, way);
  if (field === 'tractor.mass' || field === 'tractor.frontAxleMass') return weighedDoubts(document, field, read);
  return [];
}

/** A retaining pin’s hole and what stands beyond it take at least this much of a pin [mm]. Our own. */
const leastBeyond = 5;

/** A hole that reaches the tip was no hole: one of the two was read to another edge. */
function holeDoubts(document: SetupDocument, field: string, read: Interval): Doubt[] {
  const tip = field.endsWith('standOut') ? read : givenAt(document, besideOf(field, 'standOut'));
  const hole = field.endsWith('standOut') ? givenAt(document, besideOf(field, 'shoulderToHole')) : read;
  if (tip === null || hole === null) return [];
  return tip.high - hole.low < leastBeyond ? [{ kind: 'pastHole' }] : [];
}

/** A shaft pushed together reaches into itself for at least this share of its length. Common practice, no source. */
const leastReach = 0.4;
/** Outside their overlap the two halves of a shaft are no longer than this, joints and all [mm]. Our own. */
const mostOutside = 500;

function shaftDoubts(document: SetupDocument, field: string, read: Interval, way: string | undefined): Doubt[] {
  const isLength = field === 'shaft.closedLength';
  const from = isLength ? way : valueAt(document, 'shaft.closedLength')?.provenance.from;
  const length = isLength ? read : givenAt(document, 'shaft.closedLength');
  const overlap = isLength ? givenAt(document, 'shaft.closedOverlap') : read;
  if (length === null || overlap === null) return [];
  const { low } = betweenOwnPoints(document, 'shaft.closedLength', from, length);
  const isDrawnOut = overlap.high < leastReach * low || low - overlap.high > mostOutside;
  return isDrawnOut ? [{ kind: 'drawnOut' }] : [];
}

/** Most that a front axle carries of a tractor with its loader on. Our own. */
const mostWithLoader = 0.75;

function weighedDoubts(document: SetupDocument, field: string, read: Interval): Doubt[] {
  const front = field === 'tractor.frontAxleMass' ? read : givenAt(document, 'tractor.frontAxleMass');
  const mass = field === 'tractor.mass' ? read : givenAt(document, 'tractor.mass');
  if (front === null || mass === null || mass.low <= 0) return [];
  const withLoader = atPath(document, 'tractor.weighedWithLoader') === true;
  const usual = interval(usualFront.low, withLoader ? mostWithLoader : usualFront.high);
  return holds(usual, middle(front) / middle(mass)) ? [] : [{ kind: 'weighedLoaded' }];
}
