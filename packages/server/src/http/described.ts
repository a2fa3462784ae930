import { readFileSync } from 'node:fs';
import type { OpenAPIHono } from '@hono/zod-openapi';

const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  readonly version: string;
};

const head = {
  openapi: '3.1.0',
  info: {
    title: 'Hitchwright, the yard’s records',
    version,
    description: 'Answers, records, readings, history, saved answers and imports of one yard, on this machine only.',
  },
  servers: [{ url: '/' }],
};

type Responses = Record<string, unknown>;

/** The description of an API; refusals, which all routes share, stand in it once. */
export function described(app: OpenAPIHono): object {
  const document = app.getOpenAPI31Document(head);
  const shared: Responses = {};
  const paths = Object.entries(document.paths ?? {}).map(([path, item]) => {
    const methods = Object.entries(item as Record<string, { readonly responses: Responses }>);
    return [path, Object.fromEntries(methods.map(([method, one]) => [method, withShared(one, shared)]))];
  });
  const { components } = document;
  return { ...document, components: { ...components, responses: shared }, paths: Object.fromEntries(paths) as object };
}

function withShared<T extends { readonly responses: Responses }>(operation: T, shared: Responses): T {
  const responses = Object.entries(operation.responses).map(([status, response]) => {
    if (Number(status) < 400) return [status, response];
    shared[status] = response;
    return [status, { $ref: `#/components/responses/${status}` }];
  });
  return { ...operation, responses: Object.fromEntries(responses) as Responses };
}
