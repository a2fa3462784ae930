import { rearView, sceneToSvg } from '@hitchwright/core/drawings';
import { useMemo } from 'react';
import { useMedia } from '../../app/media.ts';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import type { Answered } from './useAssessment.ts';

/** The picture that shows why, with the same in words. The SVG writer escapes every name that it sets. */
export function Drawing({ answered: { setup, answer } }: { readonly answered: Answered }) {
  const { system } = usePreferences();
  const format = useFormat();
  const { svg, description } = useMemo(() => {
    const scene = rearView(setup, answer, { system, format });
    return { svg: sceneToSvg(scene, { idPrefix: `rear-${format}` }), description: scene.description };
  }, [setup, answer, system, format]);
  return (
    <section className={`drawing drawing-${format}`} aria-label="Drawing">
      <div className="drawing-picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <details className="drawing-words">
        <summary>The drawing in words</summary>
        <p>
          <Figures text={description} />
        </p>
      </details>
    </section>
  );
}

function useFormat(): 'desk' | 'phone' | 'print' {
  const isPrint = useMedia('print');
  const isPhone = useMedia('(max-width: 699px)');
  if (isPrint) return 'print';
  return isPhone ? 'phone' : 'desk';
}
