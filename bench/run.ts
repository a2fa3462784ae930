// Speeds as ratios within one run, and sizes: `npm run bench`, or `npm run bench -- --json` for one object a line.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { Bench } from 'tinybench';
import { assess, judgeSetup } from '@hitchwright/core/assess';
import {
  readSetup,
  setupFrom,
  withEdits,
  type Setup,
  type SetupDocument,
  type YardDocument,
} from '@hitchwright/core/records';
import { cureTimings } from './cures.ts';
import { driveTimings, liftTimings } from './lift.ts';
import { nextQuestionTimings } from './measure.ts';
import { sheetTimings } from './sheets.ts';
import type { Timing } from './timing.ts';

interface Row {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly ratioTo?: string;
  readonly ratio?: number;
}

const yard = JSON.parse(readFileSync('examples/sample-yard.json', 'utf8')) as YardDocument;
const [, tractor = {}] = yard.tractors;
const [coupler = {}] = yard.couplers;
const [, tiller = {}] = yard.implements;

const uncertain = setupFrom(yard, tractor, null, tiller);
const exact = plain(uncertain) as SetupDocument;
const [, , , , spear = {}] = yard.implements;
/** Too heavy behind, its mast too high: weights and a plate cure it together. */
const misfit = withEdits(setupFrom(yard, tractor, coupler, spear), [
  { path: 'implement.mastHeight', value: 521 },
  { path: 'tractor.loaderMass', value: undefined },
]);
const withCoupler = setupFrom(yard, tractor, coupler, tiller);
const categoryOnly: SetupDocument = {
  hitchwright: 1,
  tractor: { category: '1', enginePower: '35 hp' },
  implement: { category: '1' },
};

/** The document with every tolerance taken off, and of every range its middle; what can be set stays so, and between which points a length was read. */
function plain(node: unknown): unknown {
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return node;
  if ('adjustable' in node) return node;
  if ('value' in node) return 'from' in node ? { value: node.value, from: node.from } : node.value;
  if ('between' in node) return (node.between as number[]).reduce((sum, end) => sum + end / 2, 0);
  return Object.fromEntries(Object.entries(node).map(([key, below]) => [key, plain(below)]));
}

function read(document: SetupDocument): Setup {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error('the sample yard can’t be read');
  return reading.setup;
}

async function speeds(): Promise<Row[]> {
  const bench = new Bench({ time: 700, warmupTime: 200 });
  const setups = [read(exact), read(uncertain), read(withCoupler)] as const;
  const base = 'setups read from JSON';
  bench
    .add(base, () => void readSetup(exact))
    .add('answers, exact figures, no coupler', () => void judgeSetup(setups[0], { thresholds: false }))
    .add('answers, uncertain figures, no coupler', () => void judgeSetup(setups[1], { thresholds: false }))
    .add('answers, uncertain figures, U-frame with a slot', () => void judgeSetup(setups[2], { thresholds: false }))
    .add('full assessments with thresholds, category only', () => void assess(categoryOnly));
  await bench.run();
  const rates = bench.tasks.map((task) => ({ name: task.name, value: rateOf(task.result) }));
  const baseRate = rates.find(({ name }) => name === base)?.value ?? NaN;
  return rates.map(({ name, value }) => ({
    name,
    value: Math.round(value),
    unit: '1/s',
    ratioTo: base,
    ratio: Number((value / baseRate).toFixed(3)),
  }));
}

function rateOf(result: unknown): number {
  return (result as { throughput?: { mean: number } }).throughput?.mean ?? NaN;
}

/** First load: the page, its scripts and its styles, without fonts and without what loads later. */
function sizes(): Row[] {
  const root = 'packages/web/dist';
  if (!existsSync(join(root, 'index.html'))) return [];
  const page = readFileSync(join(root, 'index.html'), 'utf8');
  const first = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(([, file = '']) => file);
  const later = readdirSync(join(root, 'assets'))
    .map((file) => `assets/${file}`)
    .filter((file) => /\.(js|css)$/.test(file) && !first.includes(file));
  const packed = (files: readonly string[]): number =>
    files.reduce((sum, file) => sum + gzipSync(readFileSync(join(root, file))).length, 0);
  const firstLoad = packed(['index.html', ...first]);
  return [
    { name: 'first load, gzip', value: firstLoad, unit: 'byte' },
    {
      name: 'loaded later, gzip',
      value: packed(later),
      unit: 'byte',
      ratioTo: 'first load, gzip',
      ratio: Number((packed(later) / firstLoad).toFixed(3)),
    },
  ];
}

/** Times of the lift, the drive and the search for cures, each as a ratio to the margins of one exact setup. */
async function liftRows(): Promise<Row[]> {
  const shifting = withEdits(exact, [
    { path: 'implement.shiftLeft', value: 100 },
    { path: 'implement.shiftRight', value: 100 },
  ]);
  return ratiosOf([...(await liftTimings(exact)), ...driveTimings(shifting), ...cureTimings(misfit)]);
}

/** Times as ratios to the first of them. */
function ratiosOf(timings: readonly Timing[]): Row[] {
  const [base] = timings;
  const inMicroseconds = ({ value, unit }: Timing): number => (unit === 'ms' ? value * 1000 : value);
  return timings.map((timing) => ({
    name: timing.name,
    value: Number(timing.value.toPrecision(3)),
    unit: timing.unit,
    ...(base === undefined
      ? {}
      : { ratioTo: base.name, ratio: Number((inMicroseconds(timing) / inMicroseconds(base)).toPrecision(3)) }),
  }));
}

const rows = [
  ...(await speeds()),
  ...(await liftRows()),
  ...ratiosOf(await sheetTimings(misfit)),
  ...ratiosOf(await nextQuestionTimings()),
  ...sizes(),
];
if (process.argv.includes('--json')) for (const row of rows) console.log(JSON.stringify(row));
else console.table(rows);
