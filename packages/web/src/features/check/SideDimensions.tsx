import { lazy, Suspense } from 'react';
import type { DimensionsProps } from '../dimensions/DimensionsPanel.tsx';

const DimensionsPanel = lazy(() =>
  import('../dimensions/DimensionsPanel.tsx').then(({ DimensionsPanel }) => ({ default: DimensionsPanel })),
);

/** The dimensions beside the drawing; they come when they are first asked for. */
export function SideDimensions(props: DimensionsProps) {
  return (
    <Suspense fallback={<p className="pad">Opening the dimensions…</p>}>
      <DimensionsPanel {...props} />
    </Suspense>
  );
}
