import type { CheckId } from '../../src/engine/findings/index.ts';
import { middle } from '../../src/engine/geometry/index.ts';
import { levelWithin } from '../../src/engine/lift/leaves.ts';
import { liftLimits } from '../../src/engine/lift/limits.ts';
import { holdsUpper } from '../../src/engine/lift/question.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { openTruth, type Seen } from '../properties/liftTruth.ts';
import type { Sources } from './pinTruth.ts';
import { lazily, type Margins, type TrueFigure } from './truth.ts';

/** A margin by what is seen of a truth of the lift. */
interface Through {
  readonly needs: readonly Seen[];
  readonly of: (seen: (what: Seen) => number, truth: Reading) => number;
}

/** What is left before the linkage can't be, by what else is looked at with it. */
const closing: readonly Seen[] = ['closes', 'raiseCloses', 'carryCloses'];

/**
 * Margins of the checks through the lift: the engine’s formula on plain numbers at many heights, never its bounds. Without a
 * linkage there is no way to go through: sums of heights, and the formula of the ratings.
 */
export function liftMargins(sources: Sources, ids: readonly CheckId[]): Margins {
  const made = marginsOf(sources);
  const told = ids.flatMap((id) => {
    const through = made[id];
    return through === undefined ? [] : [[id, through] as const];
  });
  const needs = told.flatMap(([, through]) => through.needs);
  const isThrough = sources.question.lift.structure.linkage && needs.length > 0;
  const wanted = [...needs, ...(isThrough ? closing : [])];
  const look = openTruth(sources.question, { wanted, places: sources.places });
  return {
    ids: told.map(([id]) => id),
    look: (truth) => {
      const seen = look(truth);
      const read = (what: Seen): number => {
        const value = seen.get(what);
        if (value === undefined) throw new Error(`${what} is not looked at`);
        return value;
      };
      return {
        margins: told.map(([id, { of }]) => [id, of(read, truth)] as const),
        closes: isThrough ? Math.min(...closing.map(read)) : Infinity,
      };
    },
  };
}

function marginsOf(sources: Sources): Readonly<Partial<Record<CheckId, Through>>> {
  const { question } = sources;
  const leaf = (name: string): TrueFigure => leafOf(sources, name);
  const [parked, seat, rise, low] = [
    leaf('parkedPinHeight'),
    leaf('seatDepth'),
    leaf('hookRise'),
    leaf('ballHeightLow'),
  ];
  const [pitch, carryHeight, clearance] = [leaf('workPitch'), leaf('carryHeight'), leaf('clearanceWanted')];
  const [shortest, longest] = [topLinkEnd(sources, 0), topLinkEnd(sources, 1)];
  const isThrough = question.lift.structure.linkage && holdsUpper(question.lift);
  return {
    'front.topLink': {
      needs: ['topLink'],
      of: (seen, truth) => Math.min(seen('topLink') - shortest(truth), longest(truth) - seen('topLink')),
    },
    'pickUp.height': {
      needs: isThrough ? ['pinsLowest'] : [],
      of: (seen, truth) => parked(truth) - seat(truth) - (isThrough ? seen('pinsLowest') : low(truth) + rise(truth)),
    },
    'work.height': {
      needs: ['workHeight', 'lowest', 'highest'],
      of: (seen) => Math.min(seen('workHeight') - seen('lowest'), seen('highest') - seen('workHeight')),
    },
    'work.attitude': { needs: [], of: (_, truth) => levelWithin - Math.abs(pitch(truth)) },
    'contact.tyre': { needs: ['tyreGap'], of: (seen) => seen('tyreGap') - liftLimits.tyreGap },
    'lift.linkage': { needs: ['closes'], of: (seen) => seen('closes') },
    'lift.height': { needs: ['highest'], of: (seen, truth) => seen('highest') - carryHeight(truth) },
    'lift.force': { needs: ['force'], of: (seen) => seen('force') },
    'limit.clearance': { needs: ['clearance'], of: (seen, truth) => seen('clearance') - clearance(truth) },
    'limit.hooks': { needs: ['lowerForceUp'], of: (seen) => seen('lowerForceUp') },
    'limit.pinLoad': pinLoad(sources),
  };
}

function leafOf({ question }: Sources, name: string): TrueFigure {
  const term = question.lift.leaves.exact.get(name);
  if (term === undefined) throw new Error(`no leaf ${name}`);
  return (truth) => middle(term(truth));
}

function topLinkEnd({ figures }: Sources, end: 0 | 1): TrueFigure {
  return lazily(() => figures.of(`tractor.topLinkLength.adjustable.between.${end}`));
}

/** One pin takes half of the force on both, and as much more as the load lies to its side. */
function pinLoad(sources: Sources): Through {
  const { question, figures } = sources;
  const rated = lazily(() => figures.of(`${question.joint.frontLower.path}.lowerPinRatedLoad`));
  const aside = lazily(() => figures.of('implement.centreAside'));
  const half = leafOf(sources, 'halfBallSpan');
  return {
    needs: ['lowerForce'],
    of: (seen, truth) => rated(truth) - seen('lowerForce') * (0.5 + Math.abs(aside(truth)) / (2 * half(truth))),
  };
}
