import type { Mismatch } from '../engine/findings/index.ts';
import { ptoType, type PtoTypeNumber } from '../tables/index.ts';
import type { Setup } from '../records/index.ts';

/**
 * What of a drive does not go together, in one sentence.
 *
 * @param mismatch what does not match [name]
 * @param setup a setup that was read [record]
 * @returns one sentence [text]
 */
export function mismatchSentence(mismatch: Mismatch, { tractor, implement, shaft }: Setup): string {
  const [stub, input] = [splines(tractor.ptoType), splines(implement.inputType)];
  switch (mismatch) {
    case 'tractorSplines':
      return `The tractor’s stub has ${stub}, the shaft’s yoke is made for ${splines(shaft?.tractorType)}.`;
    case 'implementSplines':
      return `The input shaft has ${input}, the shaft’s yoke is made for ${splines(shaft?.implementType)}.`;
    case 'stubAndInput':
      return `The tractor’s stub has ${stub}, the implement’s input ${input}: no plain shaft joins them, and an adaptor is not offered.`;
    case 'speed':
      return `It is made for ${implement.inputSpeed} rpm, the tractor’s PTO turns at ${speeds(tractor)} rpm. Nothing that joins them makes that right.`;
    case 'direction':
      return 'The tractor’s PTO turns the other way than the implement has to be turned.';
  }
}

function splines(type: PtoTypeNumber | undefined): string {
  return type === undefined ? 'splines not told' : `${ptoType(type).splines.value} splines`;
}

function speeds({ ptoSpeeds, ptoType: type }: Setup['tractor']): string {
  const offered = ptoSpeeds ?? (type === undefined ? [] : [ptoType(type).speed.value]);
  return offered.join(' or ');
}
