import {
  readReply,
  readRequest,
  withEdits,
  type InputError,
  type MeasuringReply,
  type MeasuringRequest,
  type SetupDocument,
} from '../records/index.ts';
import { packed, unpacked } from './packed.ts';

type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * The fragment that carries a measuring request. Parts and notes of its setup stay at home: whoever measures needs none of them,
 * and a shorter link makes a code that a phone reads sooner.
 *
 * @param request the request [record]
 * @returns the fragment without `#` [text]
 */
export function requestLinkOf(request: MeasuringRequest): string {
  return `ask=${packed({ ...request, setup: withoutParts(request.setup) })}`;
}

/**
 * Reads a fragment made by `requestLinkOf`.
 *
 * @param fragment the fragment, with or without `#` [text]
 * @returns the request, or what is wrong [InputError codes]
 */
export function readRequestLink(fragment: string): Read<MeasuringRequest> {
  const reading = unpacked(fragment.replace(/^#?ask=/, ''), 'a measuring request in the link');
  return reading.ok ? readRequest(reading.value) : reading;
}

/**
 * The fragment that carries a reply; photos are left out, they travel in a file only.
 *
 * @param reply the reply [record]
 * @returns the fragment without `#` [text]
 */
export function replyLinkOf(reply: MeasuringReply): string {
  return `reply=${packed({ ...reply, photos: undefined })}`;
}

/**
 * Reads a fragment made by `replyLinkOf`.
 *
 * @param fragment the fragment, with or without `#` [text]
 * @returns the reply, or what is wrong [InputError codes]
 */
export function readReplyLink(fragment: string): Read<MeasuringReply> {
  const reading = unpacked(fragment.replace(/^#?reply=/, ''), 'readings in the link');
  return reading.ok ? readReply(reading.value) : reading;
}

function withoutParts(setup: SetupDocument): SetupDocument {
  return withEdits(setup, [
    { path: 'parts', value: undefined },
    { path: 'note', value: undefined },
  ]);
}
