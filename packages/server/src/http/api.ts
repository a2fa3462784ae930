import { OpenAPIHono } from '@hono/zod-openapi';
import { HttpRefusal } from './refusal.ts';
import { requestErrors } from './invalid.ts';

const places: Readonly<Record<string, string>> = { json: 'body', form: 'body', param: 'path' };

/** An empty part of the API: whatever does not fit the description of a route is refused in our own words. */
export function emptyApi() {
  return new OpenAPIHono({
    defaultHook: (result) => {
      if (result.success) return;
      const { target, error } = result;
      const given = (result as { readonly data?: unknown }).data;
      throw new HttpRefusal(400, { errors: requestErrors(error.issues, given, places[target] ?? target) });
    },
  });
}
