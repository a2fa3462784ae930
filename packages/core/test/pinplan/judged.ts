import { judgeSetup } from '../../src/engine/assess/index.ts';
import type { PinPlan, PinPlanResult, PinRefusal } from '../../src/engine/pinplan/index.ts';
import { planPins } from '../../src/engine/pinplan/index.ts';
import { readSetup, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';

/** The plan for a setup that has one. */
export function planOf(document: SetupDocument): PinPlan {
  const result = planPins(document);
  if (!result.ok) throw new Error(JSON.stringify(result.refused));
  return result.plan;
}

/** Why there is no plan for a setup. */
export function refusalOf(document: SetupDocument): PinRefusal {
  const result: PinPlanResult = planPins(document);
  if (result.ok || result.refused === null) throw new Error(JSON.stringify(result));
  return result.refused;
}

/** One target of a plan. */
export function target(plan: PinPlan, key: string) {
  const found = plan.targets.find(({ path }) => path === `implement.${key}`);
  if (found === undefined) throw new Error(`no target ${key}`);
  return found;
}

/** The checks of a plan that do not pass with its pins put somewhere, the whole setup judged afresh. */
export function unmetAt(plan: PinPlan, places: readonly Edit[]): string[] {
  const reading = readSetup(withEdits(plan.planned, places));
  // A hole beyond the tip of its pin is no setup at all.
  if (!reading.ok) return reading.errors.map(({ code, path }) => `${code} ${path}`);
  const { findings } = judgeSetup(reading.setup, { thresholds: false });
  return findings.filter(({ id, status }) => plan.checks.includes(id) && status !== 'pass').map(({ id }) => id);
}
