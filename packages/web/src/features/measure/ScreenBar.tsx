import type { ReactNode } from 'react';

/** The two presses under the thumb: one that goes on, and one that gives way. */
export function ScreenBar({ children }: { readonly children: ReactNode }) {
  return <div className="screen-bar">{children}</div>;
}
