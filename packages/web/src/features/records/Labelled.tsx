import type { ReactNode } from 'react';

interface LabelledProps {
  readonly words: string;
  /** It stands among the fields of a group, not in a form of its own. */
  readonly isField?: boolean;
  readonly children: ReactNode;
}

/** A box with its words above it. */
export function Labelled({ words, isField = false, children }: LabelledProps) {
  return (
    <label className={isField ? 'field reading-labelled' : 'reading-labelled'}>
      <span className={isField ? 'field-label' : undefined}>{words}</span>
      {children}
    </label>
  );
}
