import type { Scene } from '../scene.ts';
import { openPair } from '../side/plots.ts';
import type { ViewPlan } from '../side/plan.ts';
import type { SideLayout } from '../side/sideLayout.ts';
import type { SideStage } from '../side/sideStage.ts';
import { machinesOf } from '../side/words.ts';
import { anglePlot } from './anglePlot.ts';
import type { Driven } from './driven.ts';
import { shaftAlways } from './shaftWords.ts';
import { spanPlot } from './spanPlot.ts';

/** Opens the plots of a drive shaft: overlap and angles of both joints against ball height. */
export function openShaftPlots(
  stage: SideStage,
  driven: Driven,
  plan: ViewPlan,
  beside: SideLayout | null,
): (station: number) => Scene {
  return openPair(stage, plan, beside, {
    title: `Drive shaft through the lift: ${machinesOf(stage)}`,
    left: (place) => spanPlot(driven, place),
    right: (place) => anglePlot(driven, place),
    always: [...shaftAlways(stage.setup, driven, plan.system), 'Hatched: what is ruled out.'],
  });
}
