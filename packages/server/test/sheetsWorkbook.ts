import { zip, type Packed } from './sheetsZip.ts';

/** What a workbook is made of, where it differs from the plainest one. */
export interface Plan {
  /** XML of the rows of each sheet, by its name. */
  readonly sheets: Readonly<Record<string, string>>;
  /** Attributes of a sheet in the workbook, by its name. */
  readonly states?: Readonly<Record<string, string>>;
  readonly sharedTexts?: readonly string[];
  /** Format codes; style 1 has the first, style 2 the second. */
  readonly formats?: readonly string[];
  readonly workbookPr?: string;
  readonly more?: readonly Packed[];
  /** Replaces parts by their name. */
  readonly instead?: Readonly<Record<string, string>>;
}

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelations = 'xmlns="http://schemas.openxmlformats.org/package/2006/relationships"';
const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The parts of a workbook. */
export function partsOf(plan: Plan): Packed[] {
  const names = Object.keys(plan.sheets);
  const parts: Record<string, string> = {
    '[Content_Types].xml': `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${contentType}.sheet.main+xml"/></Types>`,
    '_rels/.rels': `${head}<Relationships ${packageRelations}><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${head}<workbook ${main} xmlns:r="${office}"><workbookPr ${plan.workbookPr ?? ''}/><sheets>${names.map((name, i) => `<sheet name="${name}" sheetId="${i + 1}" ${plan.states?.[name] ?? ''} r:id="rId${i + 1}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${head}<Relationships ${packageRelations}>${names.map((_, i) => `<Relationship Id="rId${i + 1}" Type="${office}/worksheet" Target="worksheets/sheet${i + 1}.xml"/>`).join('')}<Relationship Id="rIdT" Type="${office}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rIdS" Type="${office}/styles" Target="/xl/styles.xml"/></Relationships>`,
    'xl/sharedStrings.xml': `${head}<sst ${main}>${(plan.sharedTexts ?? []).map((text) => `<si>${text}</si>`).join('')}</sst>`,
    'xl/styles.xml': `${head}<styleSheet ${main}><numFmts>${(plan.formats ?? []).map((code, i) => `<numFmt numFmtId="${164 + i}" formatCode="${escaped(code)}"/>`).join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${(plan.formats ?? []).map((_, i) => `<xf numFmtId="${164 + i}"/>`).join('')}<xf numFmtId="14"/><xf numFmtId="9"/></cellXfs></styleSheet>`,
  };
  names.forEach((name, i) => {
    parts[`xl/worksheets/sheet${i + 1}.xml`] =
      `${head}<worksheet ${main}><sheetData>${plan.sheets[name] ?? ''}</sheetData></worksheet>`;
  });
  const all = { ...parts, ...plan.instead };
  return [...Object.entries(all).map(([name, content]) => ({ name, content })), ...(plan.more ?? [])];
}

/** A workbook as a file. */
export function workbook(plan: Plan): Buffer {
  return zip(partsOf(plan));
}

/** A text inside XML. */
export function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}

/** A row of texts as they stand in cells of their own. */
export function textRow(row: number, cells: readonly string[]): string {
  const inner = cells.map(
    (cell, i) => `<c r="${String.fromCharCode(65 + i)}${row}" t="inlineStr"><is><t>${escaped(cell)}</t></is></c>`,
  );
  return `<row r="${row}">${inner.join('')}</row>`;
}
