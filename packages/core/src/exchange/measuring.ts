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
 * The fragment that carries a measuring request. Parts stay at home, and so does who read a figure how and when: whoever measures
 * needs none of it, and a shorter link makes a code that a phone reads sooner. Every figure is the same, so every finding is too;
 * only what parts would cure is not known there.
 *
 * @param request the request [record]
 * @returns the fragment without `#` [text]
 */
export function requestLinkOf(request: MeasuringRequest): string {
  return `ask=${packed({ ...request, setup: leanSetup(request.setup) })}`;
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

function leanSetup(setup: SetupDocument): SetupDocument {
  return lean(withEdits(setup, [{ path: 'parts', value: undefined }])) as SetupDocument;
}

/** Beside figures and names: nothing of it enters any answer. */
const leftAtHome: ReadonlySet<string> = new Set(['method', 'tool', 'who', 'when', 'source', 'note', '$schema']);

/** A record without what is left at home; a figure that then has nothing beside it is written by itself. */
function lean(node: unknown): unknown {
  if (typeof node !== 'object' || node === null) return node;
  if (Array.isArray(node)) return node.map(lean);
  const kept = Object.entries(node).filter(([key]) => !leftAtHome.has(key));
  const [first, ...more] = kept;
  if (first?.[0] === 'value' && more.length === 0) return first[1];
  return Object.fromEntries(kept.map(([key, value]) => [key, lean(value)]));
}
