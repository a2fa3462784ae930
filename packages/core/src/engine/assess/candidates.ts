import { bushings } from '../../tables/index.ts';
import type { Edit, Part, Setup, Value } from '../../records/index.ts';
import type { CheckId, Finding } from '../findings/index.ts';
import { adjusted, taken, type Candidate } from './candidate.ts';

const frontLower: readonly CheckId[] = [
  'front.lowerPin',
  'front.span',
  'front.retention',
  'front.bushingBore',
  'front.bushingLength',
];
const rearLower: readonly CheckId[] = [
  'rear.lowerPin',
  'rear.shoulders',
  'rear.pinSeat',
  'rear.retention',
  'rear.bushingBore',
  'rear.bushingLength',
  'rear.claw',
  'rear.ballOnPin',
];
const upper: readonly CheckId[] = ['rear.upperPin', 'rear.upperBushing', 'rear.clevis', 'rear.mast'];
const frontUpper: readonly CheckId[] = ['front.upperPin', 'front.upperBushing', 'front.clevis', 'front.topLink'];

/** Everything on the list that touches the places where something fails; trying them is another matter. */
export function candidatesFor(setup: Setup, failing: readonly Finding[]): Candidate[] {
  const ids = failing.map((finding) => finding.id);
  const touches = (checks: readonly CheckId[]): boolean => checks.some((id) => ids.includes(id));
  const kind = setup.coupler?.kind;
  const frontLowerPath = kind === undefined || kind === 'clawEnds' ? 'implement' : 'coupler.front';
  const frontUpperPath = kind === 'uFrame' || kind === 'triangle' ? 'coupler.front' : 'implement';
  const lowerPlaces = [...(touches(frontLower) ? [frontLowerPath] : []), ...(touches(rearLower) ? ['implement'] : [])];
  const upperPlaces = [...(touches(frontUpper) ? [frontUpperPath] : []), ...(touches(upper) ? ['implement'] : [])];
  const parts = (setup.parts ?? ordinaryParts()).filter(
    (part) => part.fits?.includes(setup.implement.name ?? '') ?? true,
  );
  return [
    ...unique(lowerPlaces).flatMap((on) => parts.flatMap((part) => lowerPart(setup, part, on))),
    ...unique(upperPlaces).flatMap((on) => parts.flatMap((part) => upperPart(part, on))),
    ...(lowerPlaces.includes('implement') ? reversing(setup) : []),
  ].filter((candidate) => mayBeDone(setup, candidate));
}

/** A rented machine, or one under warranty, is not altered; slipping a bushing on is no alteration. */
function mayBeDone(setup: Setup, candidate: Candidate): boolean {
  const { alteration } = setup.implement;
  return (
    !candidate.altersMachine || alteration === undefined || alteration === 'allowed' || candidate.on !== 'implement'
  );
}

function lowerPart(setup: Setup, part: Part, on: string): Candidate[] {
  const base = { ...taken(part), on };
  if (part.kind === 'lowerBushings') {
    const edits = (length: unknown): Edit[] => [
      { path: `${on}.lowerBushingInside`, value: raw(part.inside) },
      { path: `${on}.lowerBushingOutside`, value: raw(part.outside) },
      { path: `${on}.lowerBushingLength`, value: length },
    ];
    const whole: Candidate = { ...base, edits: edits(raw(part.length)) };
    const cut = cutLength(setup, on, part.length);
    return cut === null ? [whole] : [whole, { ...whole, kind: 'cutBushing', returnable: false, edits: edits(cut) }];
  }
  if (
    part.kind === 'lowerPins' &&
    on === 'implement' &&
    setup.implement.pinFixing !== undefined &&
    setup.implement.pinFixing !== 'welded'
  ) {
    return [
      {
        ...base,
        altersMachine: true,
        edits: [
          { path: `${on}.lowerPinDiameter`, value: raw(part.diameter) },
          { path: `${on}.shoulderSpan`, value: raw(part.shoulderSpan) },
          { path: `${on}.standOut`, value: raw(part.standOut) },
          { path: `${on}.shoulderToHole`, value: raw(part.shoulderToHole) },
        ],
      },
    ];
  }
  if (part.kind !== 'pinBalls' || on !== 'implement') return [];
  return [
    {
      ...base,
      edits: [
        { path: `${on}.pinBallBore`, value: raw(part.bore) },
        { path: `${on}.pinBallDiameter`, value: raw(part.diameter) },
        { path: `${on}.pinBallWidth`, value: raw(part.width) },
      ],
    },
  ];
}

function upperPart(part: Part, on: string): Candidate[] {
  const base = { ...taken(part), on };
  if (part.kind === 'upperBushing') {
    return [
      {
        ...base,
        edits: [
          { path: `${on}.upperBushingInside`, value: raw(part.inside) },
          { path: `${on}.upperBushingOutside`, value: raw(part.outside) },
        ],
      },
    ];
  }
  if (part.kind === 'clevisSpacers')
    return [{ ...base, edits: [{ path: `${on}.clevisGap`, value: raw(part.gapAfter) }] }];
  if (part.kind !== 'upperPinPlate' || on !== 'implement') return [];
  return [
    {
      ...base,
      altersMachine: true,
      edits: [
        { path: `${on}.mastHeight`, value: raw(part.mastHeight) },
        { path: `${on}.mastSetback`, value: raw(part.mastSetback) },
      ],
    },
  ];
}

/** Pins turned round: the shoulders move from the outer to the inner faces of their plates, or back. */
function reversing({ implement }: Setup): Candidate[] {
  const { pinFixing, plateThickness, shoulderSpan, pinsPoint } = implement;
  if (pinFixing === undefined || pinFixing === 'welded') return [];
  if (plateThickness?.kind !== 'stated' || shoulderSpan?.kind !== 'stated') return [];
  // Turned round, the balls sit on the other side of the shoulders: only a reading of the shoulders themselves carries over.
  if ((shoulderSpan.provenance.from ?? 'shoulder') !== 'shoulder') return [];
  const step = (pinsPoint === 'in' ? 2 : -2) * plateThickness.value;
  const slack =
    (shoulderSpan.bound.high - shoulderSpan.bound.low) / 2 + (plateThickness.bound.high - plateThickness.bound.low);
  return [
    {
      ...adjusted,
      kind: 'reversePins',
      altersMachine: true,
      on: 'implement',
      edits: [
        { path: 'implement.pinsPoint', value: pinsPoint === 'in' ? 'out' : 'in' },
        { path: 'implement.shoulderSpan', value: { value: shoulderSpan.value + step, plusMinus: slack } },
      ],
    },
  ];
}

/** What a bushing would be cut to: the longest that still leaves the retaining hole and washer free, where that is shorter than it is [mm]. */
function cutLength(setup: Setup, on: string, whole: Value): number | null {
  const pins = on === 'implement' ? setup.implement : setup.coupler?.front;
  const hole = pins?.shoulderToHole;
  if (hole?.kind !== 'stated') return null;
  const washer = pins?.washer?.kind === 'stated' ? pins.washer.bound.high : 3;
  const length = Math.floor(hole.bound.low - washer);
  const isShorter = whole.kind !== 'stated' || length < whole.bound.low;
  return length >= 10 && isShorter ? length : null;
}

/** A value as it goes into a document. */
function raw(value: Value): unknown {
  if (value.kind !== 'stated') return null;
  const plusMinus = (value.bound.high - value.bound.low) / 2;
  return plusMinus === 0 ? value.value : { value: value.value, plusMinus };
}

/** The list that stands in where a setup names no parts: the bushings of the trade (tables/bushings.ts). */
function ordinaryParts(): Part[] {
  return bushings.flatMap((bushing): Part[] => {
    const inside = exact(bushing.inside.value);
    const outside = exact(bushing.outside.value);
    const name = `${bushing.place} bushing for a category ${bushing.pinCategory} pin in a category ${bushing.seatCategory} seat`;
    if (bushing.place === 'upper') return [{ kind: 'upperBushing', name, inside, outside }];
    const lengths = bushing.lengths.map((length) => exact(length.value));
    return (lengths.length === 0 ? [unknown] : lengths).map((length): Part => ({
      kind: 'lowerBushings',
      name,
      inside,
      outside,
      length,
    }));
  });
}

const unknown: Value = { kind: 'unknown', provenance: {} };

function exact(value: number): Value {
  return { kind: 'stated', value, bound: { low: value, high: value }, provenance: {} };
}

function unique(places: readonly string[]): string[] {
  return [...new Set(places)];
}
