// Time of a printed sheet and of single drawings, beside that of the check that they show.
import { assess } from '@hitchwright/core/assess';
import { rearView } from '@hitchwright/core/drawings';
import { withEdits, type SetupDocument } from '@hitchwright/core/records';
import { bundledFonts, drawingDxf, drawingPdf, sheetPdf } from '@hitchwright/print';
import { medianOf, read, type Timing } from './timing.ts';

const rounds = 9;
const date = '2026-11-26';

/**
 * Times of one check with all that is told of it, and of what is printed of its answer.
 *
 * @param document a setup with a linkage [JSON]
 * @returns the check first, then the sheet on Letter and one drawing as PDF and as DXF [ms]
 */
export async function sheetTimings(document: SetupDocument): Promise<Timing[]> {
  const setup = read(document);
  const assessment = assess(document);
  if (!assessment.ok) throw new Error('the setup can’t be judged');
  const { answer } = assessment;
  const scene = rearView(setup, answer, { system: 'us', format: 'print' });
  const paper = { fonts: bundledFonts, paper: 'letter', date } as const;
  return [
    await timed('one check with all that is told of it', (i) => assess(aLittleOther(document, i))),
    await timed('one sheet of it', () => sheetPdf({ document, setup, answer }, { ...paper, system: 'us' })),
    await timed('one drawing of it as PDF', () => drawingPdf(scene, paper)),
    await timed('one drawing of it as DXF', () => drawingDxf(scene)),
  ];
}

/** What was judged before is remembered, so every check has another figure. */
function aLittleOther(document: SetupDocument, by: number): SetupDocument {
  return withEdits(document, [{ path: 'implement.mastHeight', value: { value: 521 + by * 1e-6, plusMinus: 1.5 } }]);
}

/** The middle of some rounds, after one to warm up. */
async function timed(name: string, work: (round: number) => unknown): Promise<Timing> {
  const times: number[] = [];
  for (let i = 0; i <= rounds; i += 1) {
    const start = performance.now();
    await work(i);
    times.push(performance.now() - start);
  }
  return { name, value: medianOf(times.slice(1)), unit: 'ms' };
}
