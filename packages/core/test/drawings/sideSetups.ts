import { readFileSync } from 'node:fs';
import { assess, type Answer } from '../../src/engine/assess/index.ts';
import type { Station, Sweep } from '../../src/engine/lift/index.ts';
import { couplerDriveFields, implementDriveFields, tractorDriveFields } from '../../src/records/driveFields.ts';
import { readSetup, setupFrom, type Setup, type SetupDocument, type YardDocument } from '../../src/records/index.ts';

const yard = JSON.parse(
  readFileSync(new URL('../../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;

function named(list: readonly SetupDocument[], name: string): SetupDocument {
  const found = list.find((one) => String(one['name']).includes(name));
  if (found === undefined) throw new Error(`no ${name} in the yard`);
  return found;
}

type Fields = Readonly<Record<string, unknown>>;

/** Changes to the machines of a case; a field that is undefined is taken away. */
export interface Changes {
  readonly tractor?: Fields;
  readonly implement?: Fields;
  readonly coupler?: Fields;
}

/** Machines of the sample yard, by part of their names; null for no coupler. */
export type Machines = readonly [tractor: string, coupler: string | null, implement: string];

/** A setup judged in full, with its sweep. */
export interface Swept {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly sweep: Sweep;
}

const ofDrives: ReadonlySet<string> = new Set([
  ...Object.keys(tractorDriveFields).filter((key) => key.startsWith('stub')),
  ...Object.keys(implementDriveFields),
  ...Object.keys(couplerDriveFields),
  ...['driven', 'turnsWhileRaised', 'inputType', 'inputSpeed', 'inputTurns'],
]);

/** A record of the yard without its drive. */
function undriven(record: SetupDocument): SetupDocument {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !ofDrives.has(key)));
}

/** The setup document of machines of the sample yard, without their drives unless the changes give them one. */
export function documentOf([tractor, coupler, implement]: Machines, changes: Changes = {}): SetupDocument {
  const changed = (record: SetupDocument, fields: Fields = {}): SetupDocument =>
    Object.fromEntries(Object.entries({ ...undriven(record), ...fields }).filter(([, value]) => value !== undefined));
  return setupFrom(
    { ...yard, parts: (yard.parts ?? []).filter(({ kind }) => kind !== 'driveShaft' && kind !== 'stubExtender') },
    changed(named(yard.tractors, tractor), changes.tractor),
    coupler === null ? null : changed(named(yard.couplers, coupler), changes.coupler),
    changed(named(yard.implements, implement), changes.implement),
  );
}

/** A document read and judged in full. */
export function judgedFully(document: SetupDocument): { setup: Setup; answer: Answer } {
  const reading = readSetup(document);
  const assessment = assess(document);
  if (!reading.ok || !assessment.ok) throw new Error('the setup has errors');
  return { setup: reading.setup, answer: assessment.answer };
}

const known = new Map<string, Swept>();

/** Machines of the yard judged, their lift known; each only once. */
export function swept(machines: Machines, changes: Changes = {}): Swept {
  const document = documentOf(machines, changes);
  const key = JSON.stringify(document);
  const before = known.get(key);
  if (before !== undefined) return before;
  const { setup, answer } = judgedFully(document);
  if (answer.sweep === null) throw new Error('the lift is not known');
  const made = { setup, answer, sweep: answer.sweep };
  known.set(key, made);
  return made;
}

/** The answer with one station of its sweep, and the sweep itself, changed by hand. */
export function withStation(answer: Answer, station: Partial<Station>, sweep: Partial<Sweep> = {}): Answer {
  if (answer.sweep === null) throw new Error('the lift is not known');
  const [first, ...others] = answer.sweep.stations;
  return {
    ...answer,
    sweep: { ...answer.sweep, ...sweep, stations: [{ ...(first as Station), ...station }, ...others] },
  };
}

/** One lift of each way of holding, with lift arms and without, light and too heavy. */
export const lifts: Readonly<Record<string, () => Swept>> = {
  'rigid frame, arms known': () => swept(['Ostrey 35', 'U-28', 'tiller']),
  'rigid frame that the mast misses': () => swept(['Ostrey 35', 'U-28', 'box blade']),
  'triangular frame': () => swept(['Ostrey 35', 'A-2', 'tiller']),
  'hooks on the link ends': () => swept(['Ostrey 35', 'hook ends', 'box blade']),
  'no coupler, arms known': () => swept(['Ostrey 35', null, 'tiller']),
  'no coupler, arms not known, too heavy': () => swept(['Ostrey 24', null, 'rotary cutter']),
  'no working height': () => swept(['Ostrey 24', null, 'bale spear']),
  'the lift gives out on the way': () => swept(['Ostrey 24', null, 'finish mower']),
  'two rows of pins on a bigger tractor': () => swept(['Ostrey 55', 'U-33', 'two-row']),
  'little is known': () =>
    swept(['Ostrey 24', null, 'tiller'], {
      tractor: { tyreRadius: undefined },
      implement: {
        mass: undefined,
        workPinHeight: undefined,
        centreBehind: undefined,
        lowestBehind: undefined,
        lowestBelow: undefined,
      },
    }),
  'no rating': () =>
    swept(['Ostrey 35', 'U-28', 'tiller'], { tractor: { liftAtBalls: undefined, liftAt610: undefined } }),
  'the rod is too short at the bottom': () =>
    swept(['Ostrey 35', null, 'tiller'], { tractor: { liftRodLength: 300, ballHeightLow: 100 } }),
  'carried higher than it lifts, loaded': () =>
    swept(['Ostrey 35', null, 'tiller'], { implement: { carryHeight: 900, carriedMass: 700, carriedBehind: 500 } }),
  'outlines given': () => {
    const lift = swept(['Ostrey 35', 'U-28', 'tiller']);
    const hood = { name: 'hood', part: 'body', side: hoodOutline } as const;
    return { ...lift, setup: { ...lift.setup, implement: { ...lift.setup.implement, outlines: [hood] } } };
  },
};

const hoodOutline = [
  [120, -60],
  [700, -60],
  [820, -260],
  [760, -400],
  [420, -400],
  [160, -200],
] as const;
