import { existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root, run } from './spawned.ts';

const folder = mkdtempSync(join(tmpdir(), 'hitchwright-printed-'));
const setups = join(root, 'examples/setups');
const blade = join(setups, 'box-blade-on-coupler.json');

describe('hitchwright sheet', () => {
  const sheet = (name: string, ...more: string[]) => {
    const out = join(folder, name);
    return { ...run(['sheet', blade, '--out', out, '--date', '2026-11-26', ...more]), out };
  };
  test('writes a PDF, the same for the same words, another for another paper', () => {
    const [one, two, other] = [
      sheet('one.pdf'),
      sheet('two.pdf'),
      sheet('three.pdf', '--paper', 'a4', '--units', 'metric'),
    ];
    for (const { status, stderr, stdout } of [one, two, other])
      expect({ status, stderr, stdout }).toEqual({ status: 0, stderr: '', stdout: '' });
    expect(readFileSync(one.out).subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
    expect(readFileSync(one.out).equals(readFileSync(two.out))).toBe(true);
    expect(readFileSync(one.out).equals(readFileSync(other.out))).toBe(false);
  });
  test.each([
    [['sheet', blade], '--out FILE, ending in .pdf'],
    [['sheet', blade, '--out', 'x.svg'], 'ends in .pdf'],
    [['sheet', blade, '--out', 'x.pdf', '--paper', 'legal'], '--paper takes letter or a4.'],
    [['sheet', blade, '--out', 'x.pdf', '--date', '2026-13-45'], '--date takes a day'],
    [['sheet', blade, '--out', 'x.pdf', '--site', 'javascript:alert(1)'], '--site takes the address'],
    [['sheet', blade, '--out', 'x.pdf', '--for', 'a'.repeat(81)], '--for takes at most 80'],
    [['sheet', blade, '--out', 'x.pdf', '--json'], 'leave --json out'],
    [['sheet', blade, '--out', join(folder, 'nowhere/x.pdf')], 'Can’t write'],
    [['drawing', blade, '--view', 'rear'], '--out FILE, ending in .svg, .dxf, .pdf'],
    [['drawing', blade, '--view', 'toString', '--out', 'x.pdf'], '--view takes one of: rear, side'],
    [['drawing', blade, '--view', 'plots', '--out', 'x.dxf'], 'A DXF has true lengths'],
    [['drawing', blade, '--view', 'top', '--out', 'x.pdf'], 'Can’t draw x.pdf: the drive is drawn where'],
  ])('%j says what to type', (words, said) => {
    const { status, stderr } = run(words);
    expect(status).toBe(2);
    expect(stderr).toContain(said);
    expect(existsSync('x.pdf')).toBe(false);
  });
  test('a setup that can’t be read lists its errors and writes nothing', () => {
    const out = join(folder, 'bad.pdf');
    const { status, stderr } = run(['sheet', '-', '--out', out], '{"hitchwright": 2}');
    expect(status).toBe(2);
    expect(stderr).toContain('The setup can’t be read');
    expect(existsSync(out)).toBe(false);
  });
  test('names of records lead nowhere: only the file that was asked for is written', () => {
    const setup = JSON.parse(readFileSync(blade, 'utf8')) as Record<string, object>;
    const names = ['../../evil', '/tmp/evil.pdf', 'CON', '🚜'.repeat(20)];
    const evil = {
      ...setup,
      tractor: { ...setup['tractor'], name: names[0] },
      coupler: { ...setup['coupler'], name: names[1] },
      implement: { ...setup['implement'], name: names[2] },
    };
    const before = readdirSync(folder).length;
    const { status } = run(
      ['sheet', '-', '--out', join(folder, 'evil-names.pdf'), '--for', names[3] as string],
      JSON.stringify(evil),
    );
    expect(status).toBe(0);
    expect(readdirSync(folder).length).toBe(before + 1);
    expect(existsSync('/tmp/evil.pdf')).toBe(false);
  });
});

describe('hitchwright drawing', () => {
  test.each([
    ['svg', /^<svg /],
    ['dxf', /\$INSUNITS\n70\n4\n/],
    ['pdf', /^%PDF-1\.7/],
  ])('writes %s', (format, begins) => {
    const out = join(folder, `rear.${format}`);
    const { status, stderr } = run(['drawing', blade, '--view', 'rear', '--out', out]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(readFileSync(out, 'latin1')).toMatch(begins);
  });
  test.each(['rear', 'side', 'lift', 'top', 'shaft', 'plots', 'drive-plots', 'balance', 'slope'])(
    'draws %s',
    (view) => {
      const out = join(folder, `${view}.pdf`);
      const { status, stderr } = run([
        'drawing',
        join(setups, 'tiller-driven-direct.json'),
        '--view',
        view,
        '--out',
        out,
        '--paper',
        'a4',
      ]);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      expect(readFileSync(out).length).toBeGreaterThan(10_000);
    },
  );
});
