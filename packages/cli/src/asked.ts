import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { inputErrorsJson } from '@hitchwright/core/contract';
import {
  errorLine,
  largestSetup,
  parseSetup,
  readSetupText,
  type InputError,
  type Setup,
  type SetupDocument,
} from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { exitCodes, UsageError } from './exit.ts';
import { visible, visibleJson } from './visible.ts';

/** What a command was asked: its setup file, how to print, and which files to write. */
export interface Asked {
  readonly file: string;
  readonly json: boolean;
  readonly units: UnitSystem | null;
  /** Files to write, by the option that names them. */
  readonly files: Readonly<Record<string, string | undefined>>;
}

/** Reads the words after a command: one setup file, `--json`, `--units`, and options that name a file to write. */
export function askedFor(command: string, words: readonly string[], written: readonly string[] = []): Asked {
  const { values, positionals } = parse(words, written);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0)
    throw new UsageError(`Name one setup file: hitchwright ${command} FILE. See hitchwright --help.`);
  const { units } = values;
  if (units !== undefined && units !== 'us' && units !== 'metric') throw new UsageError('--units takes us or metric.');
  const files = Object.fromEntries(written.map((name) => [name, textOf(values[name])]));
  return { file, json: values['json'] === true, units: units ?? null, files };
}

interface Parsed {
  readonly values: Readonly<Record<string, unknown>>;
  readonly positionals: readonly string[];
}

function textOf(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

function parse(words: readonly string[], written: readonly string[]): Parsed {
  const texts = Object.fromEntries(['units', ...written].map((name) => [name, { type: 'string' as const }]));
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { ...texts, json: { type: 'boolean' } },
    });
  } catch (problem) {
    throw new UsageError(`${problem instanceof Error ? problem.message : String(problem)} See hitchwright --help.`);
  }
}

/** The units to print in: asked for, or the setup's own, or US. */
export function systemFor({ units }: Asked, setup: Setup): UnitSystem {
  return units ?? setup.units ?? 'us';
}

/** A setup that was read, with the document that it was read from. */
export type FileReading =
  | { readonly ok: true; readonly setup: Setup; readonly document: SetupDocument }
  | { readonly ok: false; readonly errors: readonly InputError[] };

/** Reads a setup from a file, or from standard input for `-`. */
export function readFile(file: string): FileReading {
  const text = readText(file);
  const reading = readSetupText(text);
  return reading.ok ? { ...reading, document: parseSetup(text) as SetupDocument } : reading;
}

/** The text of a file, or of standard input for `-`. */
export function readText(file: string): string {
  if (file === '-') return readFileSync(0, 'utf8');
  try {
    // A file far over the limit is not read at all; readSetupText reports the rest.
    return statSync(file).size > 8 * largestSetup ? ' '.repeat(largestSetup + 1) : readFileSync(file, 'utf8');
  } catch (problem) {
    throw new UsageError(`Can’t read ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}

/** Says everything that is wrong with a setup, or with a yard; returns the exit code. */
export function refuse(errors: readonly InputError[], asJson: boolean, what: 'setup' | 'yard' = 'setup'): number {
  if (asJson) process.stdout.write(visibleJson(`${JSON.stringify(inputErrorsJson(errors), null, 2)}\n`));
  const lines = errors.map((error) => `  ${visible(errorLine(error))}\n`).join('');
  process.stderr.write(
    `The ${what} can’t be read: ${errors.length} ${errors.length === 1 ? 'error' : 'errors'}.\n${lines}`,
  );
  return exitCodes.badInput;
}
