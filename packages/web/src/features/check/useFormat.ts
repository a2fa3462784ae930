import type { Format } from '@hitchwright/core/drawings';
import { useMedia } from '../../app/media.ts';

/** The sheet that drawings are made for: a wide or a narrow screen, or paper. */
export function useFormat(): Format {
  const isPrint = useMedia('print');
  const isPhone = useMedia('(max-width: 699px)');
  if (isPrint) return 'print';
  return isPhone ? 'phone' : 'desk';
}
