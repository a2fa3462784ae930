import { useEffect, useState, type RefObject } from 'react';

/** Of the height of the window: what takes more hides what scrolls past it. */
const mostOfWindow = 0.5;

/** Whether a box takes so little of the window’s height that it may stay in sight while the page scrolls. */
export function useIsLow(box: RefObject<HTMLElement | null>): boolean {
  const [isLow, setIsLow] = useState(false);
  useEffect(() => {
    const { current } = box;
    if (current === null) return undefined;
    const measure = (): void => setIsLow(current.offsetHeight <= innerHeight * mostOfWindow);
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    addEventListener('resize', measure);
    return () => {
      observer.disconnect();
      removeEventListener('resize', measure);
    };
  }, [box]);
  return isLow;
}
