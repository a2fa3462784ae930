import type { Driver } from '@hitchwright/core/findings';
import { InputTable } from './InputTable.tsx';

/** Inputs that nobody gave, and what stood in for each. */
export function TakenForGranted({ assumed }: { readonly assumed: readonly Driver[] }) {
  if (assumed.length === 0) return null;
  return (
    <details className="aside">
      <summary>
        Taken for granted: {assumed.length} {assumed.length === 1 ? 'figure' : 'figures'} nobody measured
      </summary>
      <InputTable drivers={assumed} />
    </details>
  );
}
