import { figureSentence } from '../figureText.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { arc, body, circle, hatch, line, rectangle } from '../strokes.ts';
import type { TopHook } from '../upper.ts';
import { gapAreas } from '../gapAreas.ts';
import type { Misfit } from '../misfit.ts';
import { lettering, showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';
import { printQuantity } from '../../units/index.ts';

const left = 62;
const below = 34;

/** Top hook and upper pin in section, seen from the left: how far the pin is from where it can sit. */
export function topHookDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const hook = stage.upper.hook as TopHook;
  const half = hook.throat.value / 2;
  const radius = stage.upper.pin.value / 2;
  const ends = [misfit.miss.limit, misfit.miss.worst, middleOf(misfit)];
  return {
    finding: misfit.gauge.finding,
    title: 'A–A  Top hook, from the left',
    isSection: true,
    note: 'Front of the tractor to the left.',
    box: {
      left: -half - left,
      right: half + 26,
      top: Math.max(half * 1.6, ...ends) + radius + 4,
      bottom: Math.min(-half - below, Math.min(...ends) - radius) - 26,
    },
    around: { left: 2, right: 9, above: blockHeight, below: 7 },
    draw: (pen) => drawn(stage, hook, misfit, pen),
  };
}

/** Forward is left and rearward right, so a point behind the lower hooks leans to the right. */
function upTo({ setback, height }: TopHook): Point {
  const length = Math.hypot(setback.value, height.value);
  return [setback.value / length, height.value / length];
}

function drawn(stage: Stage, hook: TopHook, misfit: Misfit, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const up = upTo(hook);
  const at = (along: number, across = 0): Point => [up[0] * along + up[1] * across, up[1] * along - up[0] * across];
  const radius = stage.upper.pin.value / 2;
  const column = hook.throat.value / 2 + 26 + onPaper(pen, 3);
  const dimension = detailDimension(misfit, at(miss.limit, radius), at(miss.worst, radius), up, column);
  const top =
    Math.max(miss.limit, miss.worst, hook.throat.value * 0.85 - radius) +
    radius +
    onPaper(pen, misfit.gauge.finding.side === 'high' ? 3 : 11);
  const block = missBlock(stage, pen, misfit, [column - left, top + onPaper(pen, 2)]);
  const band = (from: number, to: number): Point[] => [
    at(from, -radius * 0.8),
    at(from, radius * 0.8),
    at(to, radius * 0.8),
    at(to, -radius * 0.8),
  ];
  const areas = gapAreas(miss, band);
  return {
    items: [
      ...hookSection(hook, pen),
      ...showing(gauge.finding.id, areas),
      ...pinAt(at(middleOf(misfit)), radius, pen),
      circle('hidden', at(miss.limit), radius),
      ...names(stage, misfit, at, pen),
      dimension,
      ...block,
    ],
    says: [
      `Upper pin ${printQuantity(stage.upper.pin.value, 'length', { system: pen.system, step: pen.system === 'us' ? 16 : 0.1 })} in diameter; hook throat ${figureSentence(hook.throat, pen.system)}.`,
    ],
  };
}

function hookSection(hook: TopHook, pen: Pen): Item[] {
  const half = hook.throat.value / 2;
  const top = half * 1.7;
  const foot = -half - below;
  const section: Point[] = [
    [-half - 46, foot],
    ...arc([half + 8, foot + 14], 14, -90, 0),
    [half + 22, half * 0.4],
    [half + 12, half * 1.1],
    [half, half * 0.5],
    ...arc([0, 0], half, 0, -180),
    [-half, top],
    [-half - 46, top],
  ];
  const holes = (hook.settings?.holes ?? [])
    .map((height) => height - hook.height.value)
    .filter((z) => z < foot - 8 && z > foot - 24);
  return [
    body('thin', rectangle([-half - 56, foot - 24], [-half - 18, top + 8])),
    body('thin', section),
    { ...hatch('thin', section), spacing: 1.6 },
    { ...circle('thin', [-half - 34, 0], 8), fill: 'sheet' },
    ...holes.map((z) => circle('thin', [-half - 34, z], 8)),
    line('centre', [-half - 34 - 12, 0], [-half - 34 + 12, 0]),
    line('centre', [0, foot - onPaper(pen, 1)], [0, -half - 2]),
  ];
}

function pinAt([y, z]: Point, radius: number, pen: Pen): Item[] {
  const reach = radius + onPaper(pen, 1.6);
  return [
    { ...circle('misfit', [y, z], radius), fill: 'sheet' },
    line('centre', [y - reach, z], [y + reach, z]),
    line('centre', [y, z - reach], [y, z + reach]),
  ];
}

/** Too high: the pin is named beside itself and its limit below the hook. Too low, the other way round. */
function names({ upper }: Stage, misfit: Misfit, at: (along: number) => Point, pen: Pen): Item[] {
  const { letters } = pen.sheet;
  const radius = upper.pin.value / 2;
  const pin = at(middleOf(misfit));
  const limit = at(misfit.miss.limit);
  const half = (upper.hook?.throat.value ?? 0) / 2;
  const foot = -half - below - 24;
  const isHigh = misfit.gauge.finding.side === 'high';
  const [above, under] = isHigh ? ['upper pin', 'highest it can sit'] : ['lowest it can sit', 'upper pin'];
  const low = isHigh ? limit : pin;
  const overHook: Point = isHigh
    ? [pin[0] - radius - onPaper(pen, 3), pin[1] - onPaper(pen, 1.2)]
    : [-half - 6, half * 1.7 + 8 + onPaper(pen, 1.6)];
  const leader = isHigh
    ? []
    : [
        line(
          'dimension',
          [limit[0] - radius * 0.7, limit[1] + radius * 0.7],
          [-half - 4, half * 1.7 + 8 + onPaper(pen, 1)],
        ),
      ];
  return [
    lettering(overHook, above, letters.note, { anchor: 'end' }),
    ...leader,
    line('dimension', [low[0], low[1] - radius], [low[0] + 8, foot - onPaper(pen, 0.5)]),
    lettering([low[0] + 8, foot - onPaper(pen, letters.note)], under, letters.note, { anchor: 'middle' }),
  ];
}
