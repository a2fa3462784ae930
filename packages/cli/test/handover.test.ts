import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { root, run } from './spawned.ts';

const setups = join(root, 'examples', 'setups');
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-handover-'));
const blade = join(setups, 'box-blade-on-coupler.json');

afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(content));
  return path;
}

describe('hitchwright pinplan', () => {
  test('says what moves, where it may be and what to mind', () => {
    const { stdout, status } = run(['pinplan', blade]);
    expect(status).toBe(0);
    expect(stdout).toMatch(
      /Set the upper pin lower by 2 1\/8 in \(55 mm\): now 20 1\/2 in \(521 mm\), then\s+18 3\/8 in \(466 mm\)/,
    );
    expect(stdout).toMatch(/qualified\s+person/);
    expect(stdout).toContain('Keep free');
  });
  test('--json has the targets in millimetres', () => {
    const { stdout } = run(['pinplan', blade, '--json']);
    const { plan, saysSafeToRun } = JSON.parse(stdout) as {
      plan: { targets: { path: string }[] };
      saysSafeToRun: boolean;
    };
    expect(saysSafeToRun).toBe(false);
    expect(plan.targets.find(({ path }) => path === 'implement.mastHeight')).toMatchObject({
      low: 355.2,
      high: 470.7,
      aim: 466,
    });
  });
  test('draws it as SVG, DXF and PDF', () => {
    const starts = { svg: '<svg', dxf: '0', pdf: '%PDF' };
    for (const [format, start] of Object.entries(starts)) {
      const out = join(folder, `plan.${format}`);
      const { status, stderr } = run(['pinplan', blade, '--out', out, '--date', '2026-11-26']);
      expect(status, stderr).toBe(0);
      expect(readFileSync(out, 'latin1').startsWith(start), format).toBe(true);
    }
  });
  test('exit codes tell why there is no plan', () => {
    expect(run(['pinplan', join(setups, 'rented-aerator-on-coupler.json')])).toMatchObject({ status: 5 });
    expect(run(['pinplan', join(setups, 'auger-on-coupler.json')])).toMatchObject({ status: 5 });
    expect(run(['pinplan', join(setups, 'flail-measure-first.json')])).toMatchObject({ status: 4 });
    expect(run(['pinplan', join(setups, 'kinds', 'uFrame-fits.json')])).toMatchObject({ status: 0 });
    const without = run(['pinplan', join(setups, 'box-blade-direct.json')]);
    expect(without.status).toBe(2);
    expect(without.stderr).toContain('No coupler is named');
    expect(run(['pinplan', blade, '--out', join(folder, 'plan.exe')]).status).toBe(2);
  });
});

describe('hitchwright listing', () => {
  test('lists in words, as a block and as JSON', () => {
    expect(run(['listing', blade]).stdout).toContain('Mast height: 20 33/64 in');
    const block = run(['listing', blade, '--html', '--price', '640.00 USD']).stdout;
    expect(block).toContain('<script type="application/ld+json">');
    expect(block).toContain('"priceCurrency": "USD"');
    expect(run(['listing', blade, '--bare']).stdout).not.toMatch(/<script| style=/);
    const { product } = JSON.parse(run(['listing', blade, '--json', '--machine', 'coupler']).stdout) as {
      product: { name: string };
    };
    expect(product.name).toBe('Pellin U-28');
  });
  test('what is asked wrongly is told, not thrown', () => {
    for (const words of [
      ['--html', '--json'],
      ['--machine', 'tractor'],
      ['--price', 'cheap'],
      ['--link', 'javascript:alert(1)'],
    ]) {
      const { status, stderr } = run(['listing', blade, ...words]);
      expect(status, words.join(' ')).toBe(2);
      expect(stderr).not.toMatch(/\n\s+at /);
    }
    expect(run(['listing', join(setups, 'box-blade-direct.json'), '--machine', 'coupler']).status).toBe(2);
  });
});

describe('hitchwright chart', () => {
  const bare = {
    hitchwright: 1,
    tractors: [{ name: '<b>../../x</b>', category: '1' }],
    couplers: [],
    implements: [{ category: '1', mounting: 'threePoint' }],
  };
  test('charts a yard as text, JSON and a page, and writes nowhere else', () => {
    const [yard, out] = [written('yard.json', bare), join(folder, 'chart.html')];
    const { stdout, status } = run(['chart', yard, '--out', out, '--date', '2026-11-26']);
    expect(status).toBe(0);
    expect(stdout).toContain('1 to be measured first');
    expect(stdout).toMatch(/MEASURE FIRST – .+;\s+measure: /s);
    expect(readFileSync(out, 'utf8')).toContain('&lt;b&gt;../../x&lt;/b&gt;');
    expect((JSON.parse(run(['chart', yard, '--json']).stdout) as { counts: object }).counts).toMatchObject({
      measureFirst: 1,
    });
    expect(run(['chart', yard, '--out', join(folder, 'chart.pdf'), '--paper', 'a4']).status).toBe(0);
    expect(readFileSync(join(folder, 'chart.pdf'), 'latin1').startsWith('%PDF')).toBe(true);
    expect(readdirSync(folder).filter((name) => name.startsWith('chart.'))).toEqual(['chart.html', 'chart.pdf']);
  });
  test('a part of a yard says so, and what is left out, wherever it is charted', () => {
    const [yard, out] = [written('part.json', bare), join(folder, 'part.html')];
    const leftOut = ['--left-out', ' 3 tractors are left out. Only implements called “<rake>”. '];
    const { stdout, status } = run(['chart', yard, ...leftOut, '--out', out]);
    expect(status).toBe(0);
    const note = 'A part of the yard. 3 tractors are left out. Only implements called “<rake>”.';
    expect(stdout.replace(/\s+/g, ' ')).toContain(note);
    expect(readFileSync(out, 'utf8')).toContain(note.replace('<', '&lt;').replace('>', '&gt;'));
    const notes = (words: readonly string[]): string[] =>
      (JSON.parse(run(['chart', yard, '--json', ...words]).stdout) as { notes: string[] }).notes;
    expect(notes(leftOut)).toContain(note);
    expect(notes([]).join(' ')).not.toContain('A part of the yard');
    expect(run(['chart', yard, '--left-out', ' '])).toMatchObject({ status: 2, stdout: '' });
  });
  test('every error in a yard is listed with its place', () => {
    const broken = written('broken.json', { ...bare, implements: [{ mastHeight: 19 }] });
    const { status, stderr } = run(['chart', broken]);
    expect(status).toBe(2);
    expect(stderr).toContain('The yard can’t be read');
    expect(stderr).toContain('implements.0.mastHeight');
    for (const text of ['[]', '{"tractors":1}', '{', 'null']) {
      const { status: code, stderr: told } = run(['chart', '-'], text);
      expect(code, text).toBe(2);
      expect(told).not.toMatch(/\n\s+at /);
    }
    expect(run(['chart', written('yard2.json', bare), '--tractor', 'none']).status).toBe(2);
  });
});

test('--help names the commands', () => {
  const { stdout } = run(['--help']);
  for (const word of ['pinplan FILE', 'listing FILE', 'chart YARD', '--machine', '--tractor', '--left-out'])
    expect(stdout).toContain(word);
});
