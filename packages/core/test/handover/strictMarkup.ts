const voids = ['br', 'hr', 'img', 'meta', 'col'];
const known = [
  'section',
  'h2',
  'h3',
  'p',
  'table',
  'caption',
  'thead',
  'tbody',
  'tr',
  'th',
  'td',
  'figure',
  'figcaption',
  'ul',
  'li',
  'strong',
  'a',
  'svg',
  'title',
  'desc',
  'rect',
  'path',
  'circle',
  'line',
  'g',
  'text',
  'tspan',
];
/** What may stand inside what, where it is not free. */
const parents: Readonly<Record<string, readonly string[]>> = {
  li: ['ul'],
  tr: ['thead', 'tbody'],
  th: ['tr'],
  td: ['tr'],
  thead: ['table'],
  tbody: ['table'],
  caption: ['table'],
  figcaption: ['figure'],
  tspan: ['text', 'tspan'],
  h2: ['section'],
  p: ['section', ''],
  ul: ['section', ''],
};

/** One element that was opened: its name and its attributes. */
export interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** A fragment of HTML read strictly: every tag, the text between them with its entities read, and everything that is wrong with it. */
export interface ReadMarkup {
  readonly tags: readonly Tag[];
  readonly text: string;
  readonly faults: readonly string[];
}

/** Reads markup as strictly as can be: known elements only, every one closed in its order, attributes quoted and unique, no stray sign. */
export function readMarkup(markup: string): ReadMarkup {
  const tags: Tag[] = [];
  const faults: string[] = [];
  const open: string[] = [];
  const texts: string[] = [];
  const piece = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w:-]+="[^"<>]*")*)\s*(\/?)>|([^<]+)|([\s\S])/g;
  for (const [, closing, name, rest, selfClosing, text, stray] of markup.matchAll(piece)) {
    if (stray !== undefined) faults.push(`stray ${stray}`);
    else if (text !== undefined) texts.push(decoded(text, faults));
    else if (name !== undefined && closing === '/') {
      const last = open.pop();
      if (last !== name) faults.push(`</${name}> closes ${last ?? 'nothing'}`);
    } else if (name !== undefined) {
      const parent = open.at(-1) ?? '';
      if (!known.includes(name)) faults.push(`unknown ${name}`);
      if (parents[name]?.includes(parent) === false) faults.push(`${name} in ${parent}`);
      tags.push({ name, attributes: attributesOf(rest ?? '', faults) });
      if (selfClosing !== '/' && !voids.includes(name)) open.push(name);
      if (selfClosing === '/' && !isDrawn(open)) faults.push(`${name} closes itself outside a drawing`);
    }
  }
  return { tags, text: texts.join(''), faults: [...faults, ...open.map((name) => `${name} is never closed`)] };
}

function isDrawn(open: readonly string[]): boolean {
  return open.includes('svg');
}

function attributesOf(rest: string, faults: string[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const [, name = '', value = ''] of rest.matchAll(/([\w:-]+)="([^"]*)"/g)) {
    if (found.has(name)) faults.push(`${name} twice`);
    found.set(name, decoded(value, faults));
  }
  return found;
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

function decoded(text: string, faults: string[]): string {
  return text.replace(/&([^;&\s]*;)?/g, (whole, body: string | undefined) => {
    const sign = named[(body ?? '').slice(0, -1)];
    if (sign === undefined) faults.push(`bare ${whole}`);
    return sign ?? whole;
  });
}
