import type { Implement, Tractor } from '@hitchwright/core/records';
import type { PlainChoice } from './plainChoices.ts';

const works: Readonly<Record<NonNullable<Implement['work']>, string>> = {
  brushCutter: 'cutting brush',
  finishMower: 'mowing lawn',
  flailMower: 'mowing with flails',
  discMower: 'mowing hay with discs',
  cutterBarMower: 'mowing hay with a cutter bar',
  rotaryTiller: 'tilling',
  sideRake: 'raking to the side',
  rotaryRake: 'raking, rotary',
  tedder: 'tedding',
  landPlane: 'levelling, with a land plane or box blade',
  plough: 'ploughing',
  subsoiler: 'subsoiling',
  chisel: 'chiselling',
  cultivator: 'cultivating',
  discHarrow: 'harrowing with discs',
  springToothHarrow: 'harrowing with spring teeth',
  spikeToothHarrow: 'harrowing with spikes',
  tineHarrow: 'harrowing with tines',
  packer: 'packing',
  drill: 'drilling',
  rowPlanter: 'planting in rows',
  fertiliserSpreader: 'spreading fertiliser',
};

const wheels: Readonly<Record<NonNullable<Tractor['wheelsDriven']>, string>> = {
  rear: 'the rear wheels',
  all: 'all wheels, the front axle engaged',
};

const tools: PlainChoice['options'] = Array.from({ length: 24 }, (_, i) => [String(i + 1), String(i + 1)] as const);
const remotes: PlainChoice['options'] = ['0', '1', '2', '3', '4', '5', '6'].map((count) => [
  count,
  count === '0' ? 'none' : count,
]);

/** Every chosen field of work and hydraulics by its key, in plain words. */
export const workChoices: Readonly<Record<string, PlainChoice>> = {
  work: { label: 'kind of work it does', options: Object.entries(works) },
  tools: { label: 'shanks, bodies or rows it works with', says: 'number', options: tools },
  wheelsDriven: { label: 'wheels that pull at work', options: Object.entries(wheels) },
  remotes: { label: 'double-acting remotes', says: 'number', options: remotes },
};
