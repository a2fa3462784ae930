import { pinPlanDrawing, sceneToSvg } from '@hitchwright/core/drawings';
import { pinPlan, type PinPlan, type PinRefusal } from '@hitchwright/core/handover';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { pinPlanWords, pinRefusalWords } from '@hitchwright/core/words';
import { askedFor, readFile, refuse, systemFor, type Asked } from '../asked.ts';
import { writeOut } from '../drawing.ts';
import { exitCodes, UsageError } from '../exit.ts';
import { entries, wrapped } from '../lines.ts';
import { visible, visibleJson } from '../visible.ts';
import { dateAsked, outAsked, paperAsked } from './printed.ts';

const formats = ['svg', 'dxf', 'pdf'] as const;

/** `hitchwright pinplan FILE`: where the pins would have to sit for the implement to take the coupler. */
export async function pinplanCommand(words: readonly string[]): Promise<number> {
  const asked = askedFor('pinplan', words, ['out', 'paper', 'date']);
  const out = asked.files['out'] === undefined ? null : outAsked('pinplan', { ...asked, json: false }, formats);
  const sheet = { paper: paperAsked(asked), date: dateAsked(asked) };
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const result = pinPlan(reading.document);
  if (!result.ok && result.refused === null) return refuse(result.errors, asked.json);
  const system = systemFor(asked, reading.setup);
  if (!result.ok) return tellRefusal(result.refused, reading.setup, asked, system);
  if (out !== null) writeOut(out.file, await contentOf(result.plan, out.format, { ...sheet, system }));
  process.stdout.write(asked.json ? json(planJson(result.plan, system)) : report(result.plan, system));
  return exitCodes.works;
}

interface Sheet {
  readonly paper: 'letter' | 'a4';
  readonly date: string;
  readonly system: UnitSystem;
}

async function contentOf(plan: PinPlan, format: (typeof formats)[number], sheet: Sheet): Promise<string | Uint8Array> {
  const { system, ...printed } = sheet;
  const scene = pinPlanDrawing(plan, { system, format: 'print' });
  if (format === 'svg') return sceneToSvg(scene);
  // The writers are large: whoever only reads a plan never loads them.
  const { bundledFonts, drawingDxf, drawingPdf } = await import('@hitchwright/print');
  return format === 'dxf' ? drawingDxf(scene) : drawingPdf(scene, { fonts: bundledFonts, ...printed });
}

function tellRefusal(refused: PinRefusal, setup: Setup, asked: Asked, system: UnitSystem): number {
  const { headline, sentences } = pinRefusalWords(refused, setup, system);
  if (refused.why === 'noCoupler') throw new UsageError(`${headline}. ${sentences.join(' ')}`);
  if (asked.json) process.stdout.write(json({ hitchwright: 1, saysSafeToRun: false, plan: null, headline, sentences }));
  else process.stdout.write(`${[headline.toUpperCase(), ...entries(sentences)].join('\n')}\n`);
  if (refused.why === 'fitsAlready') return exitCodes.works;
  return refused.why === 'measureFirst' || refused.why === 'tooCoarse' ? exitCodes.measureFirst : exitCodes.willNot;
}

function json(data: unknown): string {
  return visibleJson(`${JSON.stringify(data, null, 2)}\n`);
}

function planJson(plan: PinPlan, system: UnitSystem) {
  const { kind, targets, clear, checks, after, assumed } = plan;
  return {
    hitchwright: 1,
    saysSafeToRun: false,
    plan: { kind, targets, clear, checks, assumed, outcomes: after.outcomes, verdict: after.verdict },
    words: pinPlanWords(plan, system),
  };
}

function report(plan: PinPlan, system: UnitSystem): string {
  const { moves, ranges, clear, after, again, assumed, cautions } = pinPlanWords(plan, system);
  const { implement, coupler } = plan.setup;
  const title = `Pin plan: ${implement.name ?? 'the implement'} for ${coupler?.name ?? 'the coupler'}`;
  const blocks = [
    visible(title),
    listed('What moves', moves),
    listed('Where each may be', ranges),
    listed('Keep free', clear),
    wrapped(visible(after), 0).join('\n'),
    listed('Then', again),
    listed('Taken for granted', assumed),
    listed('Mind', cautions),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function listed(heading: string, texts: readonly string[]): string {
  return texts.length === 0 ? '' : [heading, ...entries(texts)].join('\n');
}
