import { assess } from '@hitchwright/core/assess';
import {
  pinPlanDrawing,
  sceneToSvg,
  trueViews,
  undrawnWords,
  viewOf,
  type Scene,
  type ViewName,
} from '@hitchwright/core/drawings';
import { listingOf, pinPlan, replyTo, type Listing, type Reply } from '@hitchwright/core/handover';
import { readSetup, type InputError, type SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { pinRefusalWords } from '@hitchwright/core/words';
import { drawingPdf } from '../drawing/drawingPdf.ts';
import { drawingDxf } from '../dxf/drawingDxf.ts';
import type { Fonts } from '../fonts/fonts.ts';
import type { PaperName } from '../pdf/paper.ts';
import { sheetPdf } from '../sheet/sheetPdf.ts';
import type { Judged } from '../sheet/options.ts';

/** Formats of a drawing. */
export type DrawingFormat = 'pdf' | 'svg' | 'dxf';

/** What is to be made of a setup. */
export type Wanted =
  | { readonly kind: 'sheet'; readonly customer?: string; readonly issuer?: string; readonly site?: string }
  | { readonly kind: 'drawing'; readonly view: ViewName; readonly format: DrawingFormat }
  | { readonly kind: 'pinPlan'; readonly format: DrawingFormat }
  | { readonly kind: 'reply'; readonly link?: string }
  | { readonly kind: 'listing'; readonly machine: 'implement' | 'coupler'; readonly link?: string };

/** A setup, and how what is made of it is written. */
export interface HandOverAsked {
  readonly document: SetupDocument;
  readonly system: UnitSystem;
  readonly paper: PaperName;
  /** The day that it bears [ISO 8601]. */
  readonly date: string;
  readonly wanted: Wanted;
}

/** What was made, or why it was not. */
export type HandedOver =
  | { readonly kind: 'file'; readonly bytes: Uint8Array; readonly name: string; readonly type: string }
  | { readonly kind: 'reply'; readonly reply: Reply }
  | { readonly kind: 'listing'; readonly listing: Listing }
  /** It can’t be made of this setup, in words. */
  | { readonly kind: 'refused'; readonly headline: string; readonly sentences: readonly string[] }
  | { readonly kind: 'errors'; readonly errors: readonly InputError[] };

/**
 * Makes what is handed over of a setup: the sheet, a drawing, the pin plan, a reply or a listing.
 *
 * @param asked the setup, what is wanted of it, units, paper and day [record]
 * @param fonts hands over the bytes of a font file [function]
 * @returns what was made, why it can’t be, or every error in the setup [bytes, texts, InputError codes]
 */
export async function handOver(asked: HandOverAsked, fonts: Fonts): Promise<HandedOver> {
  const { wanted, document, system } = asked;
  switch (wanted.kind) {
    case 'sheet':
      return sheetOf(asked, wanted, fonts);
    case 'drawing':
      return drawingOf(asked, wanted, fonts);
    case 'pinPlan':
      return pinPlanOf(asked, wanted, fonts);
    case 'reply': {
      const { link } = wanted;
      const reading = replyTo(document, { system, ...(link === undefined ? {} : { link }) });
      return reading.ok ? { kind: 'reply', reply: reading.reply } : { kind: 'errors', errors: reading.errors };
    }
    case 'listing': {
      const { machine, link } = wanted;
      const reading = listingOf(document, { system, machine, ...(link === undefined ? {} : { link }) });
      return reading.ok ? { kind: 'listing', listing: reading.listing } : { kind: 'errors', errors: reading.errors };
    }
  }
}

type Of<Kind extends Wanted['kind']> = Extract<Wanted, { kind: Kind }>;

type JudgedReading =
  { readonly ok: true; readonly judged: Judged } | { readonly ok: false; readonly errors: readonly InputError[] };

function judgedOf(document: SetupDocument): JudgedReading {
  const reading = readSetup(document);
  if (!reading.ok) return reading;
  const assessment = assess(document);
  return assessment.ok
    ? { ok: true, judged: { document, setup: reading.setup, answer: assessment.answer } }
    : assessment;
}

async function sheetOf(asked: HandOverAsked, wanted: Of<'sheet'>, fonts: Fonts): Promise<HandedOver> {
  const reading = judgedOf(asked.document);
  if (!reading.ok) return { kind: 'errors', errors: reading.errors };
  const { paper, system, date } = asked;
  const { customer, issuer, site } = wanted;
  const named = {
    ...(customer === undefined ? {} : { customer }),
    ...(issuer === undefined ? {} : { issuer }),
    ...(site === undefined ? {} : { site }),
  };
  const { bytes } = await sheetPdf(reading.judged, { fonts, paper, system, date, ...named });
  return { kind: 'file', bytes, name: `sheet ${date}.pdf`, type: 'application/pdf' };
}

async function drawingOf(asked: HandOverAsked, { view, format }: Of<'drawing'>, fonts: Fonts): Promise<HandedOver> {
  if (format === 'dxf' && !trueViews.includes(view))
    return refused('A DXF has true lengths.', `Take one of these views: ${trueViews.join(', ')}.`);
  const reading = judgedOf(asked.document);
  if (!reading.ok) return { kind: 'errors', errors: reading.errors };
  const scene = viewOf(view, reading.judged, { system: asked.system, format: 'print' });
  if (scene === null) return refused('This view can’t be drawn yet.', undrawnWords[view]);
  return fileOf(scene, `${view} ${asked.date}`, format, { asked, fonts });
}

function refused(headline: string, sentence: string): HandedOver {
  return { kind: 'refused', headline, sentences: [`${sentence.slice(0, 1).toUpperCase()}${sentence.slice(1)}`] };
}

async function pinPlanOf(asked: HandOverAsked, wanted: Of<'pinPlan'>, fonts: Fonts): Promise<HandedOver> {
  const { system } = asked;
  const result = pinPlan(asked.document);
  if (!result.ok)
    return result.refused === null
      ? { kind: 'errors', errors: result.errors }
      : { kind: 'refused', ...pinRefusalWords(result.refused, result.setup, system) };
  const scene = pinPlanDrawing(result.plan, { system, format: 'print' });
  return fileOf(scene, `pin plan ${asked.date}`, wanted.format, { asked, fonts });
}

interface Printing {
  readonly asked: HandOverAsked;
  readonly fonts: Fonts;
}

async function fileOf(
  scene: Scene,
  name: string,
  format: DrawingFormat,
  { asked: { paper, date }, fonts }: Printing,
): Promise<HandedOver> {
  const text = (type: string, content: string): HandedOver => ({
    kind: 'file',
    bytes: new TextEncoder().encode(content),
    name: `${name}.${format}`,
    type,
  });
  if (format === 'svg') return text('image/svg+xml', sceneToSvg(scene));
  if (format === 'dxf') return text('image/vnd.dxf', drawingDxf(scene));
  const bytes = await drawingPdf(scene, { fonts, paper, date });
  return { kind: 'file', bytes, name: `${name}.pdf`, type: 'application/pdf' };
}
