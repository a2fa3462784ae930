import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root, run } from './spawned.ts';

const setups = join(root, 'examples/setups');
const tiller = join(setups, 'tiller-driven-direct.json');

interface Listed {
  readonly saysSafeToRun: boolean;
  readonly shafts: readonly {
    readonly name: string;
    readonly fitted: boolean;
    readonly outcome: string;
    readonly text: string;
    readonly against: readonly { readonly id: string; readonly why: string }[];
    readonly cures: readonly { readonly kind: string; readonly text: string }[];
  }[];
}

function changed(change: (setup: Record<string, unknown>) => object): string {
  return JSON.stringify(change(JSON.parse(readFileSync(tiller, 'utf8')) as Record<string, unknown>));
}

describe('hitchwright shafts', () => {
  test('every drive shaft among the parts is told, the best first, and 0 says that one serves', () => {
    const { status, stdout, stderr } = run(['shafts', tiller]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).toContain('Which drive shaft serves the Wickset 60-in tiller on the Ostrey 35?');
    expect(stdout).toContain('1 of 3 drive shafts serve at every position');
    const heads = stdout.split('\n').filter((line) => /^[A-Z ]+: /.test(line));
    expect(heads).toEqual([
      'SERVES: shaft of the Wickset 60-in tiller (in the setup now)',
      'SERVES WITH PARTS: medium shaft, closed 23 in, from the shelf',
      'SERVES WITH PARTS: long shaft, closed 35 in, from the shelf',
    ]);
    expect(stdout).toMatch(/too long where the two ends\s+come nearest/);
    expect(stdout).toMatch(/Cut 1 9\/16 in \(40 mm\)[\s\S]*returned once cut/);
  });
  test('no shaft is told to serve because another one does: the cure of one is never the other', () => {
    const { stdout } = run(['shafts', tiller, '--json']);
    const { shafts, saysSafeToRun } = JSON.parse(stdout) as Listed;
    expect(saysSafeToRun).toBe(false);
    expect(shafts.map(({ outcome }) => outcome)).toEqual(['works', 'withParts', 'withParts']);
    expect(shafts.map(({ fitted }) => fitted)).toEqual([true, false, false]);
    expect(shafts.flatMap(({ cures }) => cures.map(({ kind }) => kind))).not.toContain('part');
    expect(shafts[1]?.against.map(({ id }) => id)).toEqual(['shaft.bottoming']);
    expect(shafts[1]?.text).toBe('with parts: shaft 1 9/16 in (40 mm) too long');
    const counted = changed(({ parts, ...setup }) => {
      const { name, shaft } =
        (parts as { name: string; shaft?: unknown }[]).find((part) => part.shaft !== undefined) ?? {};
      const edits = [{ path: 'shaft', value: shaft }];
      const nothing = { price: null, amount: null, count: 1, returnable: true, altersMachine: false };
      return { ...setup, parts, chosen: [{ kind: 'part', part: name, on: 'shaft', edits, ...nothing }] };
    });
    expect(JSON.parse(run(['shafts', '-', '--json'], counted).stdout)).toMatchObject({ shafts });
  });
  test('where none serves the exit code is that of the best one', () => {
    const { status, stdout } = run(['shafts', join(setups, 'chipper-on-small-tractor.json')]);
    expect(status).toBe(5);
    expect(stdout).toContain('0 of 3 drive shafts serve');
    const withoutOwn = changed((setup) => ({
      ...setup,
      parts: (setup['parts'] as { name: string }[]).filter(({ name }) => !name.startsWith('shaft of')),
    }));
    expect(run(['shafts', '-'], withoutOwn).status).toBe(3);
  });
  test('--units turns the units round', () => {
    expect(run(['shafts', tiller, '--units', 'metric']).stdout).toContain('40 mm (1 9/16 in)');
    expect(run(['shafts', tiller, '--units', 'cubits']).status).toBe(2);
  });
  test('no shaft among the parts, nothing to drive, and a broken setup are told, not thrown', () => {
    const cases = [
      [changed((setup) => ({ ...setup, parts: [] })), 'no drive shaft among the parts'],
      [
        changed((setup) => ({ ...setup, implement: { ...(setup['implement'] as object), driven: false } })),
        'No drive shaft drives this implement',
      ],
      ['{"hitchwright":1}', 'can’t be read'],
    ] as const;
    for (const [text, words] of cases) {
      const { status, stdout, stderr } = run(['shafts', '-'], text);
      expect(status, words).toBe(2);
      expect(stdout, words).toBe('');
      expect(stderr).toContain(words);
      expect(stderr).not.toMatch(/\n\s+at /);
    }
  });
  test('hostile names stay text', () => {
    const name = '\u001b[31m<script>\u202e\u0007';
    const text = changed((setup) => ({
      ...setup,
      implement: { ...(setup['implement'] as object), name },
      parts: (setup['parts'] as { kind: string }[]).map((part) => ({ ...part, name, fits: undefined })),
    }));
    for (const words of [
      ['shafts', '-'],
      ['shafts', '-', '--json'],
    ]) {
      const { stdout } = run(words, text);
      expect(stdout).toContain('<script>');
      expect([...stdout].filter((letter) => (letter < ' ' && letter !== '\n') || letter === '\u202e')).toEqual([]);
    }
  });
});
