/** A drawing that stands in the page and can be changed to another station. */
export interface ShownDrawing {
  show(items: readonly string[]): void;
}

/** One item as it stands: its markup, cut into names and values, and where each value lives in the page. */
interface ShownItem {
  readonly markup: string;
  readonly pieces: readonly string[];
  readonly slots: readonly (Attr | Text | null)[];
}

/**
 * Opens a drawing for a slider. Stations of a lift differ in few numbers of few items, so only those are written: what
 * stays the same is neither parsed nor styled nor laid out again.
 *
 * @param svg the SVG element whose children are the items
 * @param items markup of each child, as the drawings' writer makes it, its names escaped [XML texts]
 * @returns the drawing, to be changed [drawing]
 */
export function openDrawing(svg: Element, items: readonly string[]): ShownDrawing {
  let shown = items.map((markup, i) => shownItem(svg.children[i] ?? null, markup));
  return {
    show: (next) => {
      shown = next.map((markup, i) => {
        const before = shown[i];
        if (before === undefined) return replaced(svg, i, markup);
        return before.markup === markup ? before : (rewritten(before, markup) ?? replaced(svg, i, markup));
      });
      while (svg.children.length > next.length) svg.lastElementChild?.remove();
    },
  };
}

/** Quotes and angle brackets never stand inside a value: they are escaped there. */
const edges = /["<>]/;

/** Writes the values that differ; null where the item is made another way. */
function rewritten({ pieces, slots }: ShownItem, markup: string): ShownItem | null {
  const next = markup.split(edges);
  if (next.length !== pieces.length) return null;
  const differs = (i: number): boolean => next[i] !== pieces[i];
  for (let i = 0; i < next.length; i += 1) if (slots[i] === null && differs(i)) return null;
  for (let i = 0; i < next.length; i += 1) {
    const slot = slots[i];
    if (slot && differs(i)) slot.nodeValue = plain(next[i] ?? '');
  }
  return { markup, pieces: next, slots };
}

/** An item of another make takes the place of the old one. */
function replaced(svg: Element, place: number, markup: string): ShownItem {
  const wanted = elementOf(`<svg>${markup}</svg>`).firstElementChild;
  const old = svg.children[place];
  if (wanted === null) throw new Error('invariant: an item of a drawing is one element');
  if (old === undefined) svg.append(wanted);
  else old.replaceWith(wanted);
  return shownItem(wanted, markup);
}

function shownItem(element: Element | null, markup: string): ShownItem {
  const found = element === null ? [] : slotsOf(element);
  const pieces = markup.split(edges);
  let [end, count] = [-1, 0];
  const slots = pieces.map((piece, i) => {
    const [before, after] = [markup[end], markup[end + 1 + piece.length]];
    end += 1 + piece.length;
    const isAttribute = before === '"' && after === '"' && pieces[i - 1]?.endsWith('=') === true;
    const isText = before === '>' && after === '<' && piece !== '';
    if (!isAttribute && !isText) return null;
    count += 1;
    return found[count - 1] ?? null;
  });
  return { markup, pieces, slots };
}

/** Every attribute and text below an element, in the order in which they stand in its markup. */
function slotsOf(element: Element): (Attr | Text)[] {
  const children = [...element.childNodes].flatMap((child): (Attr | Text)[] => {
    if (child instanceof Element) return slotsOf(child);
    return child instanceof Text ? [child] : [];
  });
  return [...element.attributes, ...children];
}

const entities: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

function plain(escaped: string): string {
  if (!escaped.includes('&')) return escaped;
  return escaped.replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => entities[entity] ?? entity);
}

/** The element that a markup makes. The drawings' writer escapes every name in it. */
export function elementOf(markup: string): Element {
  const template = document.createElement('template');
  template.innerHTML = markup;
  const element = template.content.firstElementChild;
  if (element === null) throw new Error('invariant: a drawing is one element');
  return element;
}
