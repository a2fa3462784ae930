import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Point } from '../scene.ts';
import { heading, headingHeight, barHeight, noteLines, scaleBar } from '../view/heading.ts';
import type { Part } from '../view/part.ts';
import type { DetailPlan } from './plan.ts';

/** Enlargements that are used: what a person can hold in the mind. */
const enlargements = [0.2, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 12, 15, 20];

/** Places an enlarged view in its panel, with its heading, the enlargement in words, and a scale bar of its own. */
export function placedDetail(plan: DetailPlan, pen: Pen, area: Bounds): Part {
  const width = (area.right - area.left) / pen.perPaper;
  const note = noteLines(pen.sheet, `${plan.note} {times} the rear view.`, width).length;
  const above = headingHeight(pen.sheet, note) + plan.around.above;
  const below = barHeight(pen.sheet) + 3 + plan.around.below;
  const room = {
    left: area.left + onPaper(pen, pen.sheet.margin + plan.around.left),
    right: area.right - onPaper(pen, pen.sheet.margin + plan.around.right),
    top: area.top - onPaper(pen, above),
    bottom: area.bottom + onPaper(pen, below),
  };
  const times = enlargementFor(plan.box, room);
  const drawn = plan.draw({ ...pen, perPaper: pen.perPaper / times });
  const items = drawn.items.map((item) => moved(item, times, centreOf(plan.box), centreOf(room)));
  const said = `${times} times`;
  const lines = noteLines(pen.sheet, `${plan.note} ${said} the rear view.`, width);
  const bar = scaleBar(pen, area, times);
  return {
    items: [...items, ...heading(pen, area, plan.title, lines), ...bar.items].map((item): Item => ({
      ...item,
      view: 'detail',
    })),
    says: [`Enlarged: ${plan.title}, ${said} the rear view; its scale bar is ${bar.label} long.`, ...drawn.says],
  };
}

function enlargementFor(box: Bounds, room: Bounds): number {
  const fits = Math.min(
    (room.right - room.left) / (box.right - box.left),
    (room.top - room.bottom) / (box.top - box.bottom),
  );
  return enlargements.filter((times) => times <= fits).at(-1) ?? (enlargements[0] as number);
}

function centreOf({ left, right, top, bottom }: Bounds): Point {
  return [(left + right) / 2, (top + bottom) / 2];
}

/** An item of the view's own millimetres on the sheet. Sizes on paper stay what they are. */
function moved(item: Item, times: number, from: Point, to: Point): Item {
  const at = ([y, z]: Point): Point => [to[0] + (y - from[0]) * times, to[1] + (z - from[1]) * times];
  switch (item.kind) {
    case 'stroke':
      return { ...item, points: item.points.map(at) };
    case 'circle':
      return { ...item, centre: at(item.centre), radius: item.radius * times };
    case 'hatch':
      return { ...item, outline: item.outline.map(at) };
    case 'dimension': {
      const across: Point = [item.along[1], -item.along[0]];
      const foot = at([across[0] * item.at, across[1] * item.at]);
      return {
        ...item,
        from: at(item.from),
        to: at(item.to),
        at: foot[0] * across[0] + foot[1] * across[1],
        mmPerUnit: item.mmPerUnit / times,
      };
    }
    case 'balloon':
      return { ...item, at: at(item.at), leaderTo: item.leaderTo === null ? null : at(item.leaderTo) };
    default:
      return { ...item, at: at(item.at) };
  }
}
