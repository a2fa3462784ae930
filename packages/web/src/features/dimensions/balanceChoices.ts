import { loaderStates } from '@hitchwright/core/records';
import {
  fullestFill,
  loadIndexMass,
  steeringRuleNames,
  tyreFluids,
  tyreSizes,
  type TyreFluid,
} from '@hitchwright/core/tables';
import { printBoth } from '@hitchwright/core/units';
import { steeringRuleWords } from '@hitchwright/core/words';
import type { PlainChoice } from './plainChoices.ts';

const fluidNames: Readonly<Record<TyreFluid, string>> = {
  water: 'water',
  calciumChloride2lb: 'calcium chloride, 2 lb to the gallon',
  calciumChloride3_5lb: 'calcium chloride, 3.5 lb to the gallon',
  calciumChloride5lb: 'calcium chloride, 5 lb to the gallon',
  beetJuice: 'beet juice',
  ethyleneGlycol38: 'ethylene glycol, 38 %',
  ethyleneGlycol50: 'ethylene glycol, 50 %',
  propyleneGlycol40: 'propylene glycol, 40 %',
  propyleneGlycol50: 'propylene glycol, 50 %',
  methanol30: 'methanol, 30 %',
  methanol35: 'methanol, 35 %',
  methanol40: 'methanol, 40 %, such as washer fluid',
  magnesiumChloride21: 'magnesium chloride, 21 %',
  magnesiumChloride25: 'magnesium chloride, 25 %',
};

const loaderNames: Readonly<Record<(typeof loaderStates)[number], string>> = {
  absent: 'off',
  empty: 'on, empty',
  loaded: 'on, with a load',
};

/** The load indices that tractor tyres carry; one that a document says beside them is kept. */
const [leastIndex, greatestIndex] = [50, 175] as const;

const indices: PlainChoice['options'] = Array.from({ length: greatestIndex - leastIndex + 1 }, (_, i) => leastIndex + i)
  .map((index) => [index, loadIndexMass(index)] as const)
  .flatMap(([index, mass]) =>
    mass === null ? [] : [[String(index), `${index}: ${printBoth(mass, 'mass', { system: 'us' })} a tyre`] as const],
  );

const fills = [40, 50, 60, fullestFill.value * 100];

/** Every chosen field of axles and ballast by its key, in plain words. */
export const balanceChoices: Readonly<Record<string, PlainChoice>> = {
  steeringShare: {
    label: 'rule the steering is judged by',
    usual: 'ofTractor',
    options: steeringRuleNames.map((name) => [name, steeringRuleWords[name].toLowerCase()] as const),
  },
  loader: {
    label: 'the front loader is',
    options: loaderStates.map((state) => [state, loaderNames[state]] as const),
  },
  weighedWithLoader: {
    label: 'was it on, empty, when the tractor was weighed?',
    says: 'yesOrNo',
    usual: 'no',
    options: [
      ['no', 'no'],
      ['yes', 'yes'],
    ],
  },
  size: { label: 'liquid in the rear tyres: their size', options: tyreSizes.map((size) => [size, size] as const) },
  fluid: {
    label: 'what is in them',
    required: true,
    options: tyreFluids.map((fluid) => [fluid, fluidNames[fluid]] as const),
  },
  fill: {
    label: 'how full they are',
    says: 'number',
    usual: String(fullestFill.value * 100),
    options: fills.map((fill) => [
      String(fill),
      `${fill} %${fill === fullestFill.value * 100 ? ', valve at the top' : ''}`,
    ]),
  },
  frontTyreIndex: { label: 'load index of a front tyre', says: 'number', options: indices },
  rearTyreIndex: { label: 'load index of a rear tyre', says: 'number', options: indices },
};
