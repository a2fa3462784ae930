import type { InputError, SetupDocument } from '../records/index.ts';
import { packed, unpacked } from './packed.ts';

/** A document read from a link, or what is wrong with the link. */
export type LinkReading =
  | { readonly ok: true; readonly document: SetupDocument }
  | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * The fragment that carries a setup document: `1.` and the document as JSON, deflated against dictionary 1, in base64url.
 * A version is never changed once links of it are out; a new dictionary is a new version (decision 0003).
 *
 * @param document a setup document [JSON]
 * @returns the fragment without `#` [text]
 */
export function linkOf(document: SetupDocument): string {
  return packed(document);
}

/**
 * Reads a fragment made by `linkOf`, of any version there ever was.
 *
 * @param fragment the fragment, with or without `#` [text]
 * @returns the document, or what is wrong [InputError codes]
 */
export function readLink(fragment: string): LinkReading {
  const reading = unpacked(fragment.replace(/^#/, ''), 'a setup in the link');
  return reading.ok ? { ok: true, document: reading.value } : reading;
}
