import type { BalanceStation, BalanceSweep } from '../../engine/balance/index.ts';
import type { Station } from '../../engine/lift/index.ts';
import type { Scene, Item, Tone } from '../scene.ts';
import { widthOf } from '../lettering.ts';
import { line } from '../strokes.ts';
import { grouped, inUnit } from '../side/liftPlot.ts';
import { openPair } from '../side/plots.ts';
import type { ViewPlan } from '../side/plan.ts';
import {
  across,
  curve,
  figureRows,
  frameItems,
  isWide,
  limitLabel,
  ring,
  roundTicks,
  ruledOut,
  type Plot,
  type PlotFrame,
  type PlotPlace,
} from '../side/plotFrame.ts';
import type { SideLayout } from '../side/sideLayout.ts';
import type { SideStage } from '../side/sideStage.ts';
import { machinesOf } from '../side/words.ts';
import { alwaysSaid, heightSentences, massOf, ruleText, spareOf, stateWords } from './balanceWords.ts';
import { frontStateAt, isMissing, rearLoad } from './masses.ts';

/** Opens the plots of the axle loads against ball height: the front axle against what is wanted there, and the rear axle. */
export function openAxlePlots(
  stage: SideStage,
  balance: BalanceSweep,
  plan: ViewPlan,
  beside: SideLayout | null,
): (station: number) => Scene {
  const { system } = plan;
  return openPair(stage, plan, beside, {
    title: `Axle loads through the lift: ${machinesOf(stage)}`,
    left: (place) => frontPlot(balance, place),
    right: (place) => rearPlot(balance, place),
    here: (index) => heightSentences(balance, balance.stations[index] as BalanceStation, system),
    always: [
      ...alwaysSaid(stage.setup, stage.answer, balance, system),
      `Wanted in front: ${ruleText(balance)}.`,
      'Hatched: the side that is ruled out.',
    ],
  });
}

/** What the front axle carries at every height, against what is wanted there; less is ruled out. */
function frontPlot(balance: BalanceSweep, place: PlotPlace): Plot {
  const { stations } = balance;
  const { system } = place.pen;
  const wanted = Math.max(...stations.map((station) => station.wanted));
  const fronts = stations.map(({ front }) => front);
  const frame = frameFor(place, Math.min(0, ...fronts), Math.max(wanted, ...fronts));
  const limit = across(frame, inUnit(wanted, system));
  return {
    still: [
      ...ruledOut(frame, frame.least, inUnit(wanted, system), frame.low, frame.high),
      ...(frame.least < 0 ? [line('centre', [across(frame, 0), frame.low], [across(frame, 0), frame.high])] : []),
      line('misfit', [limit, frame.low], [limit, frame.high]),
      ...frameItems(frame, isWide(frame) ? 'Load on the front axle' : 'Front axle', tickText),
      limitLabel(frame, inUnit(wanted, system), `wanted ${massOf(wanted, system, 'up').text}`, 'accent'),
      ...curveOf(balance, frame, ({ front }) => front),
    ],
    moving: (station) => {
      const here = stationFor(balance, station);
      const state = frontStateAt(balance, here);
      const isBad = isMissing(state);
      const words = state === 'lifted' ? 'off the ground' : stateWords[state];
      return [
        ...figureRows(frame, spareOf(here, system), words, isBad ? 'accent' : 'ink'),
        ring(frame, 'heavy', inUnit(here.front, system), here.ballHeight),
      ];
    },
  };
}

/** What the rear axle carries at every height, against what it may, where that is known. */
function rearPlot(balance: BalanceSweep, place: PlotPlace): Plot {
  const { system } = place.pen;
  const limit = balance.permitted.rear;
  const rears = balance.stations.map(rearLoad);
  const frame = frameFor(place, 0, Math.max(limit ?? 0, ...rears));
  return {
    still: [
      ...(limit === null ? [] : limitItems(frame, limit)),
      ...frameItems(frame, isWide(frame) ? 'Load on the rear axle' : 'Rear axle', tickText),
      ...curveOf(balance, frame, rearLoad),
    ],
    moving: (station) => {
      const here = stationFor(balance, station);
      const load = rearLoad(here);
      const isOver = limit !== null && load > limit;
      const words = limit === null ? 'limit not known' : isOver ? 'over its limit' : 'carried';
      const tone: Tone = isOver ? 'accent' : 'ink';
      return [
        ...figureRows(frame, massOf(load, system, 'up').text, words, tone),
        ring(frame, 'heavy', inUnit(load, system), here.ballHeight),
      ];
    },
  };
}

function limitItems(frame: PlotFrame, limit: number): Item[] {
  const { system } = frame.pen;
  const value = inUnit(limit, system);
  const x = across(frame, value);
  return [
    ...ruledOut(frame, value, frame.most, frame.low, frame.high),
    line('misfit', [x, frame.low], [x, frame.high]),
    limitLabel(frame, value, `limit ${massOf(limit, system, 'down').text}`, 'accent'),
  ];
}

function curveOf({ stations }: BalanceSweep, frame: PlotFrame, loadAt: (station: BalanceStation) => number): Item[] {
  const points = stations.map((one) => [inUnit(loadAt(one), frame.pen.system), one.ballHeight] as const);
  return curve(frame, 'heavy', points);
}

/** The axle loads at a station of the lift: both sweeps go up in the same steps. */
function stationFor({ stations }: BalanceSweep, { ballHeight }: Station): BalanceStation {
  return stations.reduce((a, b) => (Math.abs(b.ballHeight - ballHeight) < Math.abs(a.ballHeight - ballHeight) ? b : a));
}

function tickText(tick: number): string {
  return tick < 0 ? `−${grouped(-tick)}` : grouped(tick);
}

function frameFor(place: PlotPlace, least: number, most: number): PlotFrame {
  const { system, sheet, perPaper } = place.pen;
  const [from, to] = [inUnit(least, system) * 1.3, inUnit(most, system) * 1.08];
  const room = (place.right - place.left) / perPaper;
  return {
    ...place,
    least: from,
    most: to,
    ticks: roundTicks(from, to, room, (tick) => widthOf(tickText(tick), sheet.letters.note)),
  };
}
