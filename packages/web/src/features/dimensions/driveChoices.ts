import { driveRuleNames, ptoType, ptoTypeNumbers } from '@hitchwright/core/tables';
import { printBoth } from '@hitchwright/core/units';
import { driveRuleWords } from '@hitchwright/core/words';
import type { PlainChoice } from './plainChoices.ts';

const splines: PlainChoice['options'] = ptoTypeNumbers.map((number) => {
  const { splines, diameter } = ptoType(number);
  return [String(number), `${splines.value} splines, ${printBoth(diameter.value, 'length', { system: 'us' })}`];
});

const turns: Pick<PlainChoice, 'usual' | 'options'> = {
  usual: 'clockwise',
  options: [
    ['clockwise', 'clockwise, seen from behind the tractor'],
    ['counterclockwise', 'counterclockwise, seen from behind the tractor'],
  ],
};

const joints: Pick<PlainChoice, 'usual' | 'options'> = {
  usual: 'single',
  options: [
    ['single', 'one cross'],
    ['wideAngle', 'wide-angle joint with two crosses'],
  ],
};

/** Every chosen field of a drive by its key, in plain words. */
export const driveChoices: Readonly<Record<string, PlainChoice>> = {
  driven: {
    label: 'does a drive shaft drive it?',
    says: 'yesOrNo',
    options: [
      ['yes', 'yes'],
      ['no', 'no'],
    ],
  },
  turnsWhileRaised: {
    label: 'while it is raised to carry',
    says: 'yesOrNo',
    usual: 'yes',
    options: [
      ['yes', 'the drive may keep turning'],
      ['no', 'the drive is off before it leaves the ground'],
    ],
  },
  inputType: { label: 'splines of its input shaft', says: 'number', options: splines },
  inputSpeed: {
    label: 'speed it is made to be driven at',
    says: 'number',
    options: [
      ['540', '540 rpm'],
      ['1000', '1000 rpm'],
    ],
  },
  inputTurns: { label: 'its input shaft has to turn', ...turns },
  ptoType: { label: 'splines of the PTO stub', says: 'number', options: splines },
  ptoSpeeds: {
    label: 'speeds the PTO can be set to',
    says: 'numbers',
    options: [
      ['540', '540 rpm'],
      ['1000', '1000 rpm'],
      ['540, 1000', '540 and 1000 rpm'],
      ['540, 750', '540 and 750 rpm'],
      ['540, 750, 1000', '540, 750 and 1000 rpm'],
    ],
  },
  ptoTurns: { label: 'the PTO turns', ...turns },
  tractorType: { label: 'splines of its yoke for the tractor', says: 'number', options: splines },
  implementType: { label: 'splines of its yoke for the implement', says: 'number', options: splines },
  jointFront: { label: 'joint at the tractor', ...joints },
  jointRear: { label: 'joint at the implement', ...joints },
  series: {
    label: 'size of its joints, as the trade numbers them',
    says: 'number',
    options: ['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((size) => [size, `size ${size}`] as const),
  },
  limiter: {
    label: 'what limits its torque',
    options: [
      ['none', 'nothing'],
      ['shearBolt', 'shear bolt'],
      ['slipClutch', 'slip clutch'],
      ['overrunning', 'overrunning clutch alone'],
    ],
  },
  driveShaft: {
    label: 'rules the drive shaft is judged by',
    usual: 'usual',
    options: driveRuleNames.map((name) => [name, driveRuleWords[name].toLowerCase()] as const),
  },
};
