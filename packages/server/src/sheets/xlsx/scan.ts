import { damaged, notThis } from '../trouble.ts';

/** What the scanner stands on: the start or end of an element, or a text. */
export type Token = 'open' | 'close' | 'text' | 'end';

const tag = /<([^\s<>/"'=]+)((?:\s+[^\s<>/"'=]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/y;
const longestTag = 20_000;
const deepest = 60;

/** Attributes that are asked for. */
const attributeNames = [
  'r',
  's',
  't',
  'hidden',
  'name',
  'id',
  'state',
  'date1904',
  'numFmtId',
  'formatCode',
  'Id',
  'Type',
  'Target',
  'TargetMode',
] as const;
type AttributeName = (typeof attributeNames)[number];
const attributePatterns = Object.fromEntries(
  attributeNames.map((name) => [name, new RegExp(`(?:^|[\\s:])${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`)]),
) as Readonly<Record<AttributeName, RegExp>>;

/**
 * Walks through the XML of one part of a workbook in one pass, without building a tree. Declarations of document types and entities are
 * refused: no spreadsheet writes them, and they are how XML is made to read files or to grow.
 */
export class Scanner {
  /** Local name of the element that was opened or closed. */
  name = '';
  /** The text, entities replaced. */
  value = '';
  private attributes = '';
  private at = 0;
  private readonly path: string[] = [];
  private closing: string | null = null;

  constructor(private readonly xml: string) {}

  /** Goes on to the next token. */
  next(): Token {
    if (this.closing !== null) return this.closed(this.closing);
    for (;;) {
      if (this.at >= this.xml.length) return this.ended();
      const start = this.xml.indexOf('<', this.at);
      if (start !== this.at) return this.text(start < 0 ? this.xml.length : start);
      const token = this.markup();
      if (token !== null) return token;
    }
  }

  /** An attribute of the element that was opened, by its name without a prefix; null where it has none. The plain way to write it is the fast one. */
  attribute(name: AttributeName): string | null {
    const { attributes } = this;
    if (!attributes.includes("'")) {
      const start = attributes.indexOf(` ${name}="`);
      if (start >= 0) {
        const from = start + name.length + 3;
        return withoutEntities(attributes.slice(from, attributes.indexOf('"', from)));
      }
    }
    const found = attributePatterns[name].exec(attributes);
    return found === null ? null : withoutEntities(found[1] ?? found[2] ?? '');
  }

  private ended(): Token {
    if (this.path.length > 0) throw damaged('XML cut short');
    return 'end';
  }

  private text(end: number): Token {
    const raw = this.xml.slice(this.at, end);
    this.at = end;
    this.value = withoutEntities(raw);
    return 'text';
  }

  /** What starts with `<`: null for comments and instructions, which say nothing. */
  private markup(): Token | null {
    const second = this.xml[this.at + 1];
    if (second === '?') return this.skip('?>');
    if (second === '!') return this.declaration();
    return second === '/' ? this.closeTag() : this.openTag();
  }

  private skip(end: string): null {
    const found = this.xml.indexOf(end, this.at);
    if (found < 0) throw damaged('XML cut short');
    const skipped = this.xml.slice(this.at, found);
    if (/^<\?xml\b/.test(skipped) && /encoding\s*=\s*["'](?!utf-8)/i.test(skipped))
      throw damaged('XML in another encoding');
    this.at = found + end.length;
    return null;
  }

  private declaration(): Token | null {
    if (this.xml.startsWith('<!--', this.at)) return this.skip('-->');
    if (!this.xml.startsWith('<![CDATA[', this.at)) {
      throw notThis(
        'a spreadsheet without declarations',
        'XML with a document type or entities',
        'Save it anew in a spreadsheet program.',
      );
    }
    const end = this.xml.indexOf(']]>', this.at);
    if (end < 0) throw damaged('XML cut short');
    this.value = this.xml.slice(this.at + 9, end);
    this.at = end + 3;
    return 'text';
  }

  private openTag(): Token {
    tag.lastIndex = this.at;
    const found = this.xml.indexOf('>', this.at) - this.at > longestTag ? null : tag.exec(this.xml);
    if (found === null || found[0].length > longestTag) throw damaged('XML that is none');
    const [whole, name = '', attributes = '', empty] = found;
    this.at += whole.length;
    this.attributes = attributes;
    this.name = name.slice(name.indexOf(':') + 1);
    this.path.push(this.name);
    if (this.path.length > deepest) throw damaged('XML too deep');
    if (empty === '/') this.closing = this.name;
    return 'open';
  }

  private closeTag(): Token {
    const end = this.xml.indexOf('>', this.at);
    if (end < 0) throw damaged('XML cut short');
    const name = this.xml.slice(this.at + 2, end).trim();
    this.at = end + 1;
    return this.closed(name.slice(name.indexOf(':') + 1));
  }

  private closed(name: string): Token {
    this.closing = null;
    if (this.path.pop() !== name) throw damaged('XML whose tags don’t match');
    this.name = name;
    return 'close';
  }
}

const named: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
]);

/** The five entities that XML itself knows, and characters by their number; any other is refused. */
function withoutEntities(text: string): string {
  if (!text.includes('&')) return text;
  return text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]+)?;?/gi, (whole, entity: string | undefined) => {
    const known = whole.endsWith(';') && entity !== undefined ? (named.get(entity) ?? characterOf(entity)) : null;
    if (known === null) throw damaged('XML with an unknown entity');
    return known;
  });
}

function characterOf(entity: string): string | null {
  if (!entity.startsWith('#')) return null;
  const code = /^#x/i.test(entity) ? Number.parseInt(entity.slice(2), 16) : Number.parseInt(entity.slice(1), 10);
  return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code < 0xe000) ? String.fromCodePoint(code) : null;
}
