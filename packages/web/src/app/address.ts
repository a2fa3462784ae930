/** The whole address of a page of this site, by its fragment. */
export function addressOf(fragment: string): string {
  return `${location.origin}${location.pathname}#${fragment.replace(/^#/, '')}`;
}
