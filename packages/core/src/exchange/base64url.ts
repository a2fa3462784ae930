const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes as base64url without padding (RFC 4648 §5). */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const word = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const letters = Math.min(4, bytes.length - i + 1);
    for (let k = 0; k < letters; k += 1) text += alphabet[(word >> (18 - 6 * k)) & 63] as string;
  }
  return text;
}

/** Bytes of a base64url text, or null where it is none. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let word = 0;
  let bits = 0;
  let filled = 0;
  for (const letter of text) {
    const value = alphabet.indexOf(letter);
    if (value < 0) return null;
    word = ((word << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[filled] = (word >> bits) & 255;
    filled += 1;
  }
  return bytes;
}
