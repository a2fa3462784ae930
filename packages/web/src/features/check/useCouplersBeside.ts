import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { hasYard } from '../../app/server/hasYard.ts';
import { sampleNames } from '../question/question.ts';
import { sampleYard } from '../yard/sampleYard.ts';

const none: readonly SetupDocument[] = [];

/** Other couplers that can be tried: the sample yard’s, where the question is about it, else the first few of one’s own yard. */
export function useCouplersBeside(document: SetupDocument): readonly SetupDocument[] {
  const isSample = sampleNames(document).length > 0;
  const [own, setOwn] = useState(none);
  const isAsked = hasYard && !isSample;
  useEffect(() => {
    if (!isAsked) return undefined;
    let isOver = false;
    void import('./yardCouplers.ts')
      .then(({ yardCouplers }) => yardCouplers())
      .then((couplers) => {
        if (!isOver) setOwn(couplers);
      });
    return () => {
      isOver = true;
    };
  }, [isAsked]);
  if (isSample) return sampleYard.couplers;
  return isAsked ? own : none;
}
