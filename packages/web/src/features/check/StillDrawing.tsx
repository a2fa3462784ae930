import type { Format } from '@hitchwright/core/drawings';
import { Figures } from '../../marks/Figures.tsx';
import type { Picture } from './assessor.ts';
import { useFormat } from './useFormat.ts';

interface StillDrawingProps {
  readonly pictures: Readonly<Record<Format, Picture>>;
  /** What unfolds the same in words. */
  readonly inWords: string;
}

/** A drawing that stands beside what it belongs to, with the same in words. */
export function StillDrawing({ pictures, inWords }: StillDrawingProps) {
  const { svg, words } = pictures[useFormat()];
  return (
    <>
      <div className="drawing-picture still-picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <details className="drawing-words">
        <summary>{inWords}</summary>
        <p>
          <Figures text={words} />
        </p>
      </details>
    </>
  );
}
