/** Something of core or the store as the plain object that it is, for answers whose parts are described elsewhere. */
export function plain(one: object): Record<string, unknown> {
  return { ...one };
}
