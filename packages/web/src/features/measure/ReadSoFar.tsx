import { Figures } from '../../marks/Figures.tsx';
import type { Entry } from './session.ts';

/** The readings of a figure so far. */
export function ReadSoFar({ entry: { typed } }: { readonly entry: Entry }) {
  if (typed.length === 0) return null;
  return (
    <p className="read-so-far">
      {typed.length === 1 ? 'You read' : 'You read, one after the other,'}{' '}
      <b>
        <Figures text={typed.map(({ text }) => text).join(', ')} />
      </b>
    </p>
  );
}
