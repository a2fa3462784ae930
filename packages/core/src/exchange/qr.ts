import { strToU8 } from 'fflate';
import { encode } from 'uqr';

/** The dark squares of a code, row by row from the top, with the quiet margin that readers want. */
export type QrSquares = readonly (readonly boolean[])[];

/** Longest text that is put into one code [bytes of UTF-8]: what version 27 holds, 125 squares a side. */
export const longestQrText = 1465;

/**
 * A text as a QR code (ISO/IEC 18004), at the lowest level of correction: it is read off a screen or a clean sheet.
 *
 * @param text the text, such as an address [characters]
 * @returns its squares with a margin of four; null where it is too long to be read off paper by a phone [squares]
 */
export function qrOf(text: string): QrSquares | null {
  if (strToU8(text).length > longestQrText) return null;
  return encode(text, { ecc: 'L', border: 4 }).data;
}
