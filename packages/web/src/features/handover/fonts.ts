import type { FontFile, Fonts } from '@hitchwright/print/pure';

/** Every bundled font file of the sheets, by where it lies. */
const files = import.meta.glob<string>(
  '../../../../../node_modules/@fontsource/{source-sans-3,national-park}/files/*-{400,500,600,700}-normal.woff',
  { query: '?url', import: 'default' },
);

const fetched = new Map<string, Uint8Array>();

/** A file that is needed and not there yet. */
class Wanted extends Error {
  constructor(readonly file: FontFile) {
    super(nameOf(file));
  }
}

/** The files that are there; another one stops the writing until it was fetched. */
const fonts: Fonts = (file) => {
  const bytes = fetched.get(nameOf(file));
  if (bytes === undefined) throw new Wanted(file);
  return bytes;
};

const weights = [400, 500, 600, 700] as const;

/** Writes with the bundled fonts: Latin is fetched first, the letters of another script as soon as one turns up. */
export async function withFonts<T>(write: (fonts: Fonts) => T | Promise<T>): Promise<T> {
  const latin = weights.flatMap((weight): FontFile[] => [
    { family: 'source-sans-3', subset: 'latin', weight },
    { family: 'national-park', subset: 'latin', weight },
  ]);
  await Promise.all(latin.map(fetchFile));
  for (;;) {
    try {
      return await write(fonts);
    } catch (problem) {
      if (!(problem instanceof Wanted)) throw problem;
      await fetchFile(problem.file);
    }
  }
}

async function fetchFile(file: FontFile): Promise<void> {
  const name = nameOf(file);
  if (fetched.has(name)) return;
  const found = Object.entries(files).find(([path]) => path.endsWith(`/${name}`))?.[1];
  if (found === undefined) throw new Error(`There is no font file ${name}.`);
  const answer = await fetch(await found());
  if (!answer.ok) throw new Error(`The letters of this script (${file.subset}) can’t be fetched without a signal.`);
  fetched.set(name, new Uint8Array(await answer.arrayBuffer()));
}

function nameOf({ family, subset, weight }: FontFile): string {
  return `${family}-${subset}-${weight}-normal.woff`;
}
