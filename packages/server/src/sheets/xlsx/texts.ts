import { limits } from '../limits.ts';
import { tooMuch } from '../trouble.ts';
import { Scanner } from './scan.ts';

/** Characters that XML can’t hold are written `_x000D_`. Source: ECMA-376-1, 22.9.2.19 (ST_Xstring). */
export function withoutEscapes(text: string): string {
  return text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;
}

/** The texts that the sheets of a workbook share, in their order; how a text is pronounced is no part of it. */
export function readSharedTexts(xml: string): readonly string[] {
  const scanner = new Scanner(xml);
  const texts: string[] = [];
  let parts = '';
  let inText = false;
  let pronounced = 0;
  for (let token = scanner.next(); token !== 'end'; token = scanner.next()) {
    if (token === 'text') {
      if (inText && pronounced === 0) parts += scanner.value;
      continue;
    }
    const step = token === 'open' ? 1 : -1;
    if (scanner.name === 't') inText = token === 'open';
    if (scanner.name === 'rPh') pronounced += step;
    if (scanner.name !== 'si') continue;
    if (token === 'close') texts.push(withoutEscapes(parts));
    parts = '';
    if (texts.length > limits.sharedTexts) throw tooMuch(`at most ${limits.sharedTexts} texts`, 'more');
  }
  return texts;
}
