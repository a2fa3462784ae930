import { useCallback, useState } from 'react';

/**
 * Where a list begins that scrolls with the page, which moves as what stands above it grows.
 *
 * @returns its distance from the top of the page [px], and what the list takes as its ref
 */
export function useListTop(): readonly [number, (list: HTMLElement | null) => (() => void) | undefined] {
  const [top, setTop] = useState(0);
  const follow = useCallback((list: HTMLElement | null) => {
    if (list === null) return undefined;
    const look = (): void => setTop(Math.round(list.getBoundingClientRect().top + scrollY));
    const observer = new ResizeObserver(look);
    observer.observe(document.body);
    look();
    return () => observer.disconnect();
  }, []);
  return [top, follow];
}
