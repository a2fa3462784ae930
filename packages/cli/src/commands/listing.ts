import { listingOf, type Listing } from '@hitchwright/core/handover';
import type { Price } from '@hitchwright/core/records';
import { askedFor, readFile, refuse, systemFor, type Asked } from '../asked.ts';
import { UsageError } from '../exit.ts';
import { entries, wrapped } from '../lines.ts';
import { visible, visibleJson } from '../visible.ts';

/** Ways to write a listing that take no value. */
const flags = ['--html', '--bare'] as const;

/** `hitchwright listing FILE`: one machine of a setup for a shop page. */
export function listingCommand(words: readonly string[]): number {
  const [isHtml, isBare] = flags.map((flag) => words.includes(flag));
  const plain = words.filter((word) => !flags.some((flag) => flag === word));
  const asked = askedFor('listing', plain, ['machine', 'price', 'link']);
  if ([asked.json, isHtml, isBare].filter(Boolean).length > 1)
    throw new UsageError('Take one of --html, --bare and --json.');
  const how = { ...machineAsked(asked), ...priceAsked(asked), ...linkAsked(asked) };
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json);
  const result = listingOf(reading.document, { system: systemFor(asked, reading.setup), ...how });
  if (!result.ok) return refuse(result.errors, asked.json);
  const { listing } = result;
  if (asked.json) process.stdout.write(visibleJson(`${JSON.stringify(listingJson(listing), null, 2)}\n`));
  else if (isHtml === true) process.stdout.write(`${listing.html}${listing.script}\n`);
  else process.stdout.write(isBare === true ? listing.bareHtml : text(listing));
  return 0;
}

function machineAsked({ files }: Asked): { readonly machine?: 'implement' | 'coupler' } {
  const { machine } = files;
  if (machine === undefined) return {};
  if (machine !== 'implement' && machine !== 'coupler') throw new UsageError('--machine takes implement or coupler.');
  return { machine };
}

/** `640.00 USD` */
function priceAsked({ files }: Asked): { readonly price?: Price } {
  const { price } = files;
  if (price === undefined) return {};
  const [, amount = '', currency = ''] = /^(\d{1,7}(?:\.\d{1,2})?) ([A-Z]{3})$/.exec(price) ?? [];
  if (currency === '') throw new UsageError('--price takes an amount and a currency, such as "640.00 USD".');
  return { price: { amount: Number(amount), currency } };
}

function linkAsked({ files }: Asked): { readonly link?: string } {
  const { link } = files;
  if (link === undefined) return {};
  if (!/^https?:\/\/\S+$/.test(link))
    throw new UsageError('--link takes an address such as https://example.org/check/.');
  return { link };
}

function listingJson({ name, machine, lead, facts, notKnown, notes, cautions, html, bareHtml, product }: Listing) {
  return { hitchwright: 1, name, machine, lead, facts, notKnown, notes, cautions, html, bareHtml, product };
}

function text({ name, lead, facts, notKnown, notes, cautions }: Listing): string {
  const lists: readonly (readonly [string, readonly string[]])[] = [
    ['Dimensions', facts.map((fact) => [`${fact.name}: ${fact.figure}`, fact.measured].filter(Boolean).join('; '))],
    ['Not measured yet', notKnown.map((one) => one.text)],
    ['About these figures', notes],
    ['Mind', cautions],
  ];
  const blocks = lists.filter(([, texts]) => texts.length > 0).map(([heading, texts]) => [heading, ...entries(texts)]);
  return `${[[visible(name)], wrapped(visible(lead), 0), ...blocks].map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
