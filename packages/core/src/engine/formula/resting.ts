import { Op, type Formula, type Step } from './formula.ts';

/** Every step whose value rests on a leaf. */
export function stepsResting(formula: Formula, leaf: number): Int32Array {
  const rests = new Uint8Array(formula.ops.length);
  for (let step = 0; step < rests.length; step += 1) {
    const [first, second] = [formula.first[step] as Step, formula.second[step] as Step];
    const isLeaf = formula.ops[step] === Op.leaf && formula.detail[step] === leaf;
    const reads = (first >= 0 && rests[first] === 1) || (second >= 0 && rests[second] === 1);
    rests[step] = isLeaf || reads ? 1 : 0;
  }
  return Int32Array.from([...rests.keys()].filter((step) => rests[step] === 1));
}
