import { planPins, type PinPlanResult } from '../engine/pinplan/index.ts';
import { withEdits, type SetupDocument } from '../records/index.ts';

/**
 * Where the pins of an implement would have to sit for it to take a coupler.
 *
 * @param document a setup document; its tractor may be empty where the coupler is a frame [JSON]
 * @param options a coupler to plan for in place of the setup’s own [JSON]
 * @returns the plan, why there is none, or every error in the input [mm]
 * @example pinPlan(document, { coupler: { kind: 'uFrame', hookSpan: 712 } })
 */
export function pinPlan(document: SetupDocument, options: { readonly coupler?: SetupDocument } = {}): PinPlanResult {
  const { coupler } = options;
  return planPins(coupler === undefined ? document : withEdits(document, [{ path: 'coupler', value: coupler }]));
}
