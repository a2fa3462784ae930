import { decimalFigure, type Figure } from './figure.ts';

/** What a separator with exactly three digits after it may be: it groups thousands, it is the decimal sign, or nobody can tell. */
type SeparatorMeaning = 'groups' | 'decimal' | 'either';

/** How the writer of a figure uses commas and points. */
export interface FigureStyle {
  readonly comma: SeparatorMeaning;
  readonly point: SeparatorMeaning;
}

/** Every way to read a decimal figure: none where it isn't one, two where a lone comma or point may group or divide. */
export function readDecimal(text: string, style: FigureStyle): readonly Figure[] {
  if (/^\d+$/.test(text)) return [decimalFigure(text)];
  if (/^\d{1,3}( \d{3})+([.,]\d+)?$/.test(text)) return [decimalFigure(withPoint(text.replace(/ /g, '')))];
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text) && !isLone(text)) return [decimalFigure(text.replace(/,/g, ''))];
  if (/^\d{1,3}(\.\d{3})+(,\d+)?$/.test(text) && !isLone(text)) {
    return [decimalFigure(withPoint(text.replace(/\./g, '')))];
  }
  return readLoneSeparator(text, style);
}

function isLone(text: string): boolean {
  return text.replace(/\d/g, '').length === 1;
}

function withPoint(text: string): string {
  return text.replace(',', '.');
}

function readLoneSeparator(text: string, style: FigureStyle): readonly Figure[] {
  if (!/^(\d+[.,]\d+|[.,]\d+|\d+\.)$/.test(text)) return [];
  const decimal = decimalFigure(withPoint(text));
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return [decimal];
  const grouped = decimalFigure(text.replace(/[.,]/, ''));
  const meaning = text.includes(',') ? style.comma : style.point;
  if (meaning === 'either') return [grouped, { ...decimal, label: String(Number(decimal.text)) }];
  return [meaning === 'groups' ? grouped : decimal];
}
