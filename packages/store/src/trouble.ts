import { errorLine, type InputError } from '@hitchwright/core/records';

/** What a store can run into that is nobody’s input. */
export type TroubleCode =
  /** Somebody else holds it for longer than is waited. */
  | 'busy'
  /** No room is left. */
  | 'full'
  /** The file or its content is not whole. */
  | 'damaged'
  /** A newer program made it. */
  | 'newer'
  /** It belongs to something else. */
  | 'notOurs'
  /** What reads and writes it is not installed. */
  | 'noDriver'
  /** It can't be reached, or may not be written. */
  | 'unreachable';

/** A trouble of the store, in one sentence for whoever runs it. */
export class StoreTrouble extends Error {
  readonly code: TroubleCode;

  constructor(code: TroubleCode, message: string, cause?: unknown) {
    super(message, { cause });
    this.name = 'StoreTrouble';
    this.code = code;
  }
}

/** There is no such record, reading, answer, photo or group of changes. */
export class NotFound extends Error {
  readonly what: string;
  readonly id: string;

  constructor(what: string, id: string) {
    super(`There is no ${what} ${id}.`);
    this.name = 'NotFound';
    this.what = what;
    this.id = id;
  }
}

/** Somebody else was first: nothing was written, and this is how it stands now. */
export class Conflict extends Error {
  /** What stands now, or what stands in the way [JSON]. */
  readonly current: unknown;

  constructor(message: string, current: unknown) {
    super(message);
    this.name = 'Conflict';
    this.current = current;
  }
}

/** The input was not taken; every error in it is named. */
export class Refused extends Error {
  readonly errors: readonly InputError[];

  constructor(errors: readonly InputError[]) {
    super(errors.slice(0, 3).map(errorLine).join(' '));
    this.name = 'Refused';
    this.errors = errors;
  }
}
