import { assess, type Answer } from '@hitchwright/core/assess';
import {
  liftStrip,
  pinPlanDrawing,
  rearView,
  sceneToSvg,
  shaftDrawing,
  sideView,
  topView,
  type Scene,
} from '@hitchwright/core/drawings';
import { listingOf, pinPlan, replyTo } from '@hitchwright/core/handover';
import { readSetup, type InputError, type Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { pinRefusalWords } from '@hitchwright/core/words';
import { drawingDxf, drawingPdf, sheetPdf } from '@hitchwright/print/pure';
import { withFonts } from './fonts.ts';
import { views, type Asked, type Format, type Made, type View, type Wanted } from './made.ts';

/** Makes what is asked of a setup. */
export function makeOf(asked: Asked): Promise<Made> {
  const { wanted } = asked;
  switch (wanted.kind) {
    case 'sheet':
      return sheetOf(asked, wanted);
    case 'drawing':
      return drawingOf(asked, wanted);
    case 'pinPlan':
      return pinPlanOf(asked, wanted.format);
    case 'reply':
      return Promise.resolve(replyOf(asked, wanted.link));
    case 'listing':
      return Promise.resolve(listed(asked, wanted));
  }
}

type Of<Kind extends Wanted['kind']> = Extract<Wanted, { kind: Kind }>;

/** The setup as it was read, and its answer; or everything that is wrong with it. */
function judged({ document }: Asked):
  | { readonly ok: true; readonly setup: Setup; readonly answer: Answer }
  | {
      readonly ok: false;
      readonly errors: readonly InputError[];
    } {
  const reading = readSetup(document);
  if (!reading.ok) return reading;
  const assessment = assess(document);
  return assessment.ok ? { ok: true, setup: reading.setup, answer: assessment.answer } : assessment;
}

async function sheetOf(asked: Asked, { customer, issuer, site }: Of<'sheet'>): Promise<Made> {
  const reading = judged(asked);
  if (!reading.ok) return { kind: 'errors', errors: reading.errors };
  const { document, paper, system, date } = asked;
  const { setup, answer } = reading;
  const names = { ...(customer === '' ? {} : { customer }), ...(issuer === '' ? {} : { issuer }) };
  const { bytes } = await withFonts((fonts) =>
    sheetPdf({ document, setup, answer }, { fonts, paper, system, date, site, ...names }),
  );
  return { kind: 'file', bytes, name: `sheet ${date}.pdf`, type: 'application/pdf' };
}

async function drawingOf(asked: Asked, { view, format }: Of<'drawing'>): Promise<Made> {
  const reading = judged(asked);
  if (!reading.ok) return { kind: 'errors', errors: reading.errors };
  const scene = sceneOf(view, reading.setup, reading.answer, asked.system);
  if (scene === null)
    return { kind: 'refused', headline: 'This view can’t be drawn yet.', sentences: [undrawn[view]].filter(Boolean) };
  return fileOf(scene, `${views[view].toLowerCase()} ${asked.date}`, format, asked);
}

const lift = 'The lift is drawn once the lower links and the top link are placed on the tractor.';
const drive =
  'The drive is drawn where a shaft drives the implement, once the links, the PTO stub and the input shaft are placed.';
const undrawn: Readonly<Record<View, string>> = { rear: '', side: lift, lift, top: drive, shaft: drive };

function sceneOf(view: View, setup: Setup, answer: Answer, system: UnitSystem): Scene | null {
  const how = { system, format: 'print' } as const;
  if (view === 'rear') return rearView(setup, answer, how);
  if (view === 'side') return sideView(setup, answer, how);
  if (view === 'lift') return liftStrip(setup, answer, how);
  if (view === 'top') return topView(setup, answer, how);
  const cut = answer.cures.find(({ kind }) => kind === 'cutShaft')?.amount ?? 0;
  return shaftDrawing(setup, answer, { ...how, cut });
}

async function pinPlanOf(asked: Asked, format: Format): Promise<Made> {
  const result = pinPlan(asked.document);
  if (result.ok)
    return fileOf(
      pinPlanDrawing(result.plan, { system: asked.system, format: 'print' }),
      `pin plan ${asked.date}`,
      format,
      asked,
    );
  if (result.refused === null) return { kind: 'errors', errors: result.errors };
  return { kind: 'refused', ...pinRefusalWords(result.refused, result.setup, asked.system) };
}

async function fileOf(scene: Scene, name: string, format: Format, { paper, date }: Asked): Promise<Made> {
  const text = (type: string, content: string): Made => ({
    kind: 'file',
    bytes: new TextEncoder().encode(content),
    name: `${name}.${format}`,
    type,
  });
  if (format === 'svg') return text('image/svg+xml', sceneToSvg(scene));
  if (format === 'dxf') return text('image/vnd.dxf', drawingDxf(scene));
  const bytes = await withFonts((fonts) => drawingPdf(scene, { fonts, paper, date }));
  return { kind: 'file', bytes, name: `${name}.pdf`, type: 'application/pdf' };
}

function replyOf({ document, system }: Asked, link: string): Made {
  const reading = replyTo(document, { system, link });
  return reading.ok ? { kind: 'reply', ...reading.reply } : { kind: 'errors', errors: reading.errors };
}

function listed({ document, system }: Asked, { machine, link }: Of<'listing'>): Made {
  const reading = listingOf(document, { system, machine, link });
  if (!reading.ok) return { kind: 'errors', errors: reading.errors };
  const { html, bareHtml, script } = reading.listing;
  return { kind: 'listing', html, bareHtml, structured: script };
}
