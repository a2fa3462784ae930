import fc from 'fast-check';

const fine = 2 ** 20;

/** Numbers spread evenly over a range; doubles drawn by fast-check itself crowd around zero. */
export function even(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: fine }).map((share) => min + ((max - min) * share) / fine);
}
