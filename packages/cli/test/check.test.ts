import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const setups = join(root, 'examples/setups');
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-cli-'));

function run(words: readonly string[], input = '') {
  return spawnSync(process.execPath, [join(root, 'packages/cli/bin/hitchwright.js'), ...words], {
    encoding: 'utf8',
    input,
  });
}

/** The box blade without a coupler, which works, with some fields of its machines changed. */
function changed(edits: Readonly<Record<string, Readonly<Record<string, unknown>>>>): string {
  const setup = JSON.parse(readFileSync(join(setups, 'box-blade-direct.json'), 'utf8')) as Record<string, object>;
  const machines = Object.entries(edits).map(([machine, fields]) => [machine, { ...setup[machine], ...fields }]);
  return JSON.stringify({ ...setup, ...Object.fromEntries(machines) });
}

/** The tiller with a shaft that has to be cut. */
function tooLong(): string {
  const setup = JSON.parse(readFileSync(join(setups, 'tiller-driven-direct.json'), 'utf8')) as {
    readonly parts: readonly { readonly name: string; readonly shaft?: object }[];
  };
  return JSON.stringify({
    ...setup,
    shaft: setup.parts.find(({ name }) => name.startsWith('medium'))?.shaft,
    parts: [],
  });
}

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('hitchwright check', () => {
  const samples = [
    ['tiller-driven-direct.json', 0, '\n\nWORKS\n', 'yes'],
    ['box-blade-on-coupler.json', 3, 'too high for the\n  top hook', 'needs no drive'],
    ['flail-measure-first.json', 4, '\n\nMEASURE FIRST\n', 'not known yet'],
  ] as const;
  for (const [name, code, text, runs] of samples) {
    test(`${name} ends with exit code ${code}`, () => {
      const { status, stdout, stderr } = run(['check', join(setups, name)]);
      expect(stderr).toBe('');
      expect(status).toBe(code);
      expect(stdout).toContain(text);
      expect(stdout).toContain(`Runs            ${runs}\n`);
      expect(stdout).toMatch(/Stays upright {3}(?:yes|not known yet)\n/);
    });
  }
  test('what nobody said to be driven is asked once, and the rest of the drive waits for it', () => {
    const { status, stdout } = run(['check', '-'], changed({ implement: { driven: undefined } }));
    expect(status).toBe(4);
    expect(stdout).toContain('Not known yet: whether a drive shaft drives the implement.');
    expect(stdout).toContain('Find out whether a drive shaft drives the implement.');
    expect(stdout.match(/say whether a drive shaft drives it/g)).toHaveLength(1);
  });
  test('a setup that nothing cures ends with exit code 5', () => {
    const setup = JSON.parse(readFileSync(join(setups, 'box-blade-on-coupler.json'), 'utf8')) as Record<
      string,
      unknown
    >;
    expect(run(['check', '-'], JSON.stringify({ ...setup, parts: [] })).status).toBe(5);
  });
  test('--json is the whole answer and says what it does not answer', () => {
    const { stdout, status } = run(['check', join(setups, 'box-blade-on-coupler.json'), '--json']);
    const answer = JSON.parse(stdout) as Record<string, unknown>;
    expect(status).toBe(3);
    expect(answer).toMatchObject({ saysSafeToRun: false, leadFinding: 'rear.mast', everySetTried: true });
    expect(answer['outcomes']).toEqual({
      hooksUp: 'withParts',
      runs: 'notNeeded',
      lifts: 'works',
      staysUpright: 'works',
    });
    expect(answer['setPrice']).toBeNull();
  });
  test('--units turns the units round', () => {
    const words = ['check', join(setups, 'box-blade-on-coupler.json')];
    expect(run([...words, '--units', 'metric']).stdout).toMatch(/sits 49 mm \(1 15\/16 in\)/);
    expect(run(words).stdout).toMatch(/sits 1 15\/16 in \(49 mm\)/);
    expect(run([...words, '--units', 'cubits']).status).toBe(2);
  });
  test('--side and --plots draw the lift, and say what is missing where it is not known', () => {
    const [side, plots] = [join(folder, 'side.svg'), join(folder, 'plots.svg')];
    const { status, stdout } = run(['check', join(setups, 'box-blade-direct.json'), '--side', side, '--plots', plots]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/it lifts least: [\d,]+ lb/);
    for (const out of [side, plots]) expect(readFileSync(out, 'utf8')).toMatch(/^<svg[^>]+viewBox/);
    const unknown = run(['check', '-', '--side', side], '{"hitchwright":1,"tractor":{},"implement":{}}');
    expect(unknown.status).toBe(2);
    expect(unknown.stderr).toContain('placed on the tractor');
  });
  test('--top, --drive-plots and --shaft draw the drive, and say what is missing where there is none', () => {
    const options = ['--top', '--drive-plots', '--shaft'];
    const out = (option: string): string => join(folder, `${option.slice(2)}.svg`);
    const asked = options.flatMap((option) => [option, out(option)]);
    const { status, stdout } = run(['check', join(setups, 'tiller-driven-direct.json'), ...asked]);
    expect(status).toBe(0);
    expect(stdout).toContain('\nWORKS\n');
    expect(stdout).toContain('The drive by each set of rules');
    for (const option of options) expect(readFileSync(out(option), 'utf8'), option).toMatch(/^<svg[^>]+viewBox/);
    for (const option of options) {
      const undriven = run(['check', join(setups, 'box-blade-direct.json'), option, out(option)]);
      expect(undriven.status, option).toBe(2);
      expect(undriven.stderr, option).toContain('the drive is drawn where');
    }
  });
  test('--shaft marks what a cure cuts', () => {
    const out = join(folder, 'cut.svg');
    const { status, stdout } = run(['check', '-', '--shaft', out], tooLong());
    expect(status).toBe(3);
    expect(stdout).toMatch(/Cut 1 9\/16 in \(40 mm\) off both tubes[\s\S]*returned once cut/);
    expect(readFileSync(out, 'utf8')).toContain('off both tubes and both guards');
  });
  test('--svg writes a drawing', () => {
    const out = join(folder, 'rear.svg');
    run(['check', join(setups, 'box-blade-on-coupler.json'), '--svg', out]);
    expect(readFileSync(out, 'utf8')).toMatch(/^<svg[^>]+viewBox/);
  });
});

describe('bad input', () => {
  const bad: readonly [string, string][] = [
    ['empty', ''],
    ['cut short', '{"hitchwright":1'],
    ['a list', '[]'],
    ['another version', '{"hitchwright":9,"tractor":{},"implement":{}}'],
    ['a number too big to be one', '{"hitchwright":1,"tractor":{},"implement":{"mastHeight":1e999}}'],
    ['ten megabytes', `{"hitchwright":1,"note":"${'x'.repeat(10_000_000)}"}`],
    ['a hundred thousand brackets', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
  ];
  for (const [title, text] of bad) {
    test(`${title}: exit code 2 and no stack trace`, () => {
      const { status, stderr } = run(['check', file('bad.json', text)]);
      expect(status).toBe(2);
      expect(stderr).toContain('error');
      expect(stderr).not.toMatch(/\n\s+at /);
    });
  }
  test('every error is listed with its path, on stderr and in the JSON', () => {
    const text = '{"hitchwright":1,"tractor":{"lowerBallBore":-1},"implement":{"mastHeight":19,"colour":"red"}}';
    const { status, stdout, stderr } = run(['check', '-', '--json'], text);
    expect(status).toBe(2);
    expect(stderr).toContain('implement.mastHeight: expected 200–1200 mm, got 19. Was it typed in inches?');
    expect((JSON.parse(stdout) as { errors: unknown[] }).errors).toHaveLength(3);
  });
  test('a missing file, no file, an unknown option and an unknown command are told, not thrown', () => {
    for (const words of [['check', join(folder, 'none.json')], ['check'], ['check', '--colour'], ['weld']]) {
      const { status, stderr } = run(words);
      expect(status, words.join(' ')).toBe(2);
      expect(stderr).not.toMatch(/\n\s+at /);
      expect(stderr.length).toBeGreaterThan(10);
    }
  });
  test('hostile names stay text: no control character reaches the terminal', () => {
    const name = '\u001b[31m<script>alert(1)</script>\u202e\u0007';
    const { stdout } = run(['check', '-'], JSON.stringify({ hitchwright: 1, tractor: { name }, implement: { name } }));
    expect(stdout).toContain('<script>alert(1)</script>');
    expect([...stdout].some((letter) => (letter < ' ' && letter !== '\n') || letter === '\u202e')).toBe(false);
  });
});

describe('the manual and the schema', () => {
  test('--help names every option and every exit code', () => {
    const { stdout, status } = run(['--help']);
    expect(status).toBe(0);
    for (const word of [
      '--json',
      '--units',
      '--svg',
      '--balance',
      '--slope',
      'schema',
      'stays upright',
      'measure first',
      'will not hook up',
      'bad input',
      'internal fault',
      'none of them says',
    ]) {
      expect(stdout).toContain(word);
    }
  });
  test('the published schema takes the example setups and refuses malformed ones', () => {
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse(run(['schema']).stdout) as object);
    for (const name of ['tiller-driven-direct', 'box-blade-on-coupler', 'flail-measure-first']) {
      expect(validate(JSON.parse(readFileSync(join(setups, `${name}.json`), 'utf8'))), name).toBe(true);
    }
    for (const bad of [
      {},
      { hitchwright: 1 },
      { hitchwright: 1, tractor: {}, implement: { colour: 'red' } },
      { hitchwright: 1, tractor: {}, implement: { mastHeight: true } },
    ]) {
      expect(validate(bad)).toBe(false);
    }
  });
});
