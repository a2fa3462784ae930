import type { Answer } from '../engine/assess/index.ts';
import { cycleTime, cylinderForce, fieldCapacity, paceOf } from '../engine/power/index.ts';
import type { Bound, Setup } from '../records/index.ts';
import { highestOf, lowestOf, type Figure } from '../tables/index.ts';
import { mmPerInch, printBoth, type Dimension, type Rounding, type UnitSystem } from '../units/index.ts';

/**
 * What is worth saying of power, pace and hydraulics beside the findings: ground worked in an hour, what the drawbar has to
 * give, what the implement’s cylinder manages on this tractor.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @param setup the setup of the answer; nothing is said of its pace without it [record]
 * @returns sentences, null where there is nothing to say [texts]
 */
export function workRemarks(answer: Answer, system: UnitSystem, setup?: Setup): (string | null)[] {
  return [
    rateRemark(answer, system, setup?.implement.work),
    drawbarRemark(answer, system),
    forceRemark(answer, system),
    cycleRemark(answer),
  ];
}

const boundOf = (row: Figure): Bound => ({ low: lowestOf(row), high: highestOf(row) });

/** Printed where both ends print alike as one. */
function ranged({ low, high }: Bound, print: (value: number) => string): string {
  const [least, most] = [print(low), print(high)];
  return least === most ? least : `${least} to ${most}`;
}

/** [mm²] */
const acre = 43560 * (12 * mmPerInch) ** 2;
const hectaresPerAcre = acre / 1e10;

/** Ground worked in an hour: rounded down, in the person's unit first. */
function rateText(rate: Bound, system: UnitSystem): string {
  const down = (value: number, decimals: number): string =>
    (Math.floor(value * 10 ** decimals + 1e-9) / 10 ** decimals).toFixed(decimals);
  const acres = `${ranged(rate, (value) => down(value / hectaresPerAcre, 1))} acres/h`;
  const hectares = `${ranged(rate, (value) => down(value, 2))} ha/h`;
  return system === 'us' ? `${acres} (${hectares})` : `${hectares} (${acres})`;
}

function rateRemark({ figures }: Answer, system: UnitSystem, work?: Setup['implement']['work']): string | null {
  const width = figures['implement.workWidth'];
  const pace = work === undefined ? null : paceOf(work);
  if (width === undefined || pace === null) return null;
  const usual = pace.speed === null ? undefined : boundOf(pace.speed);
  const speed = figures['implement.workSpeed'] ?? usual;
  if (speed === undefined) return null;
  const efficiency = boundOf(pace.efficiency);
  const at = (end: 'low' | 'high'): number => fieldCapacity(width[end] / 1000, speed[end], efficiency[end]);
  const rate = rateText({ low: at('low'), high: at('high') }, system);
  const pacedBy = speed === usual ? 'its usual ' : '';
  const going = ranged(speed, (value) => printBoth(value, 'speed', { system }));
  const recalled = pace.efficiency.status === 'memory' ? ', a share from memory' : '';
  const share = ranged(efficiency, (value) => (value * 100).toFixed(0));
  return `At ${pacedBy}${going} it works ${rate}: turning and overlap leave ${share} % of speed times width${recalled}.`;
}

/** What the work takes at the drawbar and what is there, whichever way the check of it went. */
function drawbarRemark({ findings }: Answer, system: UnitSystem): string | null {
  const finding = findings.find(({ id }) => id === 'limit.draft');
  const [given, margin, least] = [finding?.quantity, finding?.margin, finding?.band?.low];
  if (given?.low == null || margin?.low == null || least == null) return null;
  const power = (round: Rounding) => (value: number) => printBoth(value, 'power', { system, round });
  const taken = ranged({ low: least, high: given.low - margin.low }, power('up'));
  return `At work it takes ${taken} at the drawbar, from light soil to heavy; on firm soil this tractor has ${power('down')(given.low)} there.`;
}

/** A cylinder of the implement, as a splitter's, on this tractor's remote. */
function forceRemark({ figures }: Answer, system: UnitSystem): string | null {
  const [bore, pressure] = [figures['implement.cylinderBore'], figures['tractor.remotePressure']];
  if (bore === undefined || pressure === undefined) return null;
  const print = (value: number, dimension: Dimension): string =>
    printBoth(value, dimension, { system, round: 'down', step: dimension === 'force' ? 100 : 1 });
  const force = print(cylinderForce(pressure.low, bore.low), 'force');
  return `On ${print(pressure.low, 'pressure')} of this tractor its cylinder pushes with ${force}, friction and its own valve left out.`;
}

function cycleRemark({ figures }: Answer): string | null {
  const [bore, rod] = [figures['implement.cylinderBore'], figures['implement.cylinderRod']];
  const [stroke, flow] = [figures['implement.cylinderStroke'], figures['tractor.remoteFlow']];
  if (bore === undefined || rod === undefined || stroke === undefined || flow === undefined) return null;
  if (rod.high >= bore.low) return null;
  const { out, back } = cycleTime(bore.high, rod.low, stroke.high, flow.low);
  const seconds = (time: number): string => `${(Math.ceil(time * 10 - 1e-9) / 10).toFixed(1)} s`;
  return `On this tractor’s flow the cylinder comes out in ${seconds(out)} and goes back in ${seconds(back)}, ${seconds(out + back)} for both.`;
}
