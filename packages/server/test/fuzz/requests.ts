import fc from 'fast-check';

type Json = Readonly<Record<string, unknown>>;

/** One route as its description has it. */
export interface Operation {
  readonly method: string;
  readonly path: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly in: string;
    readonly required?: boolean;
    readonly schema: Json;
  }[];
  readonly body: Readonly<Record<string, Json>>;
  readonly statuses: readonly number[];
}

/** A request that a client may send, well-formed or not. */
export interface FuzzRequest {
  readonly operation: Operation;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Uint8Array<ArrayBuffer> | null;
}

/** Every route of an OpenAPI document. */
export function operationsOf(document: Json): Operation[] {
  const paths = document['paths'] as Record<string, Record<string, Json>>;
  return Object.entries(paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, one]) => {
      const content = (one['requestBody'] as { content?: Record<string, { schema: Json }> } | undefined)?.content ?? {};
      return {
        method: method.toUpperCase(),
        path,
        parameters: (one['parameters'] ?? []) as Operation['parameters'],
        body: Object.fromEntries(Object.entries(content).map(([type, { schema }]) => [type, schema])),
        statuses: Object.keys(one['responses'] as Json).map(Number),
      };
    }),
  );
}

/** Texts that break what does not expect them. */
const nasty = [
  '',
  ' ',
  '\0',
  '\ud800',
  "'; drop table record; --",
  '<script>alert(1)</script>',
  '../../../../etc/passwd',
  '%2e%2e%2f',
  '=1+1',
  '__proto__',
  'constructor',
  'NaN',
  '1e309',
  '-1',
  'true',
  'ä'.repeat(300),
  'x'.repeat(5000),
];
const wild = fc.oneof(fc.constantFrom(...nasty), fc.jsonValue({ maxDepth: 3 }), fc.double(), fc.maxSafeInteger());

/** What a schema describes, now and then something else; ids are often such as there are. */
function valueOf(document: Json, schema: Json, ids: readonly string[]): fc.Arbitrary<unknown> {
  const described = describedBy(document, schema, ids);
  return fc.oneof({ weight: 14, arbitrary: described }, { weight: 1, arbitrary: wild });
}

function describedBy(document: Json, schema: Json, ids: readonly string[]): fc.Arbitrary<unknown> {
  if (typeof schema['$ref'] === 'string') return describedBy(document, at(document, schema['$ref']), ids);
  if (Array.isArray(schema['anyOf']))
    return fc.oneof(...(schema['anyOf'] as Json[]).map((one) => valueOf(document, one, ids)));
  if (Array.isArray(schema['enum'])) return fc.constantFrom(...(schema['enum'] as unknown[]));
  if ('const' in schema) return fc.constant(schema['const']);
  const types = [schema['type']].flat() as (string | undefined)[];
  return fc.oneof(...types.map((type) => ofType(type, document, schema, ids)));
}

function ofType(type: string | undefined, document: Json, schema: Json, ids: readonly string[]): fc.Arbitrary<unknown> {
  switch (type) {
    case 'string':
      return textOf(schema, ids);
    case 'integer':
      return fc.oneof(fc.integer({ min: 0, max: 3 }), fc.integer());
    case 'number':
      return fc.double({ noNaN: true, noDefaultInfinity: true });
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    case 'array':
      return fc.array(valueOf(document, schema['items'] as Json, ids), { maxLength: 3 });
    case 'object':
      return objectOf(document, schema, ids);
    default:
      return fc.jsonValue({ maxDepth: 2 });
  }
}

const fields = ['mastHeight', 'mass', 'lowerBallBore', 'ballSpan', 'shoulderSpan', 'note', 'category', 'price.amount'];

function textOf(schema: Json, ids: readonly string[]): fc.Arbitrary<string> {
  if (typeof schema['pattern'] === 'string' && schema['pattern'].includes('_.:-'))
    return fc.constantFrom(...ids, 'nobody');
  return fc.oneof(
    fc.constantFrom(...fields, '2026-09-14', 'rake', '"1"', '"2"'),
    fc.string({ unit: 'grapheme' }),
    fc.constantFrom(...nasty),
  );
}

function objectOf(document: Json, schema: Json, ids: readonly string[]): fc.Arbitrary<unknown> {
  const properties = (schema['properties'] ?? {}) as Record<string, Json>;
  const required = (schema['required'] ?? []) as string[];
  const known = Object.fromEntries(Object.entries(properties).map(([key, one]) => [key, valueOf(document, one, ids)]));
  const isOpen = schema['additionalProperties'] !== false && Object.keys(properties).length === 0;
  const open = fc.dictionary(fc.oneof(fc.constantFrom(...fields), fc.string()), fc.jsonValue({ maxDepth: 2 }), {
    maxKeys: 4,
  });
  return isOpen ? open : fc.record(known, { requiredKeys: required });
}

function at(document: Json, ref: string): Json {
  return ref
    .split('/')
    .slice(1)
    .reduce<unknown>((node, key) => (node as Json)[key], document) as Json;
}

/** Requests to every route of a document. */
export function requestsTo(document: Json, ids: readonly string[]): fc.Arbitrary<FuzzRequest> {
  return fc.oneof(...operationsOf(document).map((operation) => requestTo(document, operation, ids)));
}

function requestTo(document: Json, operation: Operation, ids: readonly string[]): fc.Arbitrary<FuzzRequest> {
  const given = operation.parameters.map(({ name, schema, required, in: place }) => {
    const value = valueOf(document, schema, ids).map((one) => ({ name, place, text: plainText(one) }));
    return required === true ? fc.option(value, { nil: null, freq: 12 }) : fc.option(value, { nil: null, freq: 1 });
  });
  return fc.record({ values: fc.tuple(...given), body: bodyFor(document, operation, ids) }).map(({ values, body }) => {
    const all = values.filter((value) => value !== null);
    const path = all
      .filter(({ place }) => place === 'path')
      .reduce((so, { name, text }) => so.replace(`{${name}}`, encodeURIComponent(text)), operation.path);
    const query = new URLSearchParams(
      all.filter(({ place }) => place === 'query').map(({ name, text }): [string, string] => [name, text]),
    );
    const headers = all
      .filter(({ place }) => place === 'header')
      .map(({ name, text }) => [name, headerText(name, text)]);
    return {
      operation,
      path: `${path.replace(/[{}]/g, '')}${query.size > 0 ? '?' : ''}${query.toString()}`,
      headers: {
        ...Object.fromEntries(headers),
        ...(body.type === null ? {} : { 'content-type': body.type }),
      } as Record<string, string>,
      body: body.body,
    };
  });
}

interface Body {
  readonly type: string | null;
  readonly body: FuzzRequest['body'];
}

function bodyFor(document: Json, { body }: Operation, ids: readonly string[]): fc.Arbitrary<Body> {
  const kinds = Object.entries(body);
  if (kinds.length === 0) return fc.constant({ type: null, body: null });
  const described = kinds.map(([type, schema]): fc.Arbitrary<Body> =>
    schema['format'] === 'binary'
      ? fc
          .oneof(fc.uint8Array(), fc.constant([0xff, 0xd8, 0xff, 0xe0]), fc.constant(sheet))
          .map((bytes) => ({ type, body: Uint8Array.from(bytes) }))
      : valueOf(document, schema, ids).map((value) => ({ type, body: JSON.stringify(value) })),
  );
  const broken = fc.constantFrom<Body>(
    { type: 'application/json', body: '{"kind":' },
    { type: 'application/json', body: '' },
    { type: 'text/plain', body: '{}' },
    { type: null, body: null },
  );
  return fc.oneof({ weight: 10, arbitrary: fc.oneof(...described) }, { weight: 1, arbitrary: broken });
}

const sheet = [...new TextEncoder().encode('Implement,Category,Mast height (in)\nHarl rake,1,18\n')];

function plainText(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? '');
  return /\p{Cs}/u.test(text) ? 'x' : text;
}

/** A header takes no other letters; who and title are written as in an address, if only most of the time. */
function headerText(name: string, text: string): string {
  const isWritten = name.startsWith('hitchwright-') && text.length % 7 !== 0;
  return (isWritten ? encodeURIComponent(text) : text.replace(/[^\x20-\x7e]/g, '')).trim().slice(0, 2000);
}
