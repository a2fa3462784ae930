import type { OpenPdf } from '../pdf/openPdf.ts';
import type { Box } from '../pdf/paper.ts';
import { settings, span, words, type Block } from './block.ts';
import { ruleName, type PlacedBlock, type Plan } from './plan.ts';
import { rule, rules, type Press } from './press.ts';

/** Paints page by page what was placed, with its foot and its frame; the first page is open. */
export function paintPages(plan: Plan, pdf: OpenPdf, frame: Box, footOf: (page: number) => Block): void {
  const { x, y, width, height } = frame;
  for (let page = 1; page <= plan.pages; page += 1) {
    if (page > 1) pdf.addPage();
    const foot = footOf(page);
    const top = y + height - foot.height;
    for (const block of plan.blocks) if (block.page === page && !isDoubled(block, top)) block.paint([block.x, block.y]);
    rule(pdf, [x, top], [x + width, top], rules.frame);
    foot.paint([x, top]);
    pdf.tags.artifact(() => pdf.ink.rect([x, y], width, height, rules.frame));
  }
}

/** A rule so close to that of the foot that both would be seen as one. */
function isDoubled({ name, y }: PlacedBlock, foot: number): boolean {
  return name === ruleName && y > foot - 4;
}

const pad = 3.5;

/** The strip at the foot of a page that is not the last: what it is a page of. */
export function footStrip(press: Press, parts: readonly string[], width: number): Block {
  const { label } = settings;
  const set = words(press.ink.faces, [span(parts.join(' · '), label)], label, width - 2 * pad);
  return {
    height: set.height + 1.4,
    paint: ([x, y]) => press.tags.artifact(() => set.write(press.ink, [x + pad, y + 0.7])),
  };
}
