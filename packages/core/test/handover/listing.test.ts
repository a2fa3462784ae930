import { describe, expect, it } from 'vitest';
import { listingOf, type Listing, type ListingOptions } from '../../src/handover/index.ts';
import type { SetupDocument } from '../../src/records/index.ts';
import { withEdits } from '../../src/records/index.ts';
import { example } from '../asked.ts';
import { readMarkup } from './strictMarkup.ts';
import { againstProduct } from './typed.ts';

const blade = example('box-blade-on-coupler');

function listed(document: SetupDocument, options: Partial<ListingOptions> = {}): Listing {
  const result = listingOf(document, { system: 'us', ...options });
  if (!result.ok) throw new Error(JSON.stringify(result.errors));
  return result.listing;
}

function fact(listing: Listing, key: string) {
  const found = listing.facts.find(({ path }) => path.endsWith(`.${key}`));
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

describe('what is listed of an implement', () => {
  const listing = listed(blade);
  it('is every figure with its tolerance in both units, and how it was measured', () => {
    expect(fact(listing, 'mastHeight')).toMatchObject({
      name: 'Mast height',
      figure: '20 33/64 in ±1/16 in (521 mm ±1.5 mm)',
      measured: 'tape',
      low: 519.5,
      high: 522.5,
    });
    expect(fact(listing, 'mass').measured).toBe('scale, 2026-09-14');
    expect(fact(listing, 'lowerPinDiameter').figure).toBe('7/8 in ±1/64 in (22.2 mm ±0.1 mm)');
    expect(fact(listing, 'centreAbove').figure).toMatch(/^somewhere from /);
  });
  it('names the points that it lies between', () => {
    expect(fact(listing, 'shoulderSpan').between).toBe(
      'Tape from the step of one lower pin to the step of the other, where the ball or hook rubs.',
    );
    const byBalls = withEdits(blade, [{ path: 'implement.shoulderSpan', value: { value: 696, from: 'ballCentre' } }]);
    expect(fact(listed(byBalls), 'shoulderSpan').between).toMatch(/^Ball centre to ball centre\. /);
  });
  it('in metric has millimetres first', () => {
    expect(fact(listed(blade, { system: 'metric' }), 'mastHeight').figure).toBe(
      '521 mm ±1.5 mm (20 33/64 in ±1/16 in)',
    );
  });
  it('leaves out what is only wanted of it at work', () => {
    expect(listing.facts.map(({ path }) => path)).not.toContain('implement.carryHeight');
  });
  it('says what nobody measured and is needed to tell whether it hooks up', () => {
    expect(listing.notKnown).toEqual([]);
    const unmeasured = withEdits(blade, [
      { path: 'implement.shoulderSpan', value: undefined },
      { path: 'implement.freeRoomUpper', value: undefined },
      { path: 'implement.mounting', value: undefined },
    ]);
    const { notKnown, html } = listed(unmeasured);
    expect(notKnown.map(({ path }) => path)).toEqual([
      'implement.shoulderSpan',
      'implement.freeRoomUpper',
      'implement.mounting',
    ]);
    expect(html).toContain('Not measured yet');
    expect(listed(unmeasured).drawing).toBeNull();
  });
});

describe('what is listed of a coupler', () => {
  it('is its hook side and its front, with what can be set', () => {
    const listing = listed(blade, { machine: 'coupler' });
    expect(listing.name).toBe('Pellin U-28');
    expect(fact(listing, 'topHookHeight')).toMatchObject({ settable: true, low: 356, high: 470 });
    expect(fact(listing, 'topHookHeight').figure).toContain('can be set');
    expect(listing.facts.some(({ path }) => path === 'coupler.front.shoulderSpan')).toBe(true);
    expect(listing.drawing?.description).toContain('Centres of the lower hooks: 28 1/16 in (712 mm)');
  });
  it('is an error where there is none', () => {
    const result = listingOf(example('box-blade-direct'), { system: 'us', machine: 'coupler' });
    expect(result).toMatchObject({ ok: false, errors: [{ path: 'coupler' }] });
  });
});

describe('the block of a page', () => {
  const cases = [
    listed(blade),
    listed(blade, { machine: 'coupler' }),
    listed(example('flail-measure-first'), { system: 'metric', link: 'https://example.org/check/#1.abc&x=1' }),
  ];
  it('is well-formed, known elements only, everything closed', () => {
    for (const { html, bareHtml } of cases) {
      expect(readMarkup(html).faults).toEqual([]);
      expect(readMarkup(bareHtml).faults).toEqual([]);
    }
  });
  it('has nothing that a shop refuses or that could clash', () => {
    for (const { html, bareHtml } of cases) {
      const tags = [...readMarkup(html).tags, ...readMarkup(bareHtml).tags];
      const attributes = tags.flatMap((tag) => [...tag.attributes.keys()]);
      expect(attributes.filter((name) => /^(id|class|on.*|src|srcset|data-.*)$/.test(name))).toEqual([]);
      expect(
        tags.map(({ name }) => name).filter((name) => /^(script|style|link|iframe|img|use|image)$/.test(name)),
      ).toEqual([]);
      expect(html).not.toMatch(/url\(|@import|javascript:|var\(/);
    }
  });
  it('has a little style of its own, or none at all', () => {
    for (const { html, bareHtml } of cases) {
      expect(html).toContain(' style="');
      expect(bareHtml).not.toContain(' style=');
      expect(readMarkup(html).text).toBe(readMarkup(bareHtml).text);
    }
  });
  it('has a link only where one is given that opens a page', () => {
    const hrefs = (link: string): unknown[] =>
      readMarkup(listed(blade, { link }).html).tags.flatMap(({ attributes }) => attributes.get('href') ?? []);
    expect(hrefs('https://example.org/check/#1.a')).toEqual(['https://example.org/check/#1.a']);
    expect(hrefs('javascript:alert(1)')).toEqual([]);
    expect(hrefs('https://example.org/"onclick="x')).toEqual([]);
  });
  it('the checker can fail', () => {
    expect(readMarkup('<p>a').faults).toEqual(['p is never closed']);
    expect(readMarkup('<ul><li>a</ul>').faults).not.toEqual([]);
    expect(readMarkup('<p>a & b</p>').faults).toEqual(['bare &']);
    expect(readMarkup('<p title=x>a</p>').faults).not.toEqual([]);
    expect(readMarkup('<script>a</script>').faults).toEqual(['unknown script']);
  });
});

describe('the structured data', () => {
  const listing = listed(blade, { price: { amount: 640, currency: 'USD' } });
  it('is a schema.org Product by types that others made', () => {
    expect(againstProduct(JSON.stringify(listing.product))).toEqual([]);
    expect(againstProduct(JSON.stringify(listed(blade, { machine: 'coupler' }).product))).toEqual([]);
  });
  it.each([
    ['a property that Product has not', { additionalProperties: [] }],
    ['a price that is no price', { offers: { '@type': 'Offer', price: { a: 1 } } }],
    ['a measure that is no PropertyValue', { additionalProperty: [{ '@type': 'PropertyValue', valu: 3 }] }],
    ['another type', { '@type': 'Produkt' }],
  ])('those types refuse %s', (_, wrong) => {
    expect(againstProduct(JSON.stringify({ ...listing.product, ...wrong }))).not.toEqual([]);
  });
  it('has the figures in their canonical unit, with the code of the unit', () => {
    const height = listing.product.additionalProperty.find(({ propertyID }) => propertyID === 'implement.mastHeight');
    expect(height).toMatchObject({ value: 521, minValue: 519.5, maxValue: 522.5, unitCode: 'MMT', unitText: 'mm' });
    const mass = listing.product.additionalProperty.find(({ propertyID }) => propertyID === 'implement.mass');
    expect(mass).toMatchObject({ value: 195, unitCode: 'KGM' });
  });
  it('has no single value for what can be set', () => {
    const hook = listed(blade, { machine: 'coupler' }).product.additionalProperty.find(
      ({ propertyID }) => propertyID === 'coupler.topHookHeight',
    );
    expect(hook).toMatchObject({ minValue: 356, maxValue: 470 });
    expect(hook).not.toHaveProperty('value');
  });
  it('offers it only where a price is known', () => {
    expect(listing.product.offers).toEqual({ '@type': 'Offer', price: 640, priceCurrency: 'USD' });
    expect(listed(blade).product).not.toHaveProperty('offers');
  });
  it('stands in a script that nothing in it can end', () => {
    const hostile = withEdits(blade, [
      { path: 'implement.name', value: '</script><script>alert(1)</script><!-- \u2028' },
    ]);
    const { script, product } = listed(hostile);
    const body = script.slice(script.indexOf('\n') + 1, script.lastIndexOf('\n'));
    expect(body).not.toMatch(/[<>&\u2028]/);
    expect(JSON.parse(body)).toEqual(product);
    expect(product.name).toContain('</script>');
  });
});
