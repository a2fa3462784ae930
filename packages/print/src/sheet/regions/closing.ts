import { inks, type Spot } from '../../pdf/ink.ts';
import { frameWidth } from '../../pdf/paper.ts';
import { bold, settings, span, words, type Block, type Words } from '../block.ts';
import type { Reference } from '../content/reference.ts';
import type { SheetOptions } from '../options.ts';
import { rule, rules, type Press } from '../press.ts';

const pad = 3.5;
const lineHeight = 11.5;

/** The code or the reference that opens the setup again, and the lines to sign. */
export function closing(press: Press, reference: Reference, options: SheetOptions): Block {
  const code = reference.kind === 'code' ? codeBlock(press, reference) : fileBlock(press, reference);
  const width = reference.kind === 'code' ? reference.side + 42 : 78;
  const signs = signBlock(press, options, frameWidth - width);
  const height = Math.max(code.height, signs.height);
  return {
    height,
    paint: ([x, y]) => {
      code.paint([x, y]);
      rule(press, [x + width, y], [x + width, y + height], rules.thin);
      signs.paint([x + width, y]);
    },
  };
}

function codeBlock({ ink, tags }: Press, { squares, side }: Extract<Reference, { kind: 'code' }>): Block {
  const text =
    'Scan to open this setup: it is judged anew, and the page says whether that answer differs from this sheet.';
  const set = words(ink.faces, [span(text, settings.small)], settings.small, 36);
  const square = side / squares.length;
  const paint = ([x, y]: Spot): void => {
    tags.leaf(
      'Figure',
      () => {
        squares.forEach((row, j) => {
          for (const { from, length } of runsOfDark(row))
            ink.rect([x + 1 + from * square, y + 1 + j * square], length * square, square, { fill: inks.black });
        });
      },
      { alt: 'QR code with the link that opens this setup' },
    );
    tags.leaf('P', () => set.write(ink, [x + side + 2.5, y + pad]));
  };
  return { height: side + 2, paint };
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
  const { small } = settings;
  const text = `Reference of the setup file. ${whyNoCode[why]} Whoever printed this sheet keeps the file: checked again, it gives the answer anew, and a sheet printed from it bears the same reference as long as nothing in it was changed.`;
  const title = words(ink.faces, [span(reference, settings.cell)], settings.cell, 71);
  const set = words(ink.faces, [bold('', small), span(text, small)], small, 71);
  const paint = ([x, y]: Spot): void => {
    tags.leaf('P', () => {
      title.write(ink, [x + pad, y + 2]);
      set.write(ink, [x + pad, y + 2 + title.height]);
    });
  };
  return { height: title.height + set.height + 4, paint };
}

function signBlock(press: Press, { customer, issuer }: SheetOptions, width: number): Block {
  const { ink, tags } = press;
  const labels = [`Read and received${named(customer)}, date`, `Handed over${named(issuer)}, date`];
  const sets = labels.map((text): Words =>
    words(ink.faces, [span(text, settings.small)], settings.small, width - 2 * pad),
  );
  const heights = sets.map(({ height }) => lineHeight + height);
  const paint = ([x, y]: Spot): void => {
    let top = y;
    sets.forEach((set, i) => {
      const line = top + lineHeight - 1;
      rule(press, [x + pad, line], [x + width - pad, line], rules.thin);
      tags.leaf('P', () => set.write(ink, [x + pad, line + 0.5]));
      top += heights[i] ?? 0;
    });
  };
  return { height: heights.reduce((sum, one) => sum + one, 0) + 2, paint };
}

function named(who: string | undefined): string {
  return who === undefined ? '' : `: ${who}`;
}
