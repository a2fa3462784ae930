import { openEnclosure, type Enclosure } from './enclose.ts';
import { openWorkspace, type Workspace } from './evaluate.ts';
import { Op, type Formula, type Step } from './formula.ts';
import { laneOf, openGradients, type Gradients } from './gradients.ts';

/** Everything that is made once to bound results of a formula at a number of places, and used for every box. */
export interface Rooms {
  readonly formula: Formula;
  readonly places: number;
  readonly enclosure: Enclosure;
  readonly gradients: Gradients;
  /** Values at the middle of every range. */
  readonly middles: Workspace;
  /** Values where a bound is taken, and where each input is put for it, place by place. */
  readonly corners: Workspace;
  readonly spots: readonly Float64Array[];
  /** 1 for every input that is more than one number somewhere. */
  readonly isOpen: Uint8Array;
  /** The step of each input, by its number. */
  readonly inputSteps: readonly Step[];
  /** How far one step can be from its middle, by place: each step uses it anew. */
  readonly away: Float64Array;
}

/** Makes the rooms; with `wide`, leaves too may differ from place to place. */
export function openRooms(formula: Formula, places: number, wide = false): Rooms {
  const enclosure = openEnclosure(formula, places, wide);
  const inputSteps: Step[] = [];
  formula.ops.forEach((op, step) => {
    if (op === Op.leaf) inputSteps[formula.detail[step] as number] = step;
    if (op === Op.lane) inputSteps[laneOf(formula)] = step;
  });
  const inputCount = laneOf(formula) + 1;
  return {
    formula,
    places,
    enclosure,
    gradients: openGradients(enclosure),
    middles: openWorkspace(formula, places, wide),
    corners: openWorkspace(formula, places, true),
    spots: Array.from({ length: inputCount }, () => new Float64Array(places)),
    isOpen: new Uint8Array(inputCount),
    inputSteps,
    away: new Float64Array(places),
  };
}
