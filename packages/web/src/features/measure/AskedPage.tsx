import type { MeasuringRequest } from '@hitchwright/core/records';
import { useEffect } from 'react';
import { beginAnswer } from './begin.ts';

/** A measuring request was opened: its measuring begins, or goes on where it was left. */
export function AskedPage({ request }: { readonly request: MeasuringRequest }) {
  useEffect(() => {
    void beginAnswer(request).then((hash) => location.replace(hash));
  }, [request]);
  return <p className="waiting">Opening the measuring…</p>;
}
