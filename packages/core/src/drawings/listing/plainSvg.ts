import { lineDashes, lineWidths } from '../lineStyles.ts';
import type { LineRole, Scene } from '../scene.ts';
import { escaped } from '../svg/escape.ts';
import { sceneToSvg } from '../svg/sceneToSvg.ts';

/** Inks of a drawing that is put onto somebody else's page. */
const inks = {
  ink: '#221f1a',
  second: '#5a5346',
  accent: '#a3123f',
  ghost: '#b5aa94',
  sheet: '#ffffff',
} as const;

const strokes: Readonly<Record<LineRole, string>> = {
  heavy: inks.ink,
  thin: inks.ink,
  hidden: inks.ink,
  centre: inks.second,
  ghost: inks.ghost,
  misfit: inks.accent,
  dimension: inks.second,
};

const fills: Readonly<Record<string, string>> = {
  sheet: `fill="${inks.sheet}"`,
  ink: `fill="${inks.ink}"`,
  second: `fill="${inks.second}"`,
  accent: `fill="${inks.accent}"`,
  'on-accent': `fill="${inks.sheet}"`,
  halo: `fill="${inks.sheet}" stroke="${inks.sheet}" stroke-linejoin="round"`,
};

/**
 * Writes a scene as SVG to stand inside a page of somebody else: no ids, classes, styles or scripts, and nothing from elsewhere;
 * everything is an attribute of the element that it is about, and it shrinks to the room that it is given.
 *
 * @param scene the drawing [mm]
 * @returns the SVG element [XML text]
 */
export function plainSvg(scene: Scene): string {
  const written = sceneToSvg(scene)
    .replace(/^<svg[^>]*>/, () => root(scene))
    .replace(/<style>[\s\S]*?<\/style>\n/, '')
    .replace(/<text class="halo"[\s\S]*?<\/text>/g, (halo) => halo.replaceAll(' class="second"', ''))
    .replace(/<[a-z]+ [^>]*>/g, (tag) => plainTag(tag, scene.scale));
  return written.trimEnd();
}

function root({ bounds, scale, title }: Scene): string {
  const { left, right, bottom, top } = bounds;
  const box = [left, -top, right - left, top - bottom].map((end) => end.toFixed(2)).join(' ');
  const width = Math.round(((right - left) / scale) * (96 / 25.4));
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(title)}" viewBox="${box}" width="${width}" font-family="sans-serif">`;
}

function plainTag(tag: string, scale: number): string {
  const ownWidth = / style="stroke-width:([^"]*)"/.exec(tag)?.[1];
  const bare = tag.replace(/ (id|data-[\w-]+|style|aria-hidden)="[^"]*"/g, '');
  return bare.replace(/ class="([^"]*)"/, (_, names: string) => {
    const written = attributesOf(names.split(' '), scale, ownWidth);
    return written === '' ? '' : ` ${written}`;
  });
}

/** What a drawing's classes say, as attributes; a class that is not known here is a broken drawing. */
function attributesOf(names: readonly string[], scale: number, ownWidth: string | undefined): string {
  const [first = ''] = names;
  if (first !== 'l') {
    const known = fills[first];
    if (known === undefined || names.length > 1) throw new Error(`invariant: no class ${names.join(' ')}`);
    return known;
  }
  const role = names.find((name): name is LineRole => name in strokes);
  if (role === undefined) throw new Error(`invariant: no line ${names.join(' ')}`);
  if (names.includes('solid')) return `fill="${strokes[role]}"`;
  const isThin = names.includes('thinner') || names.includes('h');
  const width = ownWidth ?? rounded((isThin ? lineWidths.thin : lineWidths[role]) * scale);
  const fill = names.includes('on-sheet') ? inks.sheet : 'none';
  const dashes = role === 'hidden' || role === 'centre' ? ` stroke-dasharray="${dashesOf(role, scale)}"` : '';
  return `fill="${fill}" stroke="${strokes[role]}" stroke-width="${width}" stroke-linejoin="round"${dashes}`;
}

function dashesOf(role: keyof typeof lineDashes, scale: number): string {
  return lineDashes[role].map((length) => rounded(length * scale)).join(' ');
}

function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}
