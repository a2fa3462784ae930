import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { excerpt, type InputError } from '../records/index.ts';
import { fromBase64Url, toBase64Url } from './base64url.ts';
import { dictionary1 } from './dictionary1.ts';

/** What a link's fragment may carry, opened or not [bytes]: a setup, never a flood. */
const largestFragment = 20_000;
const largestOpened = 400_000;

type Unpacked =
  | { readonly ok: true; readonly value: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly errors: readonly InputError[] };

/** A document as text for a link: `1.` and its JSON, deflated against dictionary 1, in base64url (decision 0003). */
export function packed(document: object): string {
  const bytes = strToU8(JSON.stringify(document));
  return `1.${toBase64Url(deflateSync(bytes, { level: 9, dictionary: strToU8(dictionary1) }))}`;
}

/** The document that a text made by `packed` carries, or what is wrong with it. */
export function unpacked(text: string, expected: string): Unpacked {
  if (text.length > largestFragment)
    return refused('too-large', `at most ${largestFragment} characters`, `${text.length} characters`);
  if (!text.startsWith('1.')) return refused('version', 'a link of version 1', excerpt(text));
  const bytes = fromBase64Url(text.slice(2));
  const json = bytes === null ? null : opened(bytes);
  if (json === null) return refused('not-json', 'a whole link', excerpt(text));
  try {
    const document = JSON.parse(json) as unknown;
    if (typeof document === 'object' && document !== null)
      return { ok: true, value: document as Readonly<Record<string, unknown>> };
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
  }
  return refused('not-json', expected, excerpt(json));
}

/** The inflated text, or null where the bytes are damaged or open to more than a setup can be. */
function opened(bytes: Uint8Array): string | null {
  let text = '';
  let size = 0;
  const inflate = new Inflate({ dictionary: strToU8(dictionary1) }, (chunk) => {
    size += chunk.length;
    if (size > largestOpened) throw new RangeError('the link opens to more than a setup');
    text += strFromU8(chunk, true);
  });
  try {
    inflate.push(bytes, true);
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    return null;
  }
  return fromLatin1(text);
}

/** The inflater hands over bytes in pieces that may cut a letter: they are put together before they are read as UTF-8. */
function fromLatin1(text: string): string {
  return strFromU8(Uint8Array.from(text, (letter) => letter.charCodeAt(0)));
}

function refused(code: InputError['code'], expected: string, got: string): Unpacked {
  return { ok: false, errors: [{ code, path: 'link', expected, got, hint: 'Was the link cut short? Copy it whole.' }] };
}
