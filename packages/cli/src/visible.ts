// Characters that can move a cursor, colour a terminal or turn text round.
const acting = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** Text as it may go to a terminal: what could act on it is shown as a replacement sign; line ends stay. */
export function visible(text: string): string {
  return text.replace(acting, '\ufffd');
}

/** JSON text with the same characters escaped, so that it parses to the same data. */
export function visibleJson(json: string): string {
  return json.replace(acting, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
