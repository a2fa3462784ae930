import type { Drawings } from '../check/assessor.ts';
import { StillDrawing } from '../check/StillDrawing.tsx';

interface ShaftDrawingProps {
  readonly pictures: NonNullable<Drawings['shaft']>;
}

/** The drive shaft by itself: where to measure, and what to cut where something is. */
export function ShaftDrawing({ pictures }: ShaftDrawingProps) {
  return <StillDrawing pictures={pictures} inWords="The shaft in words" />;
}
