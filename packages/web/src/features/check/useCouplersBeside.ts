import type { SetupDocument } from '@hitchwright/core/records';
import { useFromYard } from '../../app/server/useFromYard.ts';
import { sampleNames } from '../question/question.ts';
import { sampleYard } from '../yard/sampleYard.ts';

const none: readonly SetupDocument[] = [];
const load = (): Promise<readonly SetupDocument[]> =>
  import('./yardCouplers.ts').then(({ yardCouplers }) => yardCouplers());

/** Other couplers that can be tried: the sample yard’s, where the question is about it, else the first few of one’s own yard. */
export function useCouplersBeside(document: SetupDocument): readonly SetupDocument[] {
  const isSample = sampleNames(document).length > 0;
  const own = useFromYard(isSample ? null : load, none);
  return isSample ? sampleYard.couplers : own;
}
