import { notThis } from '../trouble.ts';
import type { Entry } from '../zip/directory.ts';
import { Scanner } from './scan.ts';

const asPlain = 'Save a copy as a plain XLSX workbook with values only.';

/** Parts that run, reach out of the file, or hide another file in it: none of them is needed for a table. */
const unwanted: readonly (readonly [RegExp, string])[] = [
  [/(?:^|\/)vbaProject\.bin$|^xl\/macrosheets\/|\.bas$/i, 'a workbook with macros'],
  [/^xl\/(?:externalLinks|queryTables)\/|^xl\/connections\.xml$/i, 'a workbook with links to other files or databases'],
  [/^xl\/(?:embeddings|activeX)\//i, 'a workbook with other files or controls inside'],
  [/\.(?:zip|xlsx|xlsm|xls|exe|dll|js|vbs|ps1)$/i, 'a workbook with another file inside'],
  [/^xl\/workbook\.bin$/i, 'a binary workbook (.xlsb)'],
];

/** Refuses packed files that are no plain workbook. */
export function refuseUnwanted(entries: ReadonlyMap<string, Entry>, contentTypes: string | null): void {
  if (contentTypes === null || !entries.has('[Content_Types].xml')) {
    const isOpenDocument = entries.has('content.xml') && entries.has('mimetype');
    const got = isOpenDocument ? 'an OpenDocument spreadsheet (.ods)' : 'another packed file';
    throw notThis('a CSV or XLSX file', got, 'Save it as XLSX or CSV in a spreadsheet program.');
  }
  for (const [pattern, got] of unwanted) {
    if ([...entries.keys()].some((name) => pattern.test(name))) throw notThis('a plain XLSX workbook', got, asPlain);
  }
  if (/macroEnabled|vbaProject/i.test(contentTypes))
    throw notThis('a plain XLSX workbook', 'a workbook with macros', asPlain);
}

/** One relationship of a part: its id, what kind it is of, and where it leads. */
export interface Relation {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

/** Relationships of a part; those that lead out of the file are refused, but for links to click on. */
export function readRelations(xml: string): Relation[] {
  const scanner = new Scanner(xml);
  const relations: Relation[] = [];
  for (let token = scanner.next(); token !== 'end'; token = scanner.next()) {
    if (token !== 'open' || scanner.name !== 'Relationship') continue;
    const type = scanner.attribute('Type')?.split('/').at(-1) ?? '';
    const isOutside = scanner.attribute('TargetMode')?.toLowerCase() === 'external';
    if (isOutside && type !== 'hyperlink')
      throw notThis('a plain XLSX workbook', 'a workbook with links to other files', asPlain);
    relations.push({ id: scanner.attribute('Id') ?? '', type, target: scanner.attribute('Target') ?? '' });
  }
  return relations;
}

/** A sheet as the workbook lists it. */
export interface ListedSheet {
  readonly name: string;
  readonly relation: string;
  readonly isHidden: boolean;
}

/** The sheets of a workbook, and what day it counts dates from. */
export function readWorkbook(xml: string): { sheets: ListedSheet[]; is1904: boolean } {
  const scanner = new Scanner(xml);
  const sheets: ListedSheet[] = [];
  let is1904 = false;
  for (let token = scanner.next(); token !== 'end'; token = scanner.next()) {
    if (token !== 'open') continue;
    if (scanner.name === 'workbookPr') is1904 = /^(?:1|true)$/.test(scanner.attribute('date1904') ?? '');
    if (scanner.name !== 'sheet') continue;
    sheets.push({
      name: scanner.attribute('name') ?? '',
      relation: scanner.attribute('id') ?? '',
      isHidden: /hidden/i.test(scanner.attribute('state') ?? ''),
    });
  }
  return { sheets, is1904 };
}

/** Where a relationship of the workbook leads, as a name of an entry. */
export function entryOf(target: string): string {
  return target.startsWith('/') ? target.slice(1) : `xl/${target.replace(/^\.\//, '')}`;
}
