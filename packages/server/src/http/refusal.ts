import { inputErrorsJson } from '@hitchwright/core/contract';
import type { InputError } from '@hitchwright/core/records';
import { Conflict, NotFound, Refused, StoreTrouble, type TroubleCode } from '@hitchwright/store';
import { HTTPException } from 'hono/http-exception';

/** What is wrong where it is nobody’s input. */
export const troubles = [
  'notFound',
  'conflict',
  'otherRevision',
  'otherRequest',
  'host',
  'origin',
  'busy',
  'full',
  'store',
  'tooLong',
  'fault',
] as const;
/** One of `troubles`. */
export type Trouble = (typeof troubles)[number];

/** Statuses that a refused request may have. */
export type RefusalStatus = 400 | 403 | 404 | 409 | 412 | 413 | 415 | 422 | 500 | 503;

/** A request that was not done: every error of its input, or what else is wrong. */
export class HttpRefusal extends Error {
  readonly status: RefusalStatus;
  readonly errors: readonly InputError[];
  readonly trouble: Trouble | null;
  /** What stands now, or what stands in the way [JSON]. */
  readonly current: unknown;

  constructor(
    status: RefusalStatus,
    of: {
      readonly errors?: readonly InputError[];
      readonly trouble?: Trouble;
      readonly message?: string;
      readonly current?: unknown;
    },
  ) {
    super(of.message ?? '');
    this.status = status;
    this.errors = of.errors ?? [];
    this.trouble = of.trouble ?? null;
    this.current = of.current ?? null;
  }

  /** The body of its answer. */
  json() {
    const { trouble, message, current } = this;
    return {
      ...inputErrorsJson(this.errors),
      ...(trouble === null ? {} : { trouble, message }),
      ...(current === null ? {} : { current }),
    };
  }
}

/** A refusal for one error of the input. */
export function inputRefusal(error: InputError, status: RefusalStatus = 400): HttpRefusal {
  return new HttpRefusal(status, { errors: [error] });
}

/** What the store can run into, as whoever asks may know it: no address and no path of this machine is in it. */
const storeTroubles: Readonly<Record<TroubleCode, { status: 500 | 503; trouble: Trouble; message: string }>> = {
  busy: {
    status: 503,
    trouble: 'busy',
    message: 'Somebody else is writing for longer than is waited. Nothing was changed; try again.',
  },
  full: { status: 500, trouble: 'full', message: 'No room is left on the disk. Nothing was changed.' },
  damaged: broken('The store or the archive is damaged.'),
  newer: broken('A newer program made the store.'),
  notOurs: broken('The store belongs to something else.'),
  noDriver: broken('What reads and writes the store is not installed.'),
  unreachable: broken('The store can’t be reached.'),
};

function broken(message: string) {
  return { status: 500, trouble: 'store', message: `${message} The server’s own output says more.` } as const;
}

/**
 * The refusal of a request that ran into something.
 *
 * @param problem what was thrown [any]
 * @param wasMatched whether the request named the revision that it is about [flag]
 * @returns the refusal; a fault of ours says nothing of its insides [record]
 */
export function refusalOf(problem: unknown, wasMatched: boolean): HttpRefusal {
  if (problem instanceof HttpRefusal) return problem;
  if (problem instanceof Refused) return new HttpRefusal(400, { errors: problem.errors });
  if (problem instanceof NotFound)
    return new HttpRefusal(404, { trouble: 'notFound', message: `There is no such ${problem.what}.` });
  if (problem instanceof Conflict) return conflictRefusal(problem, wasMatched);
  if (problem instanceof StoreTrouble) {
    const { status, ...of } = storeTroubles[problem.code];
    return new HttpRefusal(status, of);
  }
  if (problem instanceof HTTPException) return ofFramework(problem);
  return new HttpRefusal(500, {
    trouble: 'fault',
    message: 'Something in the server is broken. Its own output says what.',
  });
}

function conflictRefusal({ message, current }: Conflict, wasMatched: boolean): HttpRefusal {
  const isOtherRevision = wasMatched && revisionOf(current) !== null;
  return isOtherRevision
    ? new HttpRefusal(412, { trouble: 'otherRevision', message, current })
    : new HttpRefusal(409, { trouble: 'conflict', message, current });
}

/** The revision of a record or answer; null for anything else. */
export function revisionOf(thing: unknown): number | null {
  const { revision, id } = (thing ?? {}) as { readonly revision?: unknown; readonly id?: unknown };
  return typeof revision === 'number' && typeof id === 'string' ? revision : null;
}

function ofFramework({ status }: HTTPException): HttpRefusal {
  const [code, expected, hint]: [InputError['code'], string, string] =
    status === 415
      ? ['wrong-type', 'a content type that the route takes', 'See /api/openapi.json for what it takes.']
      : ['not-json', 'a body in JSON', 'Check commas, quotes and brackets.'];
  return inputRefusal({ code, path: '', expected, got: 'something else', hint }, status === 415 ? 415 : 400);
}

/** An Idempotency-Key was used for another request before. */
export function otherRequest(): HttpRefusal {
  return new HttpRefusal(422, {
    trouble: 'otherRequest',
    message: 'Another request was done under this Idempotency-Key. Nothing was changed; take a new key.',
  });
}
