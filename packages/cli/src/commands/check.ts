import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { assess, type Answer } from '@hitchwright/core/assess';
import { answerJson, inputErrorsJson } from '@hitchwright/core/contract';
import { liftPlots, liftStrip, rearView, sceneToSvg, type Scene } from '@hitchwright/core/drawings';
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
import { exitCodes, UsageError } from '../exit.ts';
import { report } from '../report.ts';
import { visible, visibleJson } from '../visible.ts';

interface CheckOptions {
  readonly file: string;
  readonly json: boolean;
  readonly units: UnitSystem | null;
  readonly svg: string | null;
  readonly side: string | null;
  readonly plots: string | null;
}

/** `hitchwright check FILE`: the answer for one setup. */
export function checkCommand(words: readonly string[]): number {
  const options = readOptions(words);
  const text = readText(options.file);
  const reading = readSetupText(text);
  if (!reading.ok) return refuse(reading.errors, options.json);
  const document = parseSetup(text) as SetupDocument;
  const assessment = assess(document);
  if (!assessment.ok) return refuse(assessment.errors, options.json);
  const system = options.units ?? reading.setup.units ?? 'us';
  print(assessment.answer, reading.setup, system, options);
  const outcome = assessment.answer.verdict;
  return outcome === 'notChecked' || outcome === 'notNeeded' ? exitCodes.internalFault : exitCodes[outcome];
}

function readOptions(words: readonly string[]): CheckOptions {
  const { values, positionals } = parse(words);
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0)
    throw new UsageError('Name one setup file: hitchwright check FILE. See hitchwright --help.');
  const { units } = values;
  if (units !== undefined && units !== 'us' && units !== 'metric') throw new UsageError('--units takes us or metric.');
  const { svg = null, side = null, plots = null } = values;
  return { file, json: values.json === true, units: units ?? null, svg, side, plots };
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        json: { type: 'boolean' },
        units: { type: 'string' },
        svg: { type: 'string' },
        side: { type: 'string' },
        plots: { type: 'string' },
      },
    });
  } catch (problem) {
    throw new UsageError(`${problem instanceof Error ? problem.message : String(problem)} See hitchwright --help.`);
  }
}

function readText(file: string): string {
  if (file === '-') return readFileSync(0, 'utf8');
  try {
    // A file far over the limit is not read at all; readSetupText reports the rest.
    return statSync(file).size > 8 * largestSetup ? ' '.repeat(largestSetup + 1) : readFileSync(file, 'utf8');
  } catch (problem) {
    throw new UsageError(`Can’t read ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}

function refuse(errors: readonly InputError[], asJson: boolean): number {
  if (asJson) process.stdout.write(visibleJson(`${JSON.stringify(inputErrorsJson(errors), null, 2)}\n`));
  const lines = errors.map((error) => `  ${visible(errorLine(error))}\n`).join('');
  process.stderr.write(
    `The setup can’t be read: ${errors.length} ${errors.length === 1 ? 'error' : 'errors'}.\n${lines}`,
  );
  return exitCodes.badInput;
}

function print(answer: Answer, setup: Setup, system: UnitSystem, options: CheckOptions): void {
  writeDrawing(options.svg, rearView(setup, answer, { system }));
  writeDrawing(options.side, liftStrip(setup, answer, { system }));
  writeDrawing(options.plots, liftPlots(setup, answer, { system }));
  const text = options.json
    ? visibleJson(`${JSON.stringify(answerJson(answer, setup, system), null, 2)}\n`)
    : report(answer, setup, system);
  process.stdout.write(text);
}

/** Writes a drawing where one was asked for; the lift can't be drawn before the linkage is known. */
function writeDrawing(file: string | null, scene: Scene | null): void {
  if (file === null) return;
  if (scene === null)
    throw new UsageError(
      `Can’t draw ${file}: the lift is drawn once the lower links and the top link are placed on the tractor.`,
    );
  try {
    writeFileSync(file, sceneToSvg(scene));
  } catch (problem) {
    throw new UsageError(`Can’t write ${file}: ${problem instanceof Error ? problem.message : String(problem)}`);
  }
}
