import { write } from './memory.ts';
import type { SessionDesk } from './useSession.ts';

/** Says when what was typed is not kept on the device, and what to do. */
export function KeepingNote({ desk: { session, keeping } }: { readonly desk: SessionDesk }) {
  if (keeping === 'kept') return null;
  return (
    <section className="keeping-note" role="alert">
      <p>
        <b>{keeping === 'full' ? 'This device is full.' : 'This browser keeps nothing.'}</b> What you typed is on this
        page only: don’t close it.{' '}
        {keeping === 'full'
          ? 'Make room on the device, or send what there is.'
          : 'Send what there is when you are done, or open the page outside a private window.'}
      </p>
      <button type="button" onClick={() => void write(session.id)}>
        Try to keep it again
      </button>
    </section>
  );
}
