import { unitNameIn, type Dimension, type UnitSystem } from './dimensions.ts';
import { unitNamed } from './findUnit.ts';
import type { Grid } from './grid.ts';

/** How one dimension is printed in one system. */
export interface Form {
  readonly unit: string;
  readonly grid: Grid;
  readonly style: FormStyle;
  /** Digits after the point, for the decimal styles. */
  readonly decimals: number;
}

/** A reduced fraction, a decimal, or a decimal with commas between thousands. */
type FormStyle = 'fraction' | 'decimal' | 'grouped';

const usualStep: Readonly<Record<Dimension, Readonly<Record<UnitSystem, number>>>> = {
  length: { us: 16, metric: 1 },
  mass: { us: 1, metric: 1 },
  force: { us: 1, metric: 1 },
  power: { us: 0.1, metric: 0.1 },
  torque: { us: 1, metric: 1 },
  speed: { us: 0.1, metric: 0.1 },
  rotation: { us: 1, metric: 1 },
  flow: { us: 0.1, metric: 0.1 },
  pressure: { us: 1, metric: 1 },
  angle: { us: 0.1, metric: 0.1 },
};

/** The form for a dimension and system; `step` is a denominator for inches and the smallest printed step elsewhere. */
export function formOf(dimension: Dimension, system: UnitSystem, step = usualStep[dimension][system]): Form {
  const unit = unitNamed(unitNameIn(system, dimension));
  const shown = dimension === 'angle' ? '°' : unit.name;
  if (unit.name === 'in') return inchForm(step, unit.factor);
  const decimals = decimalsOf(step);
  const grid = { up: Math.round(step * 10 ** decimals), per: 10 ** decimals, factor: unit.factor };
  return { unit: shown, grid, decimals, style: unit.customary ? 'grouped' : 'decimal' };
}

function inchForm(denominator: number, factor: number): Form {
  if (!Number.isInteger(denominator) || denominator < 1) {
    throw new RangeError(`An inch is divided into a whole number of parts, not ${denominator}`);
  }
  return { unit: 'in', grid: { up: 1, per: denominator, factor }, decimals: 0, style: 'fraction' };
}

const mostDecimals = 6;

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals <= mostDecimals; decimals += 1) {
    const scaled = step * 10 ** decimals;
    if (scaled >= 0.5 && Math.abs(scaled - Math.round(scaled)) < 1e-9 * scaled) return decimals;
  }
  throw new RangeError(`${step} is no step that can be printed`);
}
