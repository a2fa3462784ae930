export {
  endStep,
  type ClearZone,
  type MovablePath,
  type PinPlan,
  type PinPlanResult,
  type PinRefusal,
  type PinTarget,
} from './plan.ts';
export { planPins } from './planPins.ts';
