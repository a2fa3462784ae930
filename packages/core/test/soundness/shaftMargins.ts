import type { CheckId } from '../../src/engine/findings/index.ts';
import { exactly } from '../../src/engine/geometry/index.ts';
import { angleLimits } from '../../src/engine/shaft/question.ts';
import { passageClearance } from '../../src/tables/index.ts';
import { openShaftTruth, type SeenOfShaft, type TrueCorner } from '../properties/shaftTruth.ts';
import type { Sources } from './pinTruth.ts';
import { lazily, type Margins, type TrueFigure } from './truth.ts';

/** Margin by the quantity that a check of the drive looks at. */
type OfQuantity = (quantity: number) => TrueFigure;

/** Margins of the drive’s lengths, angles and way: the engine’s formula on plain numbers at many heights. */
export function shaftMargins(sources: Sources, ids: readonly CheckId[]): Margins {
  const made = marginsOf(sources);
  const told = ids.flatMap((id) => {
    const of = made[id as SeenOfShaft];
    return of === undefined ? [] : [[id as SeenOfShaft & CheckId, of] as const];
  });
  if (told.length === 0) return { ids: [], look: () => ({ margins: [], closes: Infinity }) };
  const { unknowns, question, places } = sources;
  const corner: TrueCorner = (drawn, plusMinusMm) => {
    if (plusMinusMm === 0) return () => exactly(drawn);
    return unknowns.beside({ low: drawn - plusMinusMm, high: drawn + plusMinusMm });
  };
  const look = openShaftTruth(question, { corner, places });
  return {
    ids: told.map(([id]) => id),
    look: (truth) => {
      const seen = look(truth);
      return {
        margins: told.map(([id, of]) => [id, of(seen.get(id) ?? NaN)(truth)] as const),
        closes: seen.get('closes') ?? NaN,
      };
    },
  };
}

function marginsOf({ question, figures }: Sources): Readonly<Partial<Record<SeenOfShaft, OfQuantity>>> {
  const { shaft } = question;
  const { clearance, overlap } = shaft.rules;
  const later = (path: string): TrueFigure => lazily(() => figures.of(path));
  const profile = later('shaft.profileLength');
  const binds = later('shaft.bindAngle');
  const wantedOverlap: TrueFigure = (truth) =>
    overlap.kind === 'length' ? overlap.figure.value : overlap.figure.value * profile(truth);
  const turning = (end: 'tractor' | 'implement'): OfQuantity => {
    const most = angleLimits(shaft, end).turning;
    return (angle) => () => most - angle;
  };
  const raised = (end: 'tractor' | 'implement'): OfQuantity => {
    const { stop } = angleLimits(shaft, end);
    return (angle) => (truth) => (shaft.turnsWhileRaised ? stop : binds(truth)) - angle;
  };
  return {
    'shaft.bottoming': (left) => () => left - clearance.value,
    'shaft.overlap': (left) => (truth) => left - wantedOverlap(truth),
    'shaft.apart': (left) => () => left,
    'shaft.tractorJoint': turning('tractor'),
    'shaft.implementJoint': turning('implement'),
    'shaft.tractorJointRaised': raised('tractor'),
    'shaft.implementJointRaised': raised('implement'),
    'shaft.passage': (room) => () => room - passageClearance.value,
  };
}
