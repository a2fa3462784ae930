/** Only an address that a browser opens as a page goes into a link; anything that could act is left out. */
export function safeLink(link: string | undefined): string | null {
  return link !== undefined && /^https?:\/\/[^\s<>"'`\\]+$/i.test(link) ? link : null;
}
