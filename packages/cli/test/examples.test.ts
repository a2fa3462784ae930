import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setupFrom, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { root, run } from './spawned.ts';

const setups = join(root, 'examples/setups');
const kinds = ['bareBalls', 'uFrame', 'hookEnds', 'clawEnds', 'triangle', 'bar'];

/** Every example setup with its exit code. */
const exits: Readonly<Record<string, number>> = {
  'auger-on-coupler.json': 5,
  'box-blade-direct.json': 0,
  'box-blade-on-coupler.json': 3,
  'cutter-on-utility-tractor.json': 4,
  'flail-measure-first.json': 4,
  'rake-on-coupler.json': 3,
  'rear-blade.json': 5,
  'rented-aerator-on-coupler.json': 5,
  'ripper-two-pin-rows.json': 3,
  'tiller-direct.json': 4,
  'chipper-on-small-tractor.json': 5,
  'snow-blower-direct.json': 3,
  'stone-burier-direct.json': 5,
  'tiller-driven-direct.json': 0,
  'tiller-driven-on-coupler.json': 3,
  ...Object.fromEntries(kinds.map((kind) => [`kinds/${kind}-fits.json`, 0])),
  ...Object.fromEntries(kinds.map((kind) => [`kinds/${kind}-fails.json`, 5])),
};

function json(name: string): unknown {
  return JSON.parse(readFileSync(join(setups, name), 'utf8'));
}

const files = readdirSync(setups, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replaceAll('\\', '/'));

/** Setups of the drive are the sample yard's own records put together. */
const driven = [
  'chipper-on-small-tractor',
  'snow-blower-direct',
  'stone-burier-direct',
  'tiller-driven-direct',
  'tiller-driven-on-coupler',
];

describe('the example setups', () => {
  test('those with a drive are what the sample yard gives', () => {
    const yard = JSON.parse(readFileSync(join(root, 'examples/sample-yard.json'), 'utf8')) as YardDocument;
    for (const name of driven) {
      const setup = json(`${name}.json`) as Record<'tractor' | 'coupler' | 'implement', SetupDocument | undefined>;
      const record = (records: readonly SetupDocument[], one: SetupDocument | undefined): SetupDocument | null =>
        records.find((other) => one !== undefined && other['name'] === one['name']) ?? null;
      const [tractor, implement] = [record(yard.tractors, setup.tractor), record(yard.implements, setup.implement)];
      if (tractor === null || implement === null) throw new Error(`${name}: not of the sample yard`);
      expect(setup, name).toEqual(setupFrom(yard, tractor, record(yard.couplers, setup.coupler), implement));
    }
  });
  test('each has its exit code in the list', () => {
    expect([...files].sort()).toEqual(Object.keys(exits).sort());
  });
  for (const [name, code] of Object.entries(exits)) {
    test(`${name}: exit code ${code}, all four answers stand behind it, and it says by each rule what the steering comes to`, () => {
      const { status, stdout, stderr } = run(['check', join(setups, name), '--json']);
      expect(status).toBe(code);
      expect(stderr).toBe('');
      const answer = JSON.parse(stdout) as Record<string, unknown>;
      expect(answer).toMatchObject({ hitchwright: 1, saysSafeToRun: false });
      expect(answer).not.toHaveProperty('scope');
      expect(answer['headline']).toMatch(
        new RegExp({ 0: '^Works$', 3: '^Works with parts$', 4: '^Measure first$', 5: '^Will not ' }[code] ?? 'none'),
      );
      expect(Object.keys(answer['outcomes'] as object)).toEqual(['hooksUp', 'runs', 'lifts', 'staysUpright']);
      expect((answer['outcomes'] as Record<string, string>)['staysUpright']).not.toBe('notChecked');
      expect(answer['balance']).toMatchObject({ rule: 'ofTractor', share: 0.2 });
      expect((answer['steeringRules'] as { rule: string }[]).map(({ rule }) => rule)).toEqual([
        'ofTractor',
        'ofTotal',
        'halfOfFront',
      ]);
      expect(stdout).not.toMatch(/NaN|Infinity/);
    });
  }
  test('the published schema takes each of them, and each is refused with one stray key in any machine', () => {
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse(run(['schema']).stdout) as object);
    for (const name of files) {
      const setup = json(name) as Record<string, object>;
      expect(validate(setup), `${name} ${JSON.stringify(validate.errors)}`).toBe(true);
      for (const machine of ['tractor', 'implement', ...('coupler' in setup ? ['coupler'] : [])]) {
        expect(validate({ ...setup, [machine]: { ...setup[machine], colour: 'red' } }), `${name} ${machine}`).toBe(
          false,
        );
      }
    }
  });
  test('the published schema refuses what the reader refuses for its shape', () => {
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse(run(['schema']).stdout) as object);
    const fine = { hitchwright: 1, tractor: {}, implement: {} };
    for (const bad of [
      null,
      [],
      { ...fine, hitchwright: 2 },
      { ...fine, units: 'imperial' },
      { ...fine, coupler: {} },
      { ...fine, coupler: { kind: 'magnet' } },
      { ...fine, implement: { mastHeight: [457] } },
      { ...fine, implement: { mastHeight: { value: 457, between: [1, 2] } } },
      { ...fine, implement: { mastHeight: { between: [450] } } },
      { ...fine, implement: { mastHeight: { adjustable: { at: [] } } } },
      { ...fine, implement: { name: 'x'.repeat(10_000) } },
      { ...fine, parts: [{ kind: 'glue', name: 'x' }] },
    ]) {
      expect(validate(bad), JSON.stringify(bad).slice(0, 80)).toBe(false);
      expect(run(['check', '-'], JSON.stringify(bad)).status, JSON.stringify(bad).slice(0, 80)).toBe(2);
    }
  });
});

describe('ways of asking', () => {
  const blade = join(setups, 'box-blade-on-coupler.json');
  test('- reads standard input and gives the same answer as the file', () => {
    const fromFile = run(['check', blade]);
    const fromInput = run(['check', '-'], readFileSync(blade, 'utf8'));
    expect(fromInput.status).toBe(fromFile.status);
    expect(fromInput.stdout).toBe(fromFile.stdout);
  });
  test('a setup’s own units are used where none are asked for', () => {
    const setup = { ...(json('box-blade-on-coupler.json') as object), units: 'metric' };
    const own = run(['check', '-'], JSON.stringify(setup)).stdout;
    expect(own).toBe(run(['check', blade, '--units', 'metric']).stdout);
    expect(own).not.toBe(run(['check', blade, '--units', 'us']).stdout);
  });
  test('--svg writes a drawing for every way of holding, fitting or not, and no number in it is broken', () => {
    const folder = mkdtempSync(join(tmpdir(), 'hitchwright-svg-'));
    for (const kind of kinds) {
      for (const fit of ['fits', 'fails']) {
        const out = join(folder, `${kind}-${fit}.svg`);
        run(['check', join(setups, `kinds/${kind}-${fit}.json`), '--svg', out]);
        const drawn = readFileSync(out, 'utf8');
        expect(drawn.startsWith('<svg'), `${kind} ${fit}`).toBe(true);
        expect(drawn, `${kind} ${fit}`).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });
  test('--help names every command, every option and every exit code with its meaning', () => {
    const { stdout, status } = run(['--help']);
    expect(status).toBe(0);
    for (const word of ['check FILE', 'shafts FILE', 'schema', '--json', '--units', '--svg', '--side', '--plots'])
      expect(stdout).toContain(word);
    for (const word of ['--top', '--drive-plots', '--shaft', '--balance', '--slope']) expect(stdout).toContain(word);
    for (const exit of [
      /\b0 {2}works: hooks up, runs where it is driven,[^\n]*\n {5}lifts and stays upright/,
      /\b1 {2}internal fault/,
      /\b2 {2}bad input/,
      /\b3 {2}works with parts/,
      /\b4 {2}measure first/,
      /\b5 {2}will not hook up, not run, not lift or not stay upright/,
    ]) {
      expect(stdout).toMatch(exit);
    }
  });
  test('hostile names in every place stay text: in the report no control character, in the drawing no markup', () => {
    const name = '\u001b[31m<script>alert(1)</script>\u202e\u0007\r\n"\'&';
    const setup = json('box-blade-on-coupler.json') as Record<string, Record<string, unknown>>;
    const named = (machine: string) => ({ ...setup[machine], name });
    const parts = (setup['parts'] as unknown as object[]).map((part) => ({ ...part, name, fits: [name] }));
    const text = JSON.stringify({
      ...setup,
      tractor: named('tractor'),
      coupler: named('coupler'),
      implement: named('implement'),
      parts,
    });
    const out = join(mkdtempSync(join(tmpdir(), 'hitchwright-names-')), 'rear.svg');
    const { status, stdout } = run(['check', '-', '--svg', out], text);
    expect(status).toBe(3);
    expect(stdout).toContain('<script>alert(1)</script>');
    expect([...stdout].filter((letter) => (letter < ' ' && letter !== '\n') || letter === '\u202e')).toEqual([]);
    expect(readFileSync(out, 'utf8')).not.toContain('<script');
    const answer = run(['check', '-', '--json'], text).stdout;
    expect([...answer].filter((letter) => letter < ' ' && letter !== '\n')).toEqual([]);
    expect((JSON.parse(answer) as { cures: { part: string }[] }).cures[0]?.part).toBe(name);
  });
});
