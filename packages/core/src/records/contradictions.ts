import { classRange, type ClassField } from '../tables/index.ts';
import { canonicalUnit } from '../units/index.ts';
import { fieldRules } from './fields.ts';
import type { InputError } from './inputError.ts';
import type { Implement, PinSet, Setup } from './setup.ts';
import type { Bound, Value } from './value.ts';

/** Errors that no single field shows: figures that cannot all be true of one machine, and two figures in each other's place. */
export function contradictions(setup: Setup): InputError[] {
  const { implement, coupler, tractor } = setup;
  return [
    ...pinContradictions(implement, 'implement'),
    ...(implement.secondRow === undefined ? [] : pinContradictions(implement.secondRow, 'implement.secondRow')),
    ...(coupler?.front === undefined ? [] : pinContradictions(coupler.front, 'coupler.front')),
    ...pairedStops(implement, 'implement', 'mastHeight', 'mastSetback'),
    ...pairedStops(coupler ?? {}, 'coupler', 'topHookHeight', 'topHookBehind'),
    ...pairedStops(tractor, 'tractor', 'topLinkPivotHeight', 'topLinkPivotBehindAxle'),
    ...pairedStops(tractor, 'tractor', 'liftRodAlong', 'liftRodAbove'),
    ...fixedFields(setup),
    ...settableFields(setup),
    ...swappedMast(implement),
    ...liftContradictions(setup),
    ...driveContradictions(setup),
    ...balanceContradictions(setup),
  ];
}

/** Heights and ratings that can't all be true of one lift. */
function liftContradictions({ tractor }: Setup): InputError[] {
  return [
    ...smaller(
      tractor.ballHeightLow,
      tractor.ballHeightHigh,
      'tractor.ballHeightLow',
      'the highest ball height',
      'Are lowest and highest in each other’s place?',
    ),
    ...smaller(
      tractor.liftArmLowest,
      tractor.liftArmHighest,
      'tractor.liftArmLowest',
      'the angle at the highest',
      'Are lowest and highest in each other’s place?',
    ),
    ...atMost(
      tractor.liftAt610,
      tractor.liftAtBalls,
      'tractor.liftAt610',
      'the lift at the ball ends',
      'Farther back a lift never lifts more: are the two in each other’s place?',
    ),
  ];
}

/** Masses and cylinders that can't be so. */
function balanceContradictions({ tractor, implement }: Setup): InputError[] {
  return [
    ...smaller(
      tractor.frontAxleMass,
      tractor.mass,
      'tractor.frontAxleMass',
      'the mass of the tractor',
      'The front axle carries a part of the tractor: are the two in each other’s place?',
    ),
    ...smaller(
      implement.cylinderRod,
      implement.cylinderBore,
      'implement.cylinderRod',
      'the bore of the cylinder',
      'Are rod and bore in each other’s place?',
    ),
  ];
}

/** A shaft, and an opening that it passes, that can't be so. */
function driveContradictions({ shaft, coupler }: Setup): InputError[] {
  return [
    ...smaller(
      shaft?.closedOverlap,
      shaft?.closedLength,
      'shaft.closedOverlap',
      'the closed length',
      'The two tubes can’t reach farther into each other than the shaft is long.',
    ),
    ...smaller(
      shaft?.guardTubeDiameter,
      shaft?.guardConeDiameter,
      'shaft.guardTubeDiameter',
      'the diameter of the cone',
      'Are tube and cone in each other’s place?',
    ),
    ...smaller(
      coupler?.windowBottom,
      coupler?.windowTop,
      'coupler.windowBottom',
      'the top of the opening',
      'Are top and bottom in each other’s place?',
    ),
  ];
}

function pinContradictions(pins: PinSet, path: string): InputError[] {
  return [
    ...smaller(
      pins.shoulderToHole,
      pins.standOut,
      `${path}.shoulderToHole`,
      'the stand-out of the pin',
      'The hole lies between the step and the tip.',
    ),
    ...smaller(
      pins.clevisGap,
      pins.clevisOuterWidth,
      `${path}.clevisGap`,
      'the outside width of the clevis',
      'Are inside and outside width in each other’s place?',
    ),
    ...smaller(
      pins.lowerBushingInside,
      pins.lowerBushingOutside,
      `${path}.lowerBushingInside`,
      'the bushing’s outside diameter',
      'Are bore and outside diameter in each other’s place?',
    ),
    ...smaller(
      pins.upperBushingInside,
      pins.upperBushingOutside,
      `${path}.upperBushingInside`,
      'the bushing’s outside diameter',
      'Are bore and outside diameter in each other’s place?',
    ),
  ];
}

function smaller(
  less: Value | undefined,
  more: Value | undefined,
  path: string,
  what: string,
  hint: string,
): InputError[] {
  const a = range(less);
  const b = range(more);
  if (a === null || b === null || a.low < b.high) return [];
  const unit = canonicalUnit[fieldRules.get(path)?.dimension ?? 'length'];
  return [
    { code: 'contradiction', path, expected: `less than ${what} (${b.high} ${unit})`, got: `${a.low} ${unit}`, hint },
  ];
}

function atMost(
  less: Value | undefined,
  more: Value | undefined,
  path: string,
  what: string,
  hint: string,
): InputError[] {
  const [a, b] = [range(less), range(more)];
  if (a === null || b === null || a.low <= b.high) return [];
  return [{ code: 'contradiction', path, expected: `at most ${what} (${b.high} kg)`, got: `${a.low} kg`, hint }];
}

/** Stops that belong to one hole carry as many entries in each of their two lists, or the second is one figure for all. */
function pairedStops(record: object, path: string, first: string, second: string): InputError[] {
  const values = record as Readonly<Record<string, Value | undefined>>;
  const a = values[first];
  const b = values[second];
  if (b?.kind !== 'stops' || (a?.kind === 'stops' && a.at.length === b.at.length)) return [];
  const expected = `as many entries as ${path}.${first} has holes`;
  return [
    {
      code: 'contradiction',
      path: `${path}.${second}`,
      expected,
      got: `${b.at.length}`,
      hint: 'List one figure for each hole, in the same order.',
    },
  ];
}

const adjustableFields = new Set([
  'implement.mastHeight',
  'implement.mastSetback',
  'coupler.topHookHeight',
  'coupler.topHookBehind',
  'tractor.ballSpan',
  'tractor.topLinkLength',
  'tractor.topLinkPivotHeight',
  'tractor.topLinkPivotBehindAxle',
  'tractor.liftRodLength',
  'tractor.liftRodAlong',
  'tractor.liftRodAbove',
]);

/** What is set to suit is given by its ends: one figure would say that it can be nowhere else. */
function settableFields({ tractor }: Setup): InputError[] {
  return (['ballSpan', 'topLinkLength'] as const).flatMap((key) => {
    const kind = tractor[key]?.kind;
    if (kind === undefined || kind === 'adjustable' || kind === 'unknown') return [];
    const hint = 'Write {"adjustable": {"between": [shortest, longest]}}; leave it out when it is not known.';
    return [
      {
        code: 'contradiction',
        path: `tractor.${key}`,
        expected: 'the range it can be set to',
        got: 'one figure',
        hint,
      } as const,
    ];
  });
}

/** Only what somebody can set may be given as adjustable. */
function fixedFields(setup: Setup): InputError[] {
  const parts = (setup.parts ?? []).map((part, i) => [`parts.${i}`, part] as const);
  const records = [
    ['tractor', setup.tractor],
    ['coupler', setup.coupler],
    ['coupler.front', setup.coupler?.front],
    ['implement', setup.implement],
    ['implement.secondRow', setup.implement.secondRow],
    ['shaft', setup.shaft],
    ...parts,
  ] as const;
  return records.flatMap(([path, record]) =>
    Object.entries(record ?? {}).flatMap(([key, value]) => notSettable(`${path}.${key}`, value)),
  );
}

function notSettable(path: string, value: unknown): InputError[] {
  const { kind } = (value ?? {}) as Partial<Value>;
  if ((kind !== 'adjustable' && kind !== 'stops') || adjustableFields.has(path)) return [];
  const hint = 'Nobody can set this one; write {"between": [a, b]} where it is not known exactly.';
  return [
    { code: 'contradiction', path, expected: 'a figure or a range it lies in', got: 'an adjustable range', hint },
  ];
}

/** Span and mast height each outside their class but inside the other's were typed into each other's field. */
function swappedMast(implement: Implement): InputError[] {
  const span = range(implement.shoulderSpan);
  const mast = range(implement.mastHeight);
  if (span === null || mast === null || implement.category === undefined) return [];
  const inside = (bound: Bound, field: ClassField) => {
    const wide = classRange(implement.category as NonNullable<Implement['category']>, field);
    return wide !== null && bound.low <= wide.high && bound.high >= wide.low;
  };
  const rightWay = inside(span, 'implement.shoulderSpan') || inside(mast, 'implement.mastHeight');
  const otherWay = inside(span, 'implement.mastHeight') && inside(mast, 'implement.shoulderSpan');
  if (rightWay || !otherWay) return [];
  return [
    {
      code: 'swapped',
      path: 'implement.shoulderSpan',
      expected: 'a shoulder span',
      got: `${span.low} mm, a mast height`,
      hint: 'Shoulder span and mast height look swapped.',
    },
  ];
}

function range(value: Value | undefined): Bound | null {
  if (value === undefined || value.kind === 'unknown') return null;
  if (value.kind === 'adjustable') return { low: value.lowest.low, high: value.highest.high };
  if (value.kind === 'stops')
    return { low: Math.min(...value.at.map((stop) => stop.low)), high: Math.max(...value.at.map((stop) => stop.high)) };
  return value.bound;
}
