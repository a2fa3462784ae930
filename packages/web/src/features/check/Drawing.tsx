import type { Format } from '@hitchwright/core/drawings';
import { useMedia } from '../../app/media.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { Answered } from './useAssessment.ts';

/** The picture that shows why, with the same in words. The SVG writer escapes every name that it sets. */
export function Drawing({ answered: { drawings } }: { readonly answered: Answered }) {
  const format = useFormat();
  if (drawings === null) return null;
  const { svg, words } = drawings.pictures[format];
  return (
    <section className={`drawing drawing-${format}`} aria-label="Drawing">
      <div className="drawing-picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <details className="drawing-words">
        <summary>The drawing in words</summary>
        <p>
          <Figures text={words} />
        </p>
      </details>
    </section>
  );
}

function useFormat(): Format {
  const isPrint = useMedia('print');
  const isPhone = useMedia('(max-width: 699px)');
  if (isPrint) return 'print';
  return isPhone ? 'phone' : 'desk';
}
