import type { Answered, Grade } from './recordTypes.ts';

/** How a reading is founded, as a person says it. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  measured: 'measured',
  maker: 'from the maker',
  listed: 'from a listing',
  guessed: 'guessed',
  class: 'usual for its class',
};

/** What the reading in use won by. */
export const becauseWords: Readonly<Record<Answered['inUse'][string]['because'], string>> = {
  only: 'the only one',
  pinned: 'chosen by a person out',
  figure: 'the one with a figure',
  grade: 'the best founded',
  latest: 'the latest',
};
