import { excerpt, type InputError } from '@hitchwright/core/records';

/** Thrown inside the reader of sheet files only: what is wrong with the file. */
export class SheetTrouble extends Error {
  constructor(readonly error: InputError) {
    super(error.hint);
  }
}

/** Something that a file is not: which kind was expected, what came, and what to do. */
export function notThis(expected: string, got: string, hint: string): SheetTrouble {
  return new SheetTrouble({ code: 'wrong-type', path: '', expected, got: excerpt(got), hint });
}

/** More than a limit, which is named. */
export function tooMuch(
  expected: string,
  got: string,
  hint = 'Split the file, or take out what is not needed.',
): SheetTrouble {
  return new SheetTrouble({ code: 'too-large', path: '', expected, got, hint });
}

/** A damaged file. */
export function damaged(what: string): SheetTrouble {
  return notThis('a whole XLSX file', what, 'The file is damaged: save it again and send it whole.');
}
