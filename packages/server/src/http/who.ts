import type { By } from '@hitchwright/store';
import type { Context } from 'hono';
import { inputRefusal } from './refusal.ts';

/** Who changes something where nobody says so. */
const nobodyNamed = 'this computer';

/** Who makes a change and what it is called, out of the headers: any letters, written as in an address (`Ada%20Brook`). */
export function byOf(c: Context): By {
  const title = headerText(c, 'hitchwright-title');
  return { who: headerText(c, 'hitchwright-who') ?? nobodyNamed, ...(title === undefined ? {} : { title }) };
}

function headerText(c: Context, name: string): string | undefined {
  const header = c.req.header(name);
  if (header === undefined || header === '') return undefined;
  try {
    return decodeURIComponent(header);
  } catch (problem) {
    if (!(problem instanceof URIError)) throw problem;
    throw inputRefusal({
      code: 'wrong-type',
      path: `header.${name}`,
      expected: 'text written as in an address, such as Ada%20Brook',
      got: 'something else',
      hint: 'Write it with encodeURIComponent.',
    });
  }
}
