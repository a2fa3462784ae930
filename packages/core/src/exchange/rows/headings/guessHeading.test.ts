import { describe, expect, test } from 'vitest';
import { fieldOfTarget } from '../mapping/target.ts';
import type { RowKind } from '../kinds.ts';
import { guessHeading } from './guessHeading.ts';

/** What a heading is taken for in a few words. */
function taken(kind: RowKind, heading: string): string {
  const { target, unit, rivals } = guessHeading(heading, kind);
  if (rivals.length > 0) return `asks ${[...rivals].sort().join(' or ')}`;
  const field = fieldOfTarget(target);
  const what = target.role === 'field' ? String(field) : `${target.role}${field === null ? '' : ` of ${field}`}`;
  return unit === null ? what : `${what} [${unit.unit}]`;
}

describe('headings', () => {
  test.each<[RowKind, string, string]>([
    ['implement', 'Mast ht (in)', 'mastHeight [in]'],
    ['implement', 'A-frame height', 'mastHeight'],
    ['implement', 'Top pin height above lower pins', 'mastHeight'],
    ['implement', 'weight lbs', 'mass [lb]'],
    ['implement', 'Wt.', 'mass'],
    ['implement', 'lbs', 'mass [lb]'],
    ['implement', 'span mm', 'shoulderSpan [mm]'],
    ['implement', 'Shoulder span, in.', 'shoulderSpan [in]'],
    ['implement', 'Hitch pin spacing', 'shoulderSpan'],
    ['implement', 'Lower Pin Ø', 'lowerPinDiameter'],
    ['implement', 'Lift pin dia.', 'lowerPinDiameter'],
    ['implement', 'Top pin dia (in)', 'upperPinDiameter [in]'],
    ['implement', 'exposed pin length', 'standOut'],
    ['implement', 'C of G behind pins (mm)', 'centreBehind [mm]'],
    ['implement', 'Center of gravity from pins', 'centreBehind'],
    ['implement', 'HP required', 'powerWanted'],
    ['implement', 'Max HP', 'powerMost [hp]'],
    ['implement', 'PTO rpm', 'inputSpeed [rpm]'],
    ['implement', 'Cutting width (ft)', 'workWidth [ft]'],
    ['implement', '2nd row span', 'secondRow.shoulderSpan'],
    ['implement', 'mast_height_mm', 'mastHeight [mm]'],
    ['implement', 'mastHeightMm', 'mastHeight [mm]'],
    ['implement', 'Cat', 'category'],
    ['implement', 'Welded or bolted', 'pinFixing'],
    ['implement', 'Remarks', 'note'],
    ['tractor', 'Tread width', 'rearTrack'],
    ['tractor', 'Gap between rear tires', 'tyreInnerSpan'],
    ['tractor', 'Loaded tires', 'ignore'],
    ['tractor', 'Engine HP', 'enginePower [hp]'],
    ['tractor', 'PTO HP', 'ptoPower [hp]'],
    ['tractor', 'PTO ht', 'stubHeight'],
    ['tractor', 'Lift cap. @ 24" (lbs)', 'liftAt610 [lb]'],
    ['tractor', 'Lift at ball ends', 'liftAtBalls'],
    ['tractor', 'Top link length', 'topLinkLength'],
    ['tractor', 'Center link length', 'topLinkLength'],
    ['coupler', 'Hook centers', 'hookSpan'],
    ['coupler', 'Standoff', 'hookBehind'],
    ['coupler', 'Top hook height', 'topHookHeight'],
    ['shaft', 'Collapsed length (in)', 'closedLength [in]'],
    ['shaft', 'Engagement', 'closedOverlap'],
    ['shaft', 'Tractor end splines', 'tractorType'],
    ['part', 'OD', 'outside'],
    ['part', 'Price (USD)', 'price [USD]'],
    ['customer', 'Tel.', 'contact.phone'],
    ['customer', 'E-mail address', 'contact.email'],
  ])('in a sheet of %ss “%s” is %s', (kind, heading, expected) => {
    expect(taken(kind, heading)).toBe(expected);
  });

  test.each<[RowKind, string, string]>([
    ['tractor', 'HP', 'asks enginePower or ptoPower'],
    ['tractor', 'Lift capacity', 'asks liftAt610 or liftAtBalls'],
    ['tractor', 'Front weight', 'asks frontAxleMass or frontWeightMass'],
    ['part', 'Bore', 'asks bore or inside'],
  ])('in a sheet of %ss “%s” may be two things: %s', (kind, heading, expected) => {
    expect(taken(kind, heading)).toBe(expected);
  });

  test.each(['Height', 'Length', 'Colour', 'Location', 'Hole dia', 'dia', 'Year', 'x', '1', '', '***'])(
    '“%s” says too little: not known',
    (heading) => {
      expect(taken('implement', heading)).toBe('ignore');
    },
  );

  test('names, numbers and what stands beside figures have their own columns', () => {
    const headings = [
      'Model',
      'Attachment',
      'SKU',
      'Measured by',
      'Date',
      'Units',
      'mast height ±',
      'mast height: note',
      'mast height (tol)',
    ];
    expect(headings.map((heading) => taken('implement', heading))).toEqual([
      'name',
      'name',
      'id',
      'who',
      'when',
      'unit',
      'plusMinus of mastHeight',
      'note of mastHeight',
      'plusMinus of mastHeight',
    ]);
    expect(taken('tractor', 'Attachment')).toBe('ignore');
  });

  test('the two ends of a field are told from fields that are themselves an end', () => {
    expect(taken('tractor', 'Ball spread min (mm)')).toBe('low of ballSpan [mm]');
    expect(taken('tractor', 'Max. ball spread')).toBe('high of ballSpan');
    expect(taken('tractor', 'Lowest ball height')).toBe('ballHeightLow');
  });

  test('a unit of something else rules a field out', () => {
    expect(taken('implement', 'Mast height (kg)')).not.toContain('mastHeight');
  });
});
