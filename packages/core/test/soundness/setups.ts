import fc from 'fast-check';
import { readSetup, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { setups } from '../properties/generate.ts';
import { balanceCases, balanceDocument, balanceTapePaths, balanceTapes } from '../properties/generateBalance.ts';
import { documentOf, liftCases, tapePaths, tapes, type Spoken } from '../properties/generateLift.ts';
import { shaftCases } from '../properties/generateShaft.ts';
import { shaftDocument, shaftTapePaths, shaftTapes } from '../properties/generateShaftDocument.ts';
import { hookTwists } from './hookTwists.ts';
import { liftTwists } from './liftTwists.ts';
import { suited } from './suitedShaft.ts';
import { twisted, type Twist } from './twist.ts';
import { balanceTwists, driveTwists, workTwists } from './workTwists.ts';

/** What a generated setup is mostly about. */
export type Kind = 'hookUp' | 'lift' | 'drive' | 'balance' | 'everything';

/** How well the figures of a setup are known. */
export type Known = 'exact' | 'narrow' | 'wide' | 'mixed';

/** One generated setup, made again by its seed and its number. */
export interface SoundSetup {
  readonly seed: number;
  readonly number: number;
  readonly kind: Kind;
  readonly known: Known;
  readonly twists: readonly string[];
  readonly document: SetupDocument;
}

/** The seed that setups are generated from unless another one is asked for. */
export const usualSeed = 20261125;

/** In every twenty setups so many are of each kind. */
const kinds: readonly Kind[] = [
  ...['hookUp', 'lift', 'drive', 'hookUp', 'balance', 'lift', 'hookUp', 'everything', 'drive', 'hookUp'],
  ...['lift', 'balance', 'hookUp', 'drive', 'lift', 'hookUp', 'everything', 'balance', 'lift', 'drive'],
] as Kind[];

const knowns: readonly Known[] = ['narrow', 'wide', 'exact', 'narrow', 'wide', 'narrow', 'narrow'];

/** The setup of a number; the same one whatever else is generated. */
export function setupOf(seed: number, number: number): SoundSetup {
  const kind = kinds[number % kinds.length] as Kind;
  const known = kind === 'hookUp' ? 'mixed' : (knowns[number % knowns.length] as Known);
  const [made] = fc.sample(
    makers[kind](known).filter(({ document }) => readSetup(document).ok),
    // A third of them near the ends of what is generated, the others anywhere in it.
    { seed: seed + 7919 * number, numRuns: 1, unbiased: number % 3 !== 0 },
  );
  if (made === undefined) throw new Error('nothing generated');
  return { seed, number, kind, known, ...made };
}

type Made = Pick<SoundSetup, 'document' | 'twists'>;

/** How much wider than a tape leaves them the figures are said; where most is open together, less. */
function times(known: Known, kind: Kind): fc.Arbitrary<number> {
  if (known === 'exact') return fc.constant(0);
  if (known === 'narrow') return fc.oneof(even(0.05, 1), fc.constant(1));
  return kind === 'drive' || kind === 'everything' ? even(1.5, 3) : even(2, 6);
}

/** The ways in which figures of a lift, a drive or axle loads are said. */
const said = (known: Known, kind: Kind) =>
  fc.record({ lift: tapePaths, drive: shaftTapePaths, axles: balanceTapePaths, by: times(known, kind) });

const exactly: Spoken = (_, value) => value;

/** Some of the twists that a document can take, and now and then what its work takes. */
function twistedBy(document: SetupDocument, twists: Readonly<Record<string, Twist>>): fc.Arbitrary<Made> {
  return twisted(document, twists, { least: 1, most: 4 }).chain((one) =>
    twisted(one.document, workTwists, { least: 0, most: 2 }).map((other) => ({
      document: other.document,
      twists: [...one.twists, ...other.twists],
    })),
  );
}

/** Splines and speeds that go together: what a drive that can be told of has to say. */
const splines: readonly Edit[] = [
  { path: 'tractor.ptoType', value: 1 },
  { path: 'tractor.ptoSpeeds', value: [540] },
  { path: 'implement.inputType', value: 1 },
  { path: 'implement.inputSpeed', value: 540 },
  { path: 'shaft.tractorType', value: 1 },
  { path: 'shaft.implementType', value: 1 },
];

/** Half of what a shaft could drive is said to need none. */
const drivenOrNot = (document: SetupDocument): fc.Arbitrary<SetupDocument> =>
  fc
    .constantFrom<readonly Edit[]>([], [{ path: 'implement.driven', value: false }])
    .map((edits) => withEdits(document, edits));

/** Half of all drives are made so that they run. */
const withSplines = (document: SetupDocument): fc.Arbitrary<SetupDocument> =>
  fc.boolean().map((isSuited) => withEdits(isSuited ? suited(document) : document, splines));

const makers: Readonly<Record<Kind, (known: Known) => fc.Arbitrary<Made>>> = {
  hookUp: () => setups.chain((document) => twistedBy(document, hookTwists)),
  lift: (known) =>
    fc.tuple(liftCases(), said(known, 'lift')).chain(([one, { lift, by }]) => {
      const document = documentOf(one, by === 0 ? exactly : tapes(lift, by));
      return drivenOrNot(document).chain((plain) => twistedBy(plain, { ...hookTwists, ...liftTwists(one) }));
    }),
  drive: (known) =>
    fc.tuple(shaftCases(), said(known, 'drive')).chain(([one, { lift, drive, by }]) => {
      const document = shaftDocument(one, by === 0 ? exactly : shaftTapes(drive, tapes(lift, by), by));
      const twists = { ...driveTwists, ...liftTwists(one.lift) };
      return withSplines(document).chain((plain) => twistedBy(plain, twists));
    }),
  balance: (known) =>
    fc.tuple(balanceCases(), said(known, 'balance')).chain(([one, { lift, axles, by }]) => {
      const document = balanceDocument(one, by === 0 ? exactly : balanceTapes(axles, tapes(lift, by), by));
      const twists = { ...balanceTwists, ...liftTwists(one.lift) };
      return drivenOrNot(document).chain((plain) => twistedBy(plain, twists));
    }),
  everything: (known) =>
    fc
      .tuple(shaftCases(), balanceCases(), said(known, 'everything'))
      .chain(([one, weighed, { lift, drive, axles, by }]) => {
        const spoken = by === 0 ? exactly : shaftTapes(drive, balanceTapes(axles, tapes(lift, by), by), by);
        const onAxles = Object.entries(weighed.tractor).map(([key, value]): Edit => ({
          path: `tractor.${key}`,
          value: spoken(`tractor.${key}`, value),
        }));
        const document = withEdits(shaftDocument(one, spoken), [
          ...onAxles,
          { path: 'tractor.loader', value: weighed.loader },
          { path: 'tractor.weighedWithLoader', value: weighed.weighedWithLoader },
          { path: 'rules.steeringShare', value: weighed.rule },
        ]);
        const twists = { ...driveTwists, ...balanceTwists, ...liftTwists(one.lift), ...hookTwists };
        return withSplines(document).chain((plain) => twistedBy(plain, twists));
      }),
};
