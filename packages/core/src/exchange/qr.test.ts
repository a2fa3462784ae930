import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { longestQrText, qrOf, type QrSquares } from './qr.ts';

/** The reader comes as one function that some loaders wrap. */
const read = ((jsQR as unknown as { default?: typeof jsQR }).default ?? jsQR) as typeof jsQR;

/** A code as a camera would see it straight on, so many dots to a square. */
function seen(squares: QrSquares, dots: number): [Uint8ClampedArray, number, number] {
  const side = squares.length * dots;
  const picture = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let i = 0; i < side * side; i += 1) {
    const isDark = squares[Math.floor(Math.floor(i / side) / dots)]?.[Math.floor((i % side) / dots)] === true;
    if (isDark) picture.fill(0, 4 * i, 4 * i + 3);
  }
  return [picture, side, side];
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const address = 'https://example.org/#ask=1.';

/** An address with a fragment, so many characters in all. */
function linkOfLength(length: number): string {
  const fragment = Array.from({ length: length - address.length }, (_, i) => letters[(7 * i * i + 3 * i) % 64]);
  return address + fragment.join('');
}

describe('codes, read by another library', () => {
  for (const length of [28, 60, 300, 800, 1200, 1400, longestQrText]) {
    test(`${length} characters come back letter for letter`, () => {
      const text = linkOfLength(length);
      const squares = qrOf(text);
      expect(squares).not.toBeNull();
      for (const dots of [3, 5]) expect(read(...seen(squares as QrSquares, dots))?.data).toBe(text);
    });
  }
  test('letters of any script come back too, and count by their bytes', () => {
    const text = 'Плуг 犁 – 26⅞″';
    expect(read(...seen(qrOf(text) as QrSquares, 4))?.data).toBe(text);
    expect(qrOf('é'.repeat(732))).not.toBeNull();
    expect(qrOf('é'.repeat(733))).toBeNull();
  });
  test('a square that is turned round is noticed: it is read, not known', () => {
    const squares = (qrOf(linkOfLength(60)) as QrSquares).map((row) => [...row]);
    for (let i = 12; i < 34; i += 1) squares.forEach((row, j) => j > 12 && row.splice(i, 1, row[i] !== true));
    expect(read(...seen(squares, 4))?.data).not.toBe(linkOfLength(60));
  });
});

describe('sizes', () => {
  test('the longest text makes 125 squares a side and a margin of four; one more makes none', () => {
    const squares = qrOf(linkOfLength(longestQrText)) as QrSquares;
    expect(squares.length).toBe(125 + 8);
    expect(squares.every((row) => row.length === squares.length)).toBe(true);
    expect(squares.slice(0, 4).flat().some(Boolean)).toBe(false);
    expect(qrOf(linkOfLength(longestQrText + 1))).toBeNull();
  });
});
