import type { FieldRule } from '../../../records/index.ts';
import { folded, foldedSet, meaningOf } from './words.ts';

/** What people call each reference point; the first is written into a sheet. */
const pointWords: Readonly<Record<string, readonly string[]>> = {
  shoulder: ['shoulder', 'shoulder to shoulder', 'step to step', 'step', 'shoulders'],
  ballCentre: [
    'ball centre',
    'ball centre to ball centre',
    'ball centres',
    'centre to centre',
    'c to c',
    'c c',
    'centres',
  ],
  unsaid: ['not said where', 'unsaid', 'not said'],
  innerFaces: ['inner faces', 'inside faces', 'inside', 'inner'],
  outerFaces: ['outer faces', 'outside faces', 'outside', 'outer'],
  groove: ['groove', 'to groove', 'from groove'],
  shaftEnd: ['shaft end', 'end of the shaft', 'end', 'tip', 'to end', 'to tip'],
  crossCentre: [
    'cross centre',
    'cross to cross',
    'cross centre to cross centre',
    'cross',
    'joint centre',
    'joint centres',
    'centre to centre',
    'c to c',
    'c c',
  ],
  pinToPin: ['pin to pin', 'lock pin to lock pin', 'lock pins'],
  yokeEnds: ['yoke ends', 'yoke end to yoke end', 'end to end', 'overall', 'tip to tip'],
};

const foldedPoints: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  Object.entries(pointWords).map(([point, spellings]) => [point, foldedSet(spellings.map(british))]),
);
const anyPoint = new Set([...foldedPoints.values()].flatMap((spellings) => [...spellings]));

function british(text: string): string {
  return text.toLowerCase().replace(/center/g, 'centre');
}

/** Words of a heading that say where its figures were taken, without a bracket: all of one list have to be there. */
const hints: readonly (readonly [point: string, words: readonly string[]])[] = [
  ['shoulder', ['shoulder']],
  ['shoulder', ['inside']],
  ['ballCentre', ['ball', 'centre']],
  ['innerFaces', ['inside']],
  ['outerFaces', ['outside']],
  ['groove', ['groove']],
  ['shaftEnd', ['stub', 'end']],
  ['shaftEnd', ['input', 'end']],
  ['shaftEnd', ['shaft', 'end']],
  ['shaftEnd', ['tip']],
  ['crossCentre', ['cross']],
  ['pinToPin', ['pin']],
  ['yokeEnds', ['yoke', 'end']],
  ['yokeEnds', ['overall']],
];

/** How a reference point is written into a sheet. */
export function pointText(point: string): string {
  return (Object.hasOwn(pointWords, point) ? pointWords[point]?.[0] : undefined) ?? point;
}

/** The one reference point among those of a field that a text names, or null. */
export function pointNamed(text: string, rule: FieldRule): string | null {
  const said = folded(british(text));
  const named = (rule.from ?? []).filter(
    (point) => point.toLowerCase() === text.trim().toLowerCase() || foldedPoints.get(point)?.has(said) === true,
  );
  return named.length === 1 ? (named[0] as string) : null;
}

/** The one reference point that the words of a heading tell of, or null. */
export function pointHinted(heading: string, rule: FieldRule): string | null {
  const said = meaningOf(heading);
  const named = hints
    .filter(([point, words]) => rule.from?.includes(point) === true && words.every((word) => said.has(word)))
    .map(([point]) => point);
  return new Set(named).size === 1 ? (named[0] as string) : null;
}

const bracketAtEnd = /^(.+?)\s*[([]([^()[\]]+)[)\]]$/;

/** A heading without a bracket that names reference points of some field: `closed length (cross centre)`. */
export function withoutPoints(heading: string): string {
  const [, before, inner] = bracketAtEnd.exec(heading.trim()) ?? [];
  return before !== undefined && anyPoint.has(folded(british(inner ?? ''))) ? before : heading;
}

/** What stands in the bracket at the end of a heading, or an empty text. */
export function bracketOf(heading: string): string {
  return bracketAtEnd.exec(heading.trim())?.[2] ?? '';
}
