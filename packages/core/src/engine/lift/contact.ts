import type { Line, Reason } from '../findings/index.ts';
import type { LiftQuestion } from './question.ts';

/** What is carried against the tractor's own parts. */
export function contactLine({ joint }: LiftQuestion): Line<Reason> {
  const id = 'contact.machines';
  const outlines = joint.setup.tractor.outlines ?? [];
  if (outlines.length === 0) return { id, kind: 'notChecked', needs: 'outlines' };
  return { id, kind: 'notChecked', needs: 'outlines' };
}
