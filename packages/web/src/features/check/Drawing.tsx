import { Figures } from '../../marks/Figures.tsx';
import type { Answered } from './useAssessment.ts';
import { useFormat } from './useFormat.ts';

/** The picture that shows why, with the same in words. The SVG writer escapes every name that it sets. */
export function Drawing({ answered: { drawings } }: { readonly answered: Answered }) {
  const format = useFormat();
  if (drawings === null) return null;
  const { svg, words } = drawings.pictures[format];
  const { strip, shaft } = drawings;
  return (
    <section className={`drawing drawing-${format}`} aria-label="Drawing">
      <div className="drawing-picture" dangerouslySetInnerHTML={{ __html: svg }} />
      {format === 'print' && strip !== null ? (
        <div className="drawing-picture drawing-strip" dangerouslySetInnerHTML={{ __html: strip.svg }} />
      ) : null}
      {format === 'print' && shaft !== null ? (
        <div className="drawing-picture drawing-strip" dangerouslySetInnerHTML={{ __html: shaft.print.svg }} />
      ) : null}
      <details className="drawing-words">
        <summary>The drawing in words</summary>
        <p>
          <Figures text={words} />
        </p>
      </details>
    </section>
  );
}
