import type { PinPlan } from '../../engine/pinplan/index.ts';
import { pinPlanWords } from '../../words/index.ts';
import type { ViewOptions } from '../rearView.ts';
import type { Scene } from '../scene.ts';
import { scaleSaid } from '../side/words.ts';
import { named } from '../view/words.ts';
import { freeAt, halfWidthOf, pictureOf, topOf, type PinPicture } from './picture.ts';
import { rearPins, rearRows } from './rear.ts';
import { setbackRows, sideColumns, sideExtent, sidePins } from './side.ts';
import { laidOutViews, type TwoViews } from './twoViews.ts';

/**
 * Draws a pin plan to scale, from behind and from the left: where the pins are, dashed, where they have to be, heavy, how far
 * each goes, where they may be, hatched, and what has to stay free about them.
 *
 * @param plan the plan [mm]
 * @param options units and format [names]
 * @returns the drawing [mm]
 * @example sceneToSvg(pinPlanDrawing(plan, { system: 'us' }))
 */
export function pinPlanDrawing(plan: PinPlan, options: ViewOptions): Scene {
  const { system, format = 'desk' } = options;
  const { pen, bounds, items, bar } = laidOutViews(viewsOf(pictureOf(plan)), {
    system,
    format,
    title: 'Pin plan',
    note: noteOf(plan),
  });
  const title = `Pin plan: ${named(plan.setup.implement.name, 'the implement')} for ${named(plan.setup.coupler?.name, 'the coupler')}`;
  const words = pinPlanWords(plan, system);
  return {
    title,
    subtitle: words.moves.join(' '),
    bounds,
    scale: pen.perPaper,
    items,
    description: [
      `${title}.`,
      'Seen from behind and from the left.',
      ...words.moves,
      ...words.ranges,
      ...words.clear,
      ...scaleSaid(pen, bar),
      legend,
      ...words.cautions.slice(0, 2),
    ].join(' '),
  };
}

function viewsOf(picture: PinPicture): TwoViews {
  return {
    rear: rearPins(picture),
    side: sidePins(picture),
    half: halfWidthOf(picture),
    extent: sideExtent(picture),
    rise: topOf(picture),
    drop: Math.max(freeAt(picture, 'lower'), picture.lowerDiameter),
    rows: rearRows(picture),
    columns: sideColumns(picture),
    above: setbackRows(picture),
  };
}

const legend =
  'Dashed: where a pin is now. Heavy: where it has to be. Hatched: anywhere in there. Chain line: keep free for hook and latch. The frame is drawn for place only.';

function noteOf({ clear }: PinPlan): string {
  const isAssumed = clear.some(({ measured }) => !measured);
  return `${legend}${isAssumed ? ' What has to stay free is what is usual, not measured on this coupler.' : ''} Welding and design belong to a qualified person; altering can end the warranty.`;
}
