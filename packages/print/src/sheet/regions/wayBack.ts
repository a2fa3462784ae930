import { inks, type Spot } from '../../pdf/ink.ts';
import { settings, span, words, type Block, type Setting, type Words } from '../block.ts';
import type { Reference } from '../content/reference.ts';
import type { Press } from '../press.ts';

/** The code or the reference that leads back to the setup, in a column of a width [mm]. */
export function wayBack(press: Press, reference: Reference, width: number): Block {
  return reference.kind === 'code' ? codeBlock(press, reference, width) : fileBlock(press, reference, width);
}

/** Room over the code, and between it and its words [mm]. */
const [over, beside] = [1, 3] as const;

function codeBlock({ ink, tags }: Press, code: Extract<Reference, { kind: 'code' }>, width: number): Block {
  const { squares, side } = code;
  const text =
    'Scan to open this setup: it is judged anew, and the page says whether that answer differs from this sheet.';
  const set = words(ink.faces, [span(text, settings.small)], settings.small, width - side - beside);
  const square = side / squares.length;
  const paint = ([x, y]: Spot): void => {
    tags.leaf(
      'Figure',
      () => {
        squares.forEach((row, j) => {
          for (const { from, length } of runsOfDark(row))
            ink.rect([x + from * square, y + over + j * square], length * square, square, { fill: inks.black });
        });
      },
      { alt: 'QR code with the link that opens this setup' },
    );
    tags.leaf('P', () => set.write(ink, [x + side + beside, y]));
  };
  return { height: side + over, paint };
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

function fileBlock({ ink, tags }: Press, file: Extract<Reference, { kind: 'file' }>, width: number): Block {
  const set = (text: string, setting: Setting): Words => words(ink.faces, [span(text, setting)], setting, width);
  const text = `Reference of the setup file. ${whyNoCode[file.why]} Whoever printed this sheet keeps the file: checked again, it gives the answer anew, and a sheet printed from it bears the same reference as long as nothing in it was changed.`;
  const [title, body] = [set(file.reference, settings.cell), set(text, settings.small)];
  const paint = ([x, y]: Spot): void =>
    tags.leaf('P', () => {
      title.write(ink, [x, y]);
      body.write(ink, [x, y + title.height]);
    });
  return { height: title.height + body.height, paint };
}
