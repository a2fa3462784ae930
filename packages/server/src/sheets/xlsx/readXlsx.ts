import type { Sheet } from '@hitchwright/core/exchange';
import { limits } from '../limits.ts';
import type { SheetFile } from '../sheetFile.ts';
import { damaged, notThis, tooMuch } from '../trouble.ts';
import { readDirectory, type Entry } from '../zip/directory.ts';
import { unpacked } from '../zip/unpack.ts';
import { readFormats } from './formats.ts';
import { entryOf, readRelations, readWorkbook, refuseUnwanted, type ListedSheet, type Relation } from './parts.ts';
import { readSheetCells, type Workbook } from './sheet.ts';
import { readSharedTexts } from './texts.ts';

/** The packed parts of a workbook. */
interface Parts {
  readonly bytes: Buffer;
  readonly entries: ReadonlyMap<string, Entry>;
}

/**
 * Reads a workbook. The packed file is looked over before anything of it is unpacked, and only the parts that hold cells are.
 *
 * An own reader over the plain parts: it has to know which cells were formulas, what stands in number formats (`0.0" in"`), and to hold every
 * size to a limit while unpacking, none of which the reading library lets through.
 */
export async function readXlsx(bytes: Buffer): Promise<SheetFile> {
  const parts: Parts = { bytes, entries: readDirectory(bytes) };
  refuseUnwanted(parts.entries, textOf(parts, '[Content_Types].xml'));
  for (const name of parts.entries.keys()) if (/\.rels$/i.test(name)) readRelations(textOf(parts, name) ?? '');
  const workbookXml = textOf(parts, 'xl/workbook.xml');
  if (workbookXml === null)
    throw notThis('a CSV or XLSX file', 'another kind of document', 'Save the table as XLSX or CSV.');
  const { sheets, is1904 } = readWorkbook(workbookXml);
  if (sheets.length > limits.sheets) throw tooMuch(`at most ${limits.sheets} sheets`, `${sheets.length}`);
  const relations = readRelations(textOf(parts, 'xl/_rels/workbook.xml.rels') ?? '<Relationships/>');
  const shared = (type: string): string | null => {
    const target = relations.find((relation) => relation.type === type)?.target;
    return target === undefined ? null : textOf(parts, entryOf(target));
  };
  const [texts, formats] = [shared('sharedStrings'), shared('styles')];
  const workbook = {
    texts: texts === null ? [] : readSharedTexts(texts),
    formats: formats === null ? [] : readFormats(formats),
    is1904,
  };
  return readSheets(parts, sheets, relations, workbook);
}

async function readSheets(
  parts: Parts,
  listed: readonly ListedSheet[],
  relations: readonly Relation[],
  workbook: Workbook,
): Promise<SheetFile> {
  const sheets: Sheet[] = [];
  const told: string[] = [];
  const budget = { cells: limits.cells };
  for (const { name, relation, isHidden } of listed) {
    const found = relations.find(({ id }) => id === relation);
    if (found?.type !== 'worksheet') continue;
    if (isHidden) {
      told.push(`The sheet “${name}” is hidden: left out.`);
      continue;
    }
    const xml = textOf(parts, entryOf(found.target));
    if (xml === null) throw damaged('a sheet that is not there');
    const { rows, hiddenRows, emptyFormulas } = await readSheetCells(xml, workbook, budget);
    sheets.push({ name, rows });
    if (hiddenRows > 0) told.push(`“${name}”: ${counted(hiddenRows, 'hidden row')} read like the others.`);
    if (emptyFormulas > 0)
      told.push(
        `“${name}”: ${counted(emptyFormulas, 'formula')} without a saved result left empty; open and save the file once more.`,
      );
  }
  if (sheets.length === 0)
    throw notThis('a workbook with a sheet to read', 'none', 'Make a sheet visible and save it.');
  return { sheets, told };
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? ' is' : 's are'}`;
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** The text of an entry, or null where there is none. */
function textOf({ bytes, entries }: Parts, name: string): string | null {
  const entry = entries.get(name);
  if (entry === undefined) return null;
  try {
    return utf8.decode(unpacked(bytes, entry));
  } catch (problem) {
    if (problem instanceof TypeError) throw damaged('a part that is not text');
    throw problem;
  }
}
