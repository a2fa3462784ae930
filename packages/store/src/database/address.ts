import { StoreTrouble } from '../trouble.ts';

/** Where a store is: a file, or a PostgreSQL server. */
export type Address =
  { readonly kind: 'sqlite'; readonly file: string } | { readonly kind: 'postgres'; readonly url: string };

/**
 * Reads the address of a store.
 *
 * @param url `sqlite:<file>`, or `postgres://…` [text]
 * @returns where it is; throws StoreTrouble for any other address [record]
 */
export function addressOf(url: string): Address {
  const file = /^sqlite:(?:\/\/(?=\/))?(.+)$/s.exec(url)?.[1];
  if (file !== undefined && !file.startsWith(':')) return { kind: 'sqlite', file };
  if (/^postgres(ql)?:\/\//.test(url)) return { kind: 'postgres', url };
  throw new StoreTrouble('unreachable', `A store’s address is sqlite:<file> or postgres://…, not ${shown(url)}.`);
}

/** The address as it may be shown: without its password. */
export function shown(url: string): string {
  return url.slice(0, 300).replace(/(\/\/[^:/@]*):[^@]*@/, '$1:…@');
}
