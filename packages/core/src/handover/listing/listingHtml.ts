import { markupText } from '../../words/index.ts';
import { htmlList } from '../html.ts';
import { safeLink } from '../safeLink.ts';
import type { Listing } from './listing.ts';

/** What a block is written from. */
type Content = Omit<Listing, 'html' | 'bareHtml' | 'product' | 'script'> & {
  readonly svg: string | null;
  readonly link: string | null;
};

const styles = {
  section: 'max-width:60em;line-height:1.45',
  table: 'border-collapse:collapse;width:100%',
  cell: 'border:1px solid #888;padding:.3em .5em;text-align:left;vertical-align:top',
  figure: 'margin:1em 0;overflow-x:auto',
} as const;

/** The block of a page; with a little style of its own, or with none. */
export function listingHtml(content: Content, isStyled: boolean): string {
  const style = (name: keyof typeof styles): string => (isStyled ? ` style="${styles[name]}"` : '');
  const { name, lead, notKnown, notes, cautions, svg, drawing, link } = content;
  const address = safeLink(link ?? undefined);
  return [
    `<section${style('section')}>`,
    `<h2>${markupText(name)}</h2>`,
    `<p>${markupText(lead)}</p>`,
    ...tableOf(content, style),
    ...(svg === null
      ? []
      : [
          `<figure${style('figure')}>`,
          svg,
          `<figcaption>${markupText(drawing?.title ?? '')}</figcaption>`,
          '</figure>',
        ]),
    ...headed(
      'Not measured yet, needed to say whether it hooks up',
      notKnown.map(({ text }) => text),
    ),
    ...headed('About these figures', notes),
    ...headed('Mind', cautions),
    ...(address === null ? [] : [`<p><a href="${markupText(address)}">Check it against your tractor</a></p>`]),
    '</section>',
    '',
  ].join('\n');
}

function headed(heading: string, texts: readonly string[]): string[] {
  return texts.length === 0 ? [] : [`<h3>${markupText(heading)}</h3>`, htmlList(texts)];
}

function tableOf({ facts }: Content, style: (name: keyof typeof styles) => string): string[] {
  if (facts.length === 0) return ['<p>No figure of it was given.</p>'];
  const cell = style('cell');
  const head = ['Measure', 'Figure', 'Measured between', 'Measured how and when'];
  return [
    `<table${style('table')}>`,
    '<caption>Dimensions</caption>',
    `<thead><tr>${head.map((text) => `<th scope="col"${cell}>${text}</th>`).join('')}</tr></thead>`,
    '<tbody>',
    ...facts.map(({ name, figure, between, measured }) => {
      const cells = [figure, between, measured === '' ? 'not said' : measured];
      return `<tr><th scope="row"${cell}>${markupText(name)}</th>${cells.map((text) => `<td${cell}>${markupText(text)}</td>`).join('')}</tr>`;
    }),
    '</tbody>',
    '</table>',
  ];
}
