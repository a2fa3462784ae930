import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/engine/assess/index.ts';
import {
  chartCell,
  chartHtml,
  chartOf,
  chartSteps,
  type Chart,
  type ChartOptions,
  type ChartProgress,
} from '../../src/handover/index.ts';
import { setupFrom, type YardDocument } from '../../src/records/index.ts';
import { cellText, verdictWords } from '../../src/words/index.ts';

const sample = JSON.parse(
  readFileSync(new URL('../../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;
/** A yard that is small enough to be judged twice. */
const yard: YardDocument = {
  ...sample,
  tractors: sample.tractors.slice(0, 2),
  couplers: sample.couplers.slice(0, 1),
  implements: sample.implements.slice(2, 4),
};

function charted(
  of: YardDocument,
  options: Partial<ChartOptions> = {},
  onProgress?: (progress: ChartProgress) => void,
): Chart {
  const result = chartOf(of, { system: 'us', date: '2026-11-26', ...options }, onProgress);
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.chart;
}

describe('a chart of a yard', () => {
  const progress: number[] = [];
  const chart = charted(yard, {}, ({ done, total }) => progress.push(done / total));

  it('has a table for each tractor, a row for each implement, a column for each coupler and for none', () => {
    expect(chart.tables.map(({ tractor }) => tractor)).toEqual(yard.tractors.map((one) => one['name']));
    for (const { columns, rows } of chart.tables) {
      expect(columns).toEqual(['Without a coupler', ...yard.couplers.map((one) => one['name'])]);
      expect(rows.map(({ implement }) => implement)).toEqual(yard.implements.map((one) => one['name']));
      for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
    }
  });
  it('says in every cell what the check of that pairing says', () => {
    chart.tables.forEach(({ rows }, t) => {
      rows.forEach(({ cells }, i) => {
        cells.forEach((cell, c) => {
          const coupler = c === 0 ? null : (yard.couplers[c - 1] ?? null);
          const assessment = assess(setupFrom(yard, yard.tractors[t] ?? {}, coupler, yard.implements[i] ?? {}), {
            full: false,
          });
          if (!assessment.ok) throw new Error('unreadable');
          const { answer } = assessment;
          expect(cell.outcome).toBe(answer.verdict);
          expect(cell.verdict).toBe(verdictWords(answer));
          expect(cell.reason).toBe(answer.lead === null ? '' : cellText(answer, 'us'));
        });
      });
    });
  });
  it('counts its cells', () => {
    const cells = chart.tables.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
    expect(Object.values(chart.counts).reduce((a, b) => a + b, 0)).toBe(cells.length);
    expect(chart.counts.works).toBe(cells.filter(({ outcome }) => outcome === 'works').length);
    expect(chart.countText).toContain(`${cells.length} pairings: ${chart.counts.works} work as they stand`);
  });
  it('tells how far it is after every pairing', () => {
    expect(progress).toEqual(Array.from({ length: 8 }, (_, i) => (i + 1) / 8));
  });
  it('can be worked through in steps by whoever judges them, at leisure, and comes to the same', async () => {
    const steps = chartSteps(yard, { system: 'us', date: '2026-11-26' });
    const seen: number[] = [];
    let step = steps.next();
    while (step.done !== true) {
      const { document, done, total } = step.value;
      seen.push(done);
      expect(total).toBe(8);
      step = steps.next(await Promise.resolve(chartCell(document, 'us')));
    }
    expect(seen).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(step.value).toEqual({ ok: true, chart });
  });
  it('writes down the very cell that it is given', () => {
    const steps = chartSteps(yard, { system: 'us', date: '2026-11-26' });
    const cell = { outcome: 'willNot', verdict: 'Will not', reason: 'as told', measure: [] } as const;
    let step = steps.next();
    while (step.done !== true) step = steps.next(cell);
    if (!step.value.ok) throw new Error('refused');
    expect(step.value.chart.counts.willNot).toBe(8);
    expect(step.value.chart.tables[0]?.rows[0]?.cells[0]).toEqual(cell);
  });
  it('bears the day that it was given, and says that a sample is one', () => {
    expect(chart.date).toBe('2026-11-26');
    expect(chart.notes.join(' ')).toContain('By the yard’s figures of 2026-11-26');
    expect(chart.notes[0]).toContain('invented');
    expect(charted({ ...yard, sample: false }).notes.join(' ')).not.toContain('invented');
  });
  it('says what of the yard it leaves out, on the page too', () => {
    const part = charted(yard, { leftOut: ['3 tractors are left out.', 'Only implements called “<rake>”.'] });
    const note = 'A part of the yard. 3 tractors are left out. Only implements called “<rake>”.';
    expect(part.notes).toContain(note);
    expect(chartHtml(part)).toContain(note.replace('<', '&lt;').replace('>', '&gt;'));
    expect(chart.notes.join(' ')).not.toContain('A part of the yard');
    expect(charted(yard, { leftOut: [] }).notes).toEqual(chart.notes);
  });
  it('charts one tractor where one is named, and knows when there is none of that name', () => {
    const name = String(yard.tractors[1]?.['name']);
    expect(charted(yard, { tractor: name }).tables.map(({ tractor }) => tractor)).toEqual([name]);
    expect(chartOf(yard, { system: 'us', date: '2026-11-26', tractor: 'none' })).toMatchObject({
      ok: false,
      errors: [{ code: 'not-a-choice' }],
    });
  });
  it('hands back what is wrong with the records of a yard', () => {
    const broken = { ...yard, implements: [{ name: 'x', mastHeight: 19 }] };
    expect(chartOf(broken, { system: 'us', date: '2026-11-26' })).toMatchObject({
      ok: false,
      errors: [{ path: 'implements.0.mastHeight' }],
    });
  });
});

describe('measure first', () => {
  const bare: YardDocument = {
    hitchwright: 1,
    tractors: [{ category: '1' }],
    couplers: [],
    implements: [{ category: '1', mounting: 'threePoint' }, {}],
  };
  const chart = charted(bare);
  it('is never counted among what works', () => {
    expect(chart.counts.works).toBe(0);
    expect(chart.counts.measureFirst).toBe(2);
  });
  it('says what to measure, and so does the page', () => {
    const cells = chart.tables.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
    for (const { outcome, measure } of cells) {
      expect(outcome).toBe('measureFirst');
      expect(measure.length).toBeGreaterThan(0);
    }
    expect(chartHtml(chart)).toContain(`Measure: ${cells[0]?.measure.join(', ')}.`);
  });
  it('asks for a closer reading where everything was measured and it is open all the same', () => {
    const blade = { ...yard.implements[0], lowerPinDiameter: { between: [22.2, 23.5] } };
    const close = charted({ ...yard, tractors: yard.tractors.slice(1), couplers: [], implements: [blade] });
    const cell = close.tables[0]?.rows[0]?.cells[0];
    expect(cell?.outcome).toBe('measureFirst');
    expect(cell?.measure[0]).toBe('lower pin diameter of the implement, more closely');
  });
  it('machines without names are numbered', () => {
    expect(chart.tables[0]?.tractor).toBe('Tractor 1');
    expect(chart.tables[0]?.rows.map(({ implement }) => implement)).toEqual(['Implement 1', 'Implement 2']);
  });
});
