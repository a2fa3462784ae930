import type { Scene } from '@hitchwright/core/drawings';
import type { Fonts } from '../fonts/fonts.ts';
import { inks } from '../pdf/ink.ts';
import { openPdf } from '../pdf/openPdf.ts';
import { frameMargin, papers, type Paper, type PaperName } from '../pdf/paper.ts';
import { paintScene } from '../scene/paintScene.ts';
import { paperSize } from '../scene/sceneMap.ts';
import { titleBlock, type TitleCell } from '../sheet/titleBlock.ts';

/** What a drawing is printed with. */
export interface DrawingPdfOptions {
  readonly fonts: Fonts;
  readonly paper: PaperName;
  /** The day that the sheet bears [ISO 8601]. */
  readonly date: string;
  /** Number of the sheet, and its revision, as the house counts them. */
  readonly sheet?: string;
  readonly revision?: string;
}

/**
 * Prints one drawing on a sheet of its own, at its own scale, with a title block under it; lying where it is wider than high.
 *
 * @param scene the drawing [mm]
 * @param options fonts, paper, date, number [record]
 * @returns the document, always the same for the same input [bytes of PDF]; rejects with a RangeError where the drawing is larger than the paper
 */
export async function drawingPdf(scene: Scene, options: DrawingPdfOptions): Promise<Uint8Array> {
  const portrait = papers[options.paper];
  const paper = [portrait, { ...portrait, width: portrait.height, height: portrait.width }].find((one) =>
    isRoomFor(scene, one),
  );
  if (paper === undefined) throw new RangeError('The drawing is larger than the paper at its own scale.');
  const pdf = openPdf(options.fonts, paper, { title: scene.title, date: options.date });
  pdf.addPage();
  const size = paperSize(scene);
  const width = Math.max(size.width, leastWidth);
  const left = (paper.width - width) / 2;
  const title = titleBlock(pdf, cellsOf(scene, options), width);
  const height = Math.min(paper.height - 2 * frameMargin, Math.max(size.height + title.height, leastHeight));
  if (size.height + title.height > height)
    throw new RangeError('The drawing is larger than the paper at its own scale.');
  const foot = frameMargin + height - title.height;
  pdf.tags.leaf('Figure', () => paintScene(pdf.ink, scene, [left, frameMargin]), { alt: scene.description });
  title.paint([left, foot]);
  pdf.tags.artifact(() => {
    pdf.ink.path(
      [
        [
          [left, foot],
          [left + width, foot],
        ],
      ],
      { stroke: inks.black, width: 0.5 },
    );
    pdf.ink.rect([left, frameMargin], width, height, { stroke: inks.black, width: 0.5 });
  });
  return pdf.close();
}

const leastWidth = 150;
const leastHeight = 120;
/** Room that the title block takes at the least [mm]. */
const leastTitle = 14;

function isRoomFor(scene: Scene, { width, height }: Paper): boolean {
  const size = paperSize(scene);
  return size.width <= width - 2 * frameMargin && size.height + leastTitle <= height - 2 * frameMargin;
}

function cellsOf({ title, scale, items }: Scene, { sheet, revision, date }: DrawingPdfOptions): TitleCell[] {
  const number = [sheet, revision === undefined ? undefined : `rev ${revision}`].filter((part) => part !== undefined);
  return [
    { label: 'Drawing', text: title, share: 5, isHeading: true },
    ...(number.length === 0 ? [] : [{ label: 'Sheet', text: number.join(', '), share: 2 }]),
    { label: 'Date', text: date, share: 1.6 },
    ...(items.some(({ kind }) => kind === 'scaleBar')
      ? [{ label: 'Scale', text: `1:${Math.round(scale * 100) / 100}`, share: 1.3 }]
      : []),
  ];
}
