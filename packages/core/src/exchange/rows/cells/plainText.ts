const invisible = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** A cell's text with one kind of blank, dash and quote, so that its figures and signs can be looked for. */
export function plainText(text: string): string {
  return text
    .replace(invisible, '')
    .replace(/[−‐‑‒–—－]/g, '-')
    .replace(/[′’‘ʹʼ`´＇]/g, "'")
    .replace(/[″”“ʺ＂]/g, '"')
    .replace(/''/g, '"')
    .replace(/\bw\/(?=\s|$)/gi, 'with')
    .replace(/\s+/g, ' ')
    .trim();
}
