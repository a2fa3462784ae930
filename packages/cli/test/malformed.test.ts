import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run } from './spawned.ts';

type Case = readonly [title: string, text: string | Uint8Array, ...errors: readonly `${string} ${string}`[]];

const text = (more: object) => JSON.stringify({ hitchwright: 1, tractor: {}, implement: {}, ...more });
const implement = (fields: string) => `{"hitchwright":1,"tractor":{},"implement":{${fields}}}`;
const mast = (value: string) => implement(`"mastHeight":${value}`);

/** Each with every error that it must list: code and path. */
const cases: readonly Case[] = [
  ['an empty file', '', 'not-json '],
  ['white space', ' \n\t', 'not-json '],
  ['binary', Uint8Array.from([0x7f, 0x45, 0x4c, 0x46, 0, 1, 2, 0xff]), 'not-json '],
  ['a setup cut short', '{"hitchwright":1,"tractor":{', 'not-json '],
  ['a comma too many', '{"hitchwright":1,}', 'not-json '],
  ['a word that JSON has not', mast('NaN'), 'not-json '],
  ['ten megabytes', `{"hitchwright":1,"note":"${'x'.repeat(10_000_000)}"}`, 'too-large '],
  ['a hundred thousand brackets', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, 'wrong-type '],
  [
    'a hundred thousand brackets in a field',
    mast(`${'['.repeat(100_000)}${']'.repeat(100_000)}`),
    'wrong-type implement.mastHeight',
  ],
  ['a list', '[]', 'wrong-type '],
  ['nothing but null', 'null', 'wrong-type '],
  ['a number', '7', 'wrong-type '],
  ['another version', text({ hitchwright: 2 }), 'version hitchwright'],
  ['no machines at all', '{"hitchwright":1}', 'missing tractor', 'missing implement'],
  ['a list for a machine', text({ tractor: [] }), 'wrong-type tractor'],
  ['a coupler without a kind', text({ coupler: {} }), 'missing coupler.kind'],
  ['a coupler of an unknown kind', text({ coupler: { kind: 'magnet' } }), 'not-a-choice coupler.kind'],
  ['a number too big to be one', mast('1e999'), 'not-finite implement.mastHeight'],
  ['a text that says infinity', mast('"Infinity"'), 'not-finite implement.mastHeight'],
  ['a negative height', mast('-457'), 'out-of-range implement.mastHeight'],
  ['an absurd height', mast('457000'), 'out-of-range implement.mastHeight'],
  ['inches typed as millimetres', mast('19'), 'out-of-range implement.mastHeight'],
  ['a mass for a length', mast('"457 kg"'), 'wrong-unit implement.mastHeight'],
  ['an empty text', mast('""'), 'empty implement.mastHeight'],
  ['a truth for a length', mast('true'), 'wrong-type implement.mastHeight'],
  ['an ambiguous length', mast('"1.5 ft"'), 'ambiguous implement.mastHeight'],
  ['ends in the wrong order', mast('{"between":[470,440]}'), 'wrong-order implement.mastHeight.between'],
  ['a negative tolerance', mast('{"value":457,"plusMinus":-1}'), 'out-of-range implement.mastHeight.plusMinus'],
  ['an unknown key', implement('"colour":"red"'), 'unknown-key implement.colour'],
  [
    'a key that reaches for the prototype',
    implement('"__proto__":{"polluted":true}'),
    'unknown-key implement.__proto__',
  ],
  ['a key that is every object’s', implement('"constructor":{}'), 'unknown-key implement.constructor'],
  ['a name of 10,000 characters', implement(`"name":"${'x'.repeat(10_000)}"`), 'out-of-range implement.name'],
  [
    'span and mast swapped',
    implement('"category":"1","shoulderSpan":457,"mastHeight":683'),
    'swapped implement.shoulderSpan',
  ],
  [
    'a pin that somebody sets',
    implement('"lowerPinDiameter":{"adjustable":{"between":[20,24]}}'),
    'contradiction implement.lowerPinDiameter',
  ],
  ['one figure for what is set', text({ tractor: { topLinkLength: 600 } }), 'contradiction tractor.topLinkLength'],
  ['a part of an unknown kind', text({ parts: [{ kind: 'glue', name: 'x' }] }), 'not-a-choice parts.0.kind'],
  [
    'three things wrong in three machines',
    text({
      tractor: { lowerBallBore: -1 },
      coupler: { kind: 'uFrame', hookSpan: 'wide' },
      implement: { colour: 'red' },
    }),
    'out-of-range tractor.lowerBallBore',
    'not-a-quantity coupler.hookSpan',
    'unknown-key implement.colour',
  ],
];

interface Listed {
  readonly errors: readonly { readonly code: string; readonly path: string }[];
}

describe('malformed setups on the command line', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'hitchwright-malformed-')), 'setup.json');
  for (const [title, content, ...errors] of cases) {
    test(`${title}: exit code 2, every error with code and path, no stack trace`, () => {
      writeFileSync(file, content);
      const { status, stdout, stderr } = run(['check', file, '--json']);
      expect(status).toBe(2);
      const listed = (JSON.parse(stdout) as Listed).errors.map(({ code, path }) => `${code} ${path}`);
      expect(listed).toEqual(errors);
      expect(stderr.trim().split('\n')).toHaveLength(1 + errors.length);
      for (const error of errors) expect(stderr).toContain(error.slice(error.indexOf(' ') + 1));
      expect(stderr).not.toMatch(/\n\s+at |node:internal|Internal fault/);
    });
  }
  test('without --json nothing is printed on standard output', () => {
    const { status, stdout } = run(['check', '-'], mast('19'));
    expect(status).toBe(2);
    expect(stdout).toBe('');
  });
  test('a missing file and a folder are told in one line', () => {
    for (const path of [join(tmpdir(), 'hitchwright-no-such-file.json'), tmpdir()]) {
      const { status, stderr } = run(['check', path]);
      expect(status).toBe(2);
      expect(stderr.trim().split('\n')).toHaveLength(1);
      expect(stderr).toContain(path);
    }
  });
});
