import { machineDrawing, plainSvg, type Scene } from '../../drawings/index.ts';
import { readSetup, type InputError, type Price, type Setup, type SetupDocument } from '../../records/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { cautionWords, howToMeasure, labelOf, mountingNames, sentenceCase } from '../../words/index.ts';
import { nameOr, plainText } from '../plainText.ts';
import { factsOf, notKnownOf, type ListedFact, type ListedMachine } from './facts.ts';
import { listingHtml } from './listingHtml.ts';
import { productOf, scriptJson, type ProductJson } from './structured.ts';

/** What is listed, and how. */
export interface ListingOptions {
  readonly system: UnitSystem;
  /** The implement unless given. */
  readonly machine?: ListedMachine;
  /** What it costs; no offer is made without one. */
  readonly price?: Price;
  /** Address at which a visitor can check it against a tractor; http or https, else it is left out. */
  readonly link?: string;
}

/** A machine for a shop page: in words, as markup and for machines. */
export interface Listing {
  readonly name: string;
  readonly machine: ListedMachine;
  readonly lead: string;
  readonly facts: readonly ListedFact[];
  /** What has to be measured before it can be said to hook up. */
  readonly notKnown: readonly { readonly path: string; readonly text: string }[];
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly drawing: Scene | null;
  /** A block for a page: no scripts, ids, classes, style sheets or anything from elsewhere. */
  readonly html: string;
  /** The same without any style of its own. */
  readonly bareHtml: string;
  /** schema.org data. */
  readonly product: ProductJson;
  /** The same as a script element, to stand beside the block. */
  readonly script: string;
}

/** A listing, or everything that is wrong with the document. */
export type ListingReading =
  { readonly ok: true; readonly listing: Listing } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Lists a machine for a shop page: every figure that was given with its reference points and tolerance in both units, a drawing,
 * what nobody measured, and the same as schema.org data. Everything in it is text.
 *
 * @param document a setup document, or one machine’s record in it with an empty tractor [JSON]
 * @param options units, machine, price, link [record]
 * @returns the listing, or every error in the input [InputError codes]
 */
export function listingOf(document: SetupDocument, options: ListingOptions): ListingReading {
  const reading = readSetup(document);
  if (!reading.ok) return reading;
  const { setup } = reading;
  const { machine = 'implement', system } = options;
  if (machine === 'coupler' && setup.coupler === undefined) return { ok: false, errors: [noCoupler] };
  const name = nameOr(setup[machine]?.name, machine === 'implement' ? 'Implement' : 'Quick coupler');
  const facts = factsOf(setup, machine, system);
  const drawing = machineDrawing(setup, { machine, system });
  const lead = leadOf(setup, machine);
  const notKnown = notKnownOf(document, machine).map((path) => ({ path, text: toMeasure(path) }));
  const product = productOf(name, categoryText(machine), facts, { description: lead, price: options.price ?? null });
  const content = { name, machine, lead, facts, notKnown, notes, cautions, drawing };
  const markup = { ...content, svg: drawing === null ? null : plainSvg(drawing), link: options.link ?? null };
  return {
    ok: true,
    listing: {
      ...content,
      html: listingHtml(markup, true),
      bareHtml: listingHtml(markup, false),
      product,
      script: `<script type="application/ld+json">\n${scriptJson(product)}\n</script>`,
    },
  };
}

const noCoupler: InputError = {
  code: 'missing',
  path: 'coupler',
  expected: 'a coupler to list',
  got: 'nothing',
  hint: 'Add a coupler, or list the implement.',
};

const notes: readonly string[] = [
  'Figures are as measured or told, with their tolerance; a figure without one was given without.',
  'A category is a label, not a fit: compare the figures with your tractor or coupler before you buy.',
];

const cautions: readonly string[] = (['standClear', 'firstLift', 'manualPrevails'] as const).map(
  (id) => cautionWords[id],
);

const couplerNames = {
  uFrame: 'Rigid frame with two lower hooks and a top hook',
  triangle: 'Triangular frame',
  clawEnds: 'Claws on the lower link ends',
  bar: 'Bar between the lower links',
  hookEnds: 'Hooks on the lower link ends',
} as const;

function leadOf({ implement, coupler }: Setup, machine: ListedMachine): string {
  if (machine === 'coupler')
    return `${couplerNames[coupler?.kind ?? 'uFrame']} for a three-point linkage${stated(coupler?.category)}.`;
  const way = implement.mounting === undefined ? '' : `, mounts by ${mountingNames[implement.mounting]}`;
  return `Implement for a three-point linkage${way}${stated(implement.category)}.`;
}

function stated(category: string | undefined): string {
  return category === undefined ? '' : `, stated category ${category}`;
}

function categoryText(machine: ListedMachine): string {
  return machine === 'implement' ? 'Three-point implement' : 'Three-point quick coupler';
}

function toMeasure(path: string): string {
  return plainText(`${sentenceCase(labelOf(path))}. ${howToMeasure(path)}`);
}
