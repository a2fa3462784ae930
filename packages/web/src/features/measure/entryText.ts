/** What is half typed, taken apart: sign, figures with a point, and the sixteenths of a fraction. */
interface Draft {
  readonly minus: boolean;
  readonly figures: string;
  readonly sixteenths: number;
}

/** A key of the pad. */
export type Key =
  | { readonly kind: 'digit'; readonly digit: string }
  | { readonly kind: 'point' }
  /** Eighths are set; a sixteenth more is put on or taken off. */
  | { readonly kind: 'eighths'; readonly eighths: number }
  | { readonly kind: 'sixteenth' }
  | { readonly kind: 'minus' }
  | { readonly kind: 'erase' };

const form = /^(−|-)?(\d*(?:\.\d*)?)(?: ?(\d{1,2})\/(2|4|8|16))?$/;
const longest = 8;

/** The draft after a key; what was typed by hand in another form is kept and only erased letter by letter. */
export function pressed(text: string, key: Key): string {
  const draft = readDraft(text);
  if (draft === null) return key.kind === 'erase' ? text.slice(0, -1) : text;
  return written(after(draft, key));
}

function readDraft(text: string): Draft | null {
  const match = form.exec(text.trim());
  if (match === null) return null;
  const [, minus, figures = '', above, below] = match;
  const sixteenths = above === undefined ? 0 : (Number(above) * 16) / Number(below);
  return { minus: minus !== undefined, figures, sixteenths };
}

function after(draft: Draft, key: Key): Draft {
  const { figures, sixteenths } = draft;
  switch (key.kind) {
    case 'digit':
      return figures.length >= longest ? draft : { ...draft, figures: withDigit(figures, key.digit) };
    case 'point':
      return figures.includes('.') ? draft : { ...draft, figures: `${figures === '' ? '0' : figures}.`, sixteenths: 0 };
    case 'eighths':
      return { ...draft, figures: whole(figures), sixteenths: sixteenths === key.eighths * 2 ? 0 : key.eighths * 2 };
    case 'sixteenth':
      return { ...draft, figures: whole(figures), sixteenths: sixteenths % 2 === 0 ? sixteenths + 1 : sixteenths - 1 };
    case 'minus':
      return { ...draft, minus: !draft.minus };
    case 'erase':
      return sixteenths > 0 ? { ...draft, sixteenths: 0 } : erased(draft);
  }
}

function withDigit(figures: string, digit: string): string {
  return figures === '0' ? digit : figures + digit;
}

function erased(draft: Draft): Draft {
  return draft.figures === '' ? { ...draft, minus: false } : { ...draft, figures: draft.figures.slice(0, -1) };
}

/** A fraction stands beside a whole number, never beside a decimal. */
function whole(figures: string): string {
  return figures.split('.')[0] ?? '';
}

function written({ minus, figures, sixteenths }: Draft): string {
  const fraction = sixteenths === 0 ? '' : reduced(sixteenths);
  const gap = figures !== '' && fraction !== '' ? ' ' : '';
  return `${minus ? '-' : ''}${figures}${gap}${fraction}`;
}

function reduced(sixteenths: number): string {
  const by = [8, 4, 2].find((divisor) => sixteenths % divisor === 0) ?? 1;
  return `${sixteenths / by}/${16 / by}`;
}

/** Which eighth the draft carries, and whether a sixteenth on top: the keys that are down. */
export function fractionIn(text: string): { readonly eighths: number; readonly sixteenth: boolean } {
  const sixteenths = readDraft(text)?.sixteenths ?? 0;
  return { eighths: Math.floor(sixteenths / 2), sixteenth: sixteenths % 2 === 1 };
}
