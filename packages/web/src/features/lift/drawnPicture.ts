import type { DrawnPicture } from './painter.ts';

/** A whole SVG document cut into the opening tag of its root and its children, one markup each. */
export function drawnPicture(svg: string): DrawnPicture {
  const items: string[] = [];
  let [root, item, depth] = ['', '', 0];
  for (const [token] of svg.matchAll(/<[^>]+>|[^<]+/g)) {
    const isTag = token.startsWith('<');
    const isEnd = token.startsWith('</');
    if (isEnd) depth -= 1;
    if (root === '') root = token;
    else if (depth > 1 || isTag) item += token;
    if (isTag && !isEnd && !token.endsWith('/>')) depth += 1;
    if (depth !== 1 || item === '') continue;
    items.push(item);
    item = '';
  }
  return { root, items };
}
