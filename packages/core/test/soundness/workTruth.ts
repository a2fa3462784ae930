import type { CheckId } from '../../src/engine/findings/index.ts';
import { draft, draftRows, drawbarPower } from '../../src/engine/power/index.ts';
import {
  drivenMachines,
  guardOverlap,
  highestOf,
  loadIndexMass,
  lowestOf,
  ptoDemand,
  seriesPower,
  soils,
  type SeriesNumber,
} from '../../src/tables/index.ts';
import type { Sources } from './pinTruth.ts';
import { atLeast, atMost, less, pointOf, type Margin, type TrueFigure } from './truth.ts';

type Made = Readonly<Partial<Record<CheckId, () => Margin>>>;

/**
 * Margins of checks that compare a figure or two, on plain numbers, from docs/method: what the power, the size and the
 * limiter of a shaft, the width, the pull and the oil come to, and what pins, couplers and brackets are rated for.
 */
export function workMargins(sources: Sources): Made {
  return { ...powerMargins(sources), ...ratedMargins(sources), ...oilMargins(sources) };
}

/** A figure that no check keeps in the ledger, by what was said of it. */
function said({ question, unknowns }: Sources, path: string): TrueFigure {
  const value = question.ledger.value(path);
  if (value === undefined || !('bound' in value)) throw new Error(`nothing said of ${path}`);
  return pointOf(unknowns.beside(value.bound));
}

function powerMargins(sources: Sources): Made {
  const { figures, question } = sources;
  const { of } = figures;
  const { shaft, implement } = question.joint.setup;
  const speed = implement.inputSpeed ?? 540;
  /** N·m that a kilowatt is at the speed of the shaft. */
  const torque = (power: number): number => (power * 1000 * 60) / (2 * Math.PI * speed);
  return {
    'shaft.power': () => atLeast(powerWanted(sources), of('tractor.ptoPower')),
    'shaft.series': () => {
      const rows = seriesPower(shaft?.series as SeriesNumber, speed as 540 | 1000);
      return atMost(Math.min(...rows.map(({ value }) => value)), of('implement.powerWanted'));
    },
    'limit.shields': () => {
      const [front, rear] = [of('shaft.shieldOverlapFront'), of('shaft.shieldOverlapRear')];
      return atLeast(guardOverlap.value, (truth) => Math.min(front(truth), rear(truth)));
    },
    'limit.limiter': () => {
      const wanted = of('implement.powerWanted');
      return atLeast((truth) => torque(wanted(truth)), of('shaft.limiterTorque'));
    },
    'limit.powerMost': () => less(of('implement.powerMost'), of('tractor.ptoPower')),
    'limit.width': () => less(of('implement.workWidth'), of('tractor.outerWidth')),
    'limit.draft': () => draftMargin(sources),
  };
}

/** Where a table tells one figure, the truth is told to lie so near to it (docs/method/power.md). */
const besideOneFigure = 0.4;

/** Where the power was not read: a machine of its kind, its width, and what a metre of it takes. */
function powerWanted(sources: Sources): TrueFigure {
  const { question, figures, unknowns } = sources;
  if (question.ledger.given('implement.powerWanted')) return figures.of('implement.powerWanted');
  const machine = drivenMachines.find((one) => one === question.joint.setup.implement.work);
  if (machine === undefined) throw new Error('no row of power by the width');
  const row = ptoDemand(machine);
  const [low, high] = [lowestOf(row), highestOf(row)];
  const off = low === high ? besideOneFigure * low : 0;
  const perMetre = pointOf(unknowns.beside({ low: low - off, high: high + off }));
  const width = said(sources, 'implement.workWidth');
  return (truth) => (perMetre(truth) * width(truth)) / 1000;
}

/** A build of the implement, a soil, and how far the table is off for it: each by itself, as in the field. */
function draftMargin(sources: Sources): Margin {
  const { question, figures, unknowns } = sources;
  const { work, tools = 0 } = question.joint.setup.implement;
  if (work === undefined) throw new Error('no work');
  const rows = draftRows(work);
  const pick = (count: number): TrueFigure => {
    const share = pointOf(unknowns.beside({ low: 0, high: 1 }));
    return (truth) => Math.min(count - 1, Math.floor(share(truth) * count));
  };
  const [build, texture] = [pick(rows.length), pick(soils.length)];
  const off = pointOf(unknowns.beside({ low: -1, high: 1 }));
  const [speed, power, share] = ['implement.workSpeed', 'tractor.ptoPower', 'tractor.drawbarShare'].map((path) =>
    figures.of(path),
  ) as [TrueFigure, TrueFigure, TrueFigure];
  const width = rows.some(({ per }) => per === 'metre') ? figures.of('implement.workWidth') : null;
  const depth = rows.some(({ byDepth }) => byDepth) ? figures.of('implement.workDepth') : null;
  return (truth) => {
    const row = rows[build(truth)] as (typeof rows)[number];
    const terms = { a: row.a.value, b: row.b.value, c: row.c.value };
    const factor = row.soil[soils[texture(truth)] as (typeof soils)[number]].value;
    const counted = width === null ? tools : width(truth) / 1000;
    const pull = draft(terms, factor, speed(truth), counted, row.byDepth && depth !== null ? depth(truth) / 10 : 1);
    const wanted = drawbarPower(pull * (1 + off(truth) * row.spread.value), speed(truth));
    return share(truth) * power(truth) - wanted;
  };
}

function ratedMargins({ question, figures }: Sources): Made {
  const { of } = figures;
  const carried = question.ledger.given('implement.carriedMass') ? of('implement.carriedMass') : (): number => 0;
  return {
    'limit.couplerLoad': () => less(of('coupler.ratedLoad'), of('implement.mass'), carried),
    'limit.frontBracket': () => less(of('tractor.frontBracketLimit'), of('tractor.frontWeightMass')),
  };
}

/** Two figures that no margin is told of: only whether the check passes or fails can be held against them. */
function oilMargins(sources: Sources): Made {
  const compared = (given: string, wanted: string) => (): Margin => less(said(sources, given), said(sources, wanted));
  return {
    'limit.flow': compared('tractor.remoteFlow', 'implement.flowWanted'),
    'limit.pressure': compared('tractor.remotePressure', 'implement.pressureWanted'),
  };
}

/** What both tyres of an axle may carry: as said, or by their load index. */
export function tyreLimit({ question, figures }: Sources, axle: 'front' | 'rear'): TrueFigure {
  const path = `tractor.${axle}TyreLimit`;
  if (question.ledger.given(path)) {
    const one = figures.of(path);
    return (truth) => 2 * one(truth);
  }
  const { frontTyreIndex, rearTyreIndex } = question.joint.setup.tractor;
  const mass = loadIndexMass((axle === 'front' ? frontTyreIndex : rearTyreIndex) ?? 0) ?? NaN;
  return () => 2 * mass;
}
