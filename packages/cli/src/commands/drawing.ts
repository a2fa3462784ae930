import { assess } from '@hitchwright/core/assess';
import { sceneToSvg, trueViews, type Scene, type ViewName } from '@hitchwright/core/drawings';
import type { PaperName } from '@hitchwright/print';
import { askedFor, readFile, refuse, systemFor } from '../asked.ts';
import { sceneOf, writeOut, type Drawn } from '../drawing.ts';
import { UsageError } from '../exit.ts';
import { dateAsked, outAsked, paperAsked } from './printed.ts';

/** Every view by the word that asks for it. */
const views: Readonly<Record<string, ViewName>> = {
  rear: 'rear',
  side: 'side',
  lift: 'lift',
  top: 'top',
  shaft: 'shaft',
  plots: 'plots',
  'drive-plots': 'drivePlots',
  balance: 'balance',
  slope: 'slope',
};

const formats = ['svg', 'dxf', 'pdf'] as const;

/** `hitchwright drawing FILE --view NAME --out FILE`: one drawing at the scale of paper. */
export async function drawingCommand(words: readonly string[]): Promise<number> {
  const asked = askedFor('drawing', words, ['view', 'out', 'paper', 'date']);
  const { format, file } = outAsked('drawing', asked, formats);
  const view = viewAsked(asked.files['view']);
  if (format === 'dxf' && !trueViews.includes(view))
    throw new UsageError('A DXF has true lengths: take --view rear, side, lift, top or shaft, or another format.');
  const sheet = { paper: paperAsked(asked), date: dateAsked(asked) };
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const assessment = assess(reading.document);
  if (!assessment.ok) return refuse(assessment.errors, asked.json);
  const { setup } = reading;
  const drawn: Drawn = { setup, answer: assessment.answer, system: systemFor(asked, setup), format: 'print' };
  writeOut(file, await contentOf(sceneOf(view, file, drawn), format, sheet));
  return 0;
}

function viewAsked(name: string | undefined): ViewName {
  const found = name !== undefined && Object.hasOwn(views, name) ? views[name] : undefined;
  if (found === undefined) throw new UsageError(`--view takes one of: ${Object.keys(views).join(', ')}.`);
  return found;
}

async function contentOf(
  scene: Scene,
  format: (typeof formats)[number],
  sheet: { readonly paper: PaperName; readonly date: string },
): Promise<string | Uint8Array> {
  if (format === 'svg') return sceneToSvg(scene);
  // The writers are large: whoever only checks never loads them.
  const { bundledFonts, drawingDxf, drawingPdf } = await import('@hitchwright/print');
  return format === 'dxf' ? drawingDxf(scene) : drawingPdf(scene, { fonts: bundledFonts, ...sheet });
}
