import { Figures } from '../../marks/Figures.tsx';
import type { Drawings } from '../check/assessor.ts';
import { useFormat } from '../check/useFormat.ts';

interface ShaftDrawingProps {
  readonly pictures: NonNullable<Drawings['shaft']>;
}

/** The drive shaft by itself: where to measure, and what to cut where something is. */
export function ShaftDrawing({ pictures }: ShaftDrawingProps) {
  const { svg, words } = pictures[useFormat()];
  return (
    <>
      <div className="drawing-picture shaft-picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <details className="drawing-words">
        <summary>The shaft in words</summary>
        <p>
          <Figures text={words} />
        </p>
      </details>
    </>
  );
}
