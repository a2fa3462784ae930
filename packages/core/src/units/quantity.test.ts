import { expectTypeOf, it } from 'vitest';
import type { Degree, Kg, Mm, Quantity, Rad } from './index.ts';

it('a plain number is taken as a quantity, but quantities of two dimensions never mix', () => {
  expectTypeOf<number>().toExtend<Mm>();
  expectTypeOf<Mm>().toExtend<number>();
  expectTypeOf<Quantity<'length'>>().toEqualTypeOf<Mm>();
  expectTypeOf<Mm>().not.toExtend<Kg>();
  expectTypeOf<Degree>().not.toExtend<Rad>();
});
