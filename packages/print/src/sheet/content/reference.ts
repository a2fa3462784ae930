import type { Answer } from '@hitchwright/core/assess';
import { printedLinkOf, qrOf, type QrSquares } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';

/** A code that is scanned off the sheet, or the reference that stands in its place. */
export type Reference =
  | { readonly kind: 'code'; readonly squares: QrSquares; readonly address: string; readonly side: number }
  | { readonly kind: 'file'; readonly reference: string; readonly why: 'tooLong' | 'noSite' };

/** Side of the code, the most it may be, and the least side of one square [mm]: a phone reads a third of a millimetre off a copy. */
const code = { side: 30, most: 36, square: 1 / 3 } as const;

/** The code of the link where it scans well, else the reference of the setup file. */
export async function referenceOf(
  document: SetupDocument,
  verdict: Answer['verdict'],
  { site, date }: { readonly site?: string; readonly date: string },
): Promise<Reference> {
  const reference = await fileReference(document);
  if (site === undefined) return { kind: 'file', reference, why: 'noSite' };
  const address = `${site}#${printedLinkOf(document, { verdict, date })}`;
  const squares = qrOf(address);
  const side = squares === null ? Infinity : Math.max(code.side, squares.length * code.square);
  if (squares === null || side > code.most) return { kind: 'file', reference, why: 'tooLong' };
  return { kind: 'code', squares, address, side };
}

/**
 * A short reference of a setup: the first twelve hexadecimal figures of the SHA-256 of its JSON with keys in order.
 *
 * @param document the setup [JSON]
 * @returns the reference [text]
 */
export async function fileReference(document: SetupDocument): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(inOrder(document)));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest.slice(0, 6)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

function inOrder(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(inOrder);
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, value]) => [key, inOrder(value)]));
}
