import { inks, type Spot } from '../../pdf/ink.ts';
import { frameWidth } from '../../pdf/paper.ts';
import { bold, settings, span, words, type Block, type Setting, type Words } from '../block.ts';
import type { Reference } from '../content/reference.ts';
import type { SheetOptions } from '../options.ts';
import { rule, rules, type Press } from '../press.ts';

/** Padding, room between two columns, and what is kept for a name written by hand [mm]. */
const [pad, gutter, lineHeight] = [3.5, 5, 11] as const;

/** Width of the compartment of the code or the reference [mm]. */
const leadWidth = 40;

/** What closes a sheet over its title block. */
export interface Closing {
  readonly cautions: readonly string[];
  readonly reference: Reference;
  readonly options: SheetOptions;
}

/** The code or the reference that opens the setup again; beside it the cautions and the lines to sign. */
export function closing(press: Press, { cautions, reference, options }: Closing): Block {
  const lead = reference.kind === 'code' ? codeBlock(press, reference) : fileBlock(press, reference);
  const width = frameWidth - leadWidth;
  const warned = cautionBlock(press, cautions, width);
  const signs = signBlock(press, options, width);
  const height = Math.max(lead.height, warned.height + signs.height);
  return {
    height,
    paint: ([x, y]) => {
      const right = x + leadWidth;
      warned.paint([right, y]);
      lead.paint([x, y]);
      rule(press, [right, y], [right, y + height], rules.thin);
      signs.paint([right, y + height - signs.height]);
    },
  };
}

/** Cautions in two columns, each with its sign; none is torn between them. */
function cautionBlock({ ink, tags }: Press, cautions: readonly string[], width: number): Block {
  const { small, answer, heading } = settings;
  const [sign, from, over] = [words(ink.faces, [bold('!', answer)], small, 3), 3, 1] as const;
  const column = (width - 2 * pad - gutter) / 2;
  const title = words(ink.faces, [span('Cautions', heading)], heading, column);
  const sets = cautions.map((text) => words(ink.faces, [span(text, small)], small, column - from));
  const columns = halves(sets);
  const tallest = Math.max(...columns.map(heightOf));
  const paint = ([x, y]: Spot): void => {
    tags.leaf('H2', () => title.write(ink, [x + pad, y + over]));
    columns.forEach((own, i) => {
      const left = x + pad + i * (column + gutter);
      let top = y + over + title.height;
      for (const set of own) {
        const at = top;
        tags.leaf('P', () => {
          sign.write(ink, [left, at]);
          set.write(ink, [left + from, at]);
        });
        top += set.height + between;
      }
    });
  };
  return { height: over + title.height + tallest, paint };
}

/** Room under each caution [mm]. */
const between = 0.5;

function heightOf(sets: readonly Words[]): number {
  return sets.reduce((sum, { height }) => sum + height + between, 0);
}

/** The same in two columns of which the taller is as low as it can be. */
function halves(sets: readonly Words[]): [Words[], Words[]] {
  const splits = Array.from({ length: sets.length + 1 }, (_, i): [Words[], Words[]] => [sets.slice(0, i), sets.slice(i)]);
  const tallest = (split: [Words[], Words[]]): number => Math.max(...split.map(heightOf));
  return splits.reduce((best, one) => (tallest(one) < tallest(best) ? one : best));
}

function codeBlock({ ink, tags }: Press, { squares, side }: Extract<Reference, { kind: 'code' }>): Block {
  const text =
    'Scan to open this setup: it is judged anew, and the page says whether that answer differs from this sheet.';
  const set = words(ink.faces, [span(text, settings.small)], settings.small, leadWidth - 4);
  const square = side / squares.length;
  const left = (leadWidth - side) / 2;
  const paint = ([x, y]: Spot): void => {
    tags.leaf(
      'Figure',
      () => {
        squares.forEach((row, j) => {
          for (const { from, length } of runsOfDark(row))
            ink.rect([x + left + from * square, y + left + j * square], length * square, square, { fill: inks.black });
        });
      },
      { alt: 'QR code with the link that opens this setup' },
    );
    tags.leaf('P', () => set.write(ink, [x + 2, y + side + 2 * left]));
  };
  return { height: side + 2 * left + set.height + 1, paint };
}

/** Dark squares side by side are one bar, so that no hairline shows between them. */
function runsOfDark(row: readonly boolean[]): { from: number; length: number }[] {
  const runs: { from: number; length: number }[] = [];
  row.forEach((isDark, i) => {
    const last = runs.at(-1);
    if (!isDark) return;
    if (last !== undefined && last.from + last.length === i) last.length += 1;
    else runs.push({ from: i, length: 1 });
  });
  return runs;
}

const whyNoCode = {
  tooLong: 'Its link is too long for a code that scans well off paper.',
  noSite: 'It was printed without the address of a page that opens links.',
} as const;

function fileBlock({ ink, tags }: Press, { reference, why }: Extract<Reference, { kind: 'file' }>): Block {
  const set = (text: string, setting: Setting): Words =>
    words(ink.faces, [span(text, setting)], setting, leadWidth - pad - 1.5);
  const text = `Reference of the setup file. ${whyNoCode[why]} Whoever printed this sheet keeps the file: checked again, it gives the answer anew, and a sheet printed from it bears the same reference as long as nothing in it was changed.`;
  const [title, body] = [set(reference, settings.cell), set(text, settings.small)];
  const paint = ([x, y]: Spot): void => {
    tags.leaf('P', () => {
      title.write(ink, [x + pad, y + 1]);
      body.write(ink, [x + pad, y + 1 + title.height]);
    });
  };
  return { height: title.height + body.height + 2, paint };
}

/** Two lines to sign, side by side. */
function signBlock(press: Press, { customer, issuer }: SheetOptions, width: number): Block {
  const { ink, tags } = press;
  const { small } = settings;
  const column = (width - 2 * pad - gutter) / 2;
  const labels = [`Read and received${named(customer)}, date`, `Handed over${named(issuer)}, date`];
  const sets = labels.map((text): Words => words(ink.faces, [span(text, small)], small, column));
  const paint = ([x, y]: Spot): void => {
    sets.forEach((set, i) => {
      const left = x + pad + i * (column + gutter);
      rule(press, [left, y + lineHeight], [left + column, y + lineHeight], rules.thin);
      tags.leaf('P', () => set.write(ink, [left, y + lineHeight + 0.4]));
    });
  };
  return { height: lineHeight + Math.max(...sets.map(({ height }) => height)) + 1.4, paint };
}

function named(who: string | undefined): string {
  return who === undefined ? '' : `: ${who}`;
}
