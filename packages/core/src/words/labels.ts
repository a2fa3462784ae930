import { fieldRules } from '../records/index.ts';

const machines: Readonly<Record<string, string>> = {
  implement: 'implement',
  tractor: 'tractor',
  coupler: 'coupler',
  'coupler.front': 'coupler’s front',
  shaft: 'drive shaft',
  'implement.secondRow': 'implement’s second pin row',
};

const others: Readonly<Record<string, string>> = {
  'implement.mounting': 'how the implement is mounted',
  'implement.floatSits': 'whether the float sits at the upper pin or behind it',
  'implement.driven': 'whether a drive shaft drives the implement',
  'tractor.liftSupplyShare': 'what the lift truly pulls',
  'tractor.liftEfficiency': 'how much of its push the lift cylinder passes on',
  'tractor.ptoType': 'how many splines the PTO stub has',
  'tractor.ptoSpeeds': 'how fast the PTO turns',
  'implement.inputType': 'how many splines the input shaft has',
  'implement.inputSpeed': 'how fast the implement has to be driven',
  'shaft.triedByHand': 'how the shaft stands at every height, tried by hand as the manual of the implement says',
  'shaft.tractorType': 'how many splines the shaft’s yoke for the tractor has',
  'shaft.implementType': 'how many splines the shaft’s yoke for the implement has',
  'implement.draftShare': 'how hard the work pulls in its soil',
  'tractor.drawbarShare': 'how much of the PTO power is left at the drawbar',
  'implement.receiver': 'whether the implement carries the counterpart of this coupler',
};

/**
 * What an input is called: `shoulder span of the implement`, `ball spread of the tractor, at its widest`.
 *
 * @param path field path, with dots [text]
 * @returns what a person calls it [text]
 */
export function labelOf(path: string): string {
  const { field, end } = parts(path);
  const rule = fieldRules.get(field);
  if (rule === undefined) return others[path] ?? path;
  const machine = machines[field.slice(0, field.lastIndexOf('.'))] ?? field;
  const owner = rule.label.endsWith(`of the ${machine}`) ? '' : ` of the ${machine}`;
  return `${rule.label}${owner}${end}`;
}

/**
 * Where the tape goes for an input, or an empty text where nothing is measured.
 *
 * @param path field path, with dots [text]
 * @returns one sentence, or an empty text [text]
 */
export function howToMeasure(path: string): string {
  return fieldRules.get(parts(path).field)?.measure ?? '';
}

/**
 * The field a path belongs to: limits and stops of an adjustable field lie below it.
 *
 * @param path field path, with dots [text]
 * @returns the field’s path [text]
 */
export function fieldOf(path: string): string {
  return parts(path).field;
}

function parts(path: string): { field: string; end: string } {
  const [field = path, below] = path.split('.adjustable.');
  if (below === undefined) return { field, end: '' };
  if (below === 'between.0') return { field, end: ', at its smallest' };
  if (below === 'between.1') return { field, end: ', at its largest' };
  return { field, end: `, hole ${Number(below.slice('at.'.length)) + 1}` };
}
