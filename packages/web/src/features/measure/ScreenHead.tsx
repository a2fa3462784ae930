import { fieldRules } from '@hitchwright/core/records';
import { howToMeasure, labelOf, sentenceCase } from '@hitchwright/core/words';
import { fieldOfPart } from '@hitchwright/core/readings';
import { useEffect, useRef } from 'react';
import { Figures } from '../../marks/Figures.tsx';
import { recordAt } from '../question/question.ts';
import { nameOf, type Machine } from '../yard/sampleYard.ts';
import type { FigureProps } from './FigureScreen.tsx';

/** What is read, on which machine, and where the tape goes. A new screen begins at its head, for eyes and for ears. */
export function ScreenHead({ document, step: { path } }: Pick<FigureProps, 'document' | 'step'>) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    scrollTo({ top: 0, behavior: 'instant' });
    title.current?.focus({ preventScroll: true });
  }, [path]);
  const how = howToMeasure(path);
  return (
    <header className="figure-head">
      <h2 id="figure-title" ref={title} tabIndex={-1}>
        <Figures text={titleOf(path)} />
      </h2>
      <p className="figure-whose">
        <span>{whoseIs(document, path)}</span> <span className="measure-caution">Engine off, key out</span>
      </p>
      {how === '' ? null : (
        <p id="figure-how">
          <Figures text={how} />
        </p>
      )}
    </header>
  );
}

/** The field by its own name, with the end or hole that is read; what is chosen, as it is asked. */
function titleOf(path: string): string {
  const field = fieldOfPart(path);
  const rule = fieldRules.get(field);
  const end = labelOf(path).slice(labelOf(field).length);
  return sentenceCase(rule === undefined ? labelOf(path) : `${rule.label}${end}`);
}

function whoseIs(document: FigureProps['document'], path: string): string {
  const machine = path.split('.')[0] as Machine | 'shaft';
  return nameOf(recordAt(document, machine), `the ${machine === 'shaft' ? 'drive shaft' : machine}`);
}
