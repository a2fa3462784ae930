import { appOver } from './app.ts';
import type { Desk } from './desk.ts';
import { described } from './http/described.ts';

/**
 * What the API says of itself, made of the same schemas that check its requests.
 *
 * @returns an OpenAPI 3.1 document [JSON]
 */
export function apiDescription(): object {
  const nothing = {} as Desk;
  return described(appOver(nothing, null));
}
