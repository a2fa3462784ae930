import type { CheckId } from '../../src/engine/findings/index.ts';
import { openBalanceTruth, type Truth } from '../properties/balanceTruth.ts';
import type { Sources } from './pinTruth.ts';
import { lazily, type Margins, type TrueFigure } from './truth.ts';
import { tyreLimit } from './workTruth.ts';

/** Margin of a check by the axle loads of a truth. */
type OfLoads = (loads: Truth) => TrueFigure;

/** Margins of the axle loads: the engine’s formula on plain numbers at many heights. */
export function balanceMargins(sources: Sources, ids: readonly CheckId[]): Margins {
  const made = marginsOf(sources);
  const told = ids.flatMap((id) => {
    const of = made[id];
    return of === undefined ? [] : [[id, of] as const];
  });
  if (told.length === 0) return { ids: [], look: () => ({ margins: [], closes: Infinity }) };
  const look = openBalanceTruth(sources.question, sources.places);
  return {
    ids: told.map(([id]) => id),
    look: (truth) => {
      const loads = look(truth);
      return { margins: told.map(([id, of]) => [id, of(loads)(truth)] as const), closes: loads.closes };
    },
  };
}

function marginsOf(sources: Sources): Readonly<Partial<Record<CheckId, OfLoads>>> {
  const later = (path: string): TrueFigure => lazily(() => sources.figures.of(path));
  const [front, rear, total] = ['frontAxleLimit', 'rearAxleLimit', 'totalLimit'].map((key) =>
    later(`tractor.${key}`),
  ) as [TrueFigure, TrueFigure, TrueFigure];
  const [frontTyres, rearTyres] = [lazily(() => tyreLimit(sources, 'front')), lazily(() => tyreLimit(sources, 'rear'))];
  return {
    'balance.frontShare':
      ({ spare }) =>
      () =>
        spare,
    'balance.rearShare':
      ({ rearSpare }) =>
      () =>
        rearSpare,
    'limit.frontOfTotal':
      ({ spareOfTotal }) =>
      () =>
        spareOfTotal,
    'limit.frontAxle':
      ({ frontFree }) =>
      (truth) =>
        front(truth) - frontFree,
    'limit.rearAxle': (loads) => (truth) => rear(truth) - loads.rear,
    'limit.totalMass': (loads) => (truth) => total(truth) - loads.total,
    'limit.frontTyres':
      ({ frontFree }) =>
      (truth) =>
        frontTyres(truth) - frontFree,
    'limit.rearTyres': (loads) => (truth) => rearTyres(truth) - loads.rear,
  };
}
