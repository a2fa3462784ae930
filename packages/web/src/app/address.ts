/** The whole address of a page of this site, by its fragment. */
export function addressOf(fragment: string): string {
  return `${location.origin}${location.pathname}#${fragment.replace(/^#/, '')}`;
}

/** Where others find these pages, up to `#`; null where they are served on this machine only. */
export function sharedSite(): string | null {
  const isLocal = /^(?:(?:.+\.)?localhost|127\.\d+\.\d+\.\d+|\[::1\])$/.test(location.hostname);
  return isLocal ? null : `${location.origin}${location.pathname}`;
}

/** The whole address of a page as others find it; null where these pages are served on this machine only. */
export function sharedAddressOf(fragment: string): string | null {
  return sharedSite() === null ? null : addressOf(fragment);
}
