import { fractionFigure, type Figure } from './figure.ts';

const fractionAfterWhole = /^(?:(.*\S)(?: ?- ?| ))?(\d{1,6})\/(\d{1,6})$/;

/** Every way to read `7/8`, `26 7/8` or `26-7/8`: none where it isn't a fraction, two where a lost space is likely. */
export function readFraction(text: string): readonly Figure[] {
  const match = fractionAfterWhole.exec(text);
  if (match === null) return [];
  const [, whole, top = '', bottom = ''] = match;
  if (Number(bottom) === 0) return [];
  return whole === undefined ? readBareFraction(top, bottom) : readMixed(whole, Number(top), Number(bottom));
}

function readMixed(whole: string, numerator: number, denominator: number): readonly Figure[] {
  const isWhole = /^(\d{1,9}|\d{1,3}([ ,.]\d{3}){1,2})$/.test(whole);
  if (!isWhole || numerator >= denominator) return [];
  return [fractionFigure(Number(whole.replace(/\D/g, '')), numerator, denominator)];
}

/** Text copied from a page often loses the space of 26 7/8, so 267/8 has two readings. */
function readBareFraction(top: string, bottom: string): readonly Figure[] {
  const asWritten = fractionFigure(0, Number(top), Number(bottom));
  return Number(top) < Number(bottom) ? [asWritten] : [asWritten, ...withLostSpace(top, Number(bottom))];
}

function withLostSpace(top: string, denominator: number): readonly Figure[] {
  const splits = [top.length - 1, top.length - 2].filter((at) => at > 0 && top[at] !== '0');
  return splits.flatMap((at) => readMixed(top.slice(0, at), Number(top.slice(at)), denominator)).filter(isReduced);
}

/** Nobody prints 2/8 or 6/16 on a drawing, so such a split is no likely reading. */
function isReduced(figure: Figure): boolean {
  return Number(figure.text) % 2 === 1 || figure.denominator % 2 === 1;
}
