import { linkOf } from '@hitchwright/core/exchange';
import type { SetupDocument } from '@hitchwright/core/records';
import { useState } from 'react';
import { addressOf, sharedSite } from '../../app/address.ts';
import { CopyButton } from './CopyButton.tsx';
import type { Reply } from '@hitchwright/core/handover';
import type { MakerDesk } from './useMaker.ts';

interface ReplyPartProps {
  readonly desk: MakerDesk;
  readonly document: SetupDocument;
}

/** A reply drafted from the findings: read it, change it, copy it. */
export function ReplyPart({ desk, document }: ReplyPartProps) {
  const [reply, setReply] = useState<Reply | null>(null);
  const [text, setText] = useState('');
  const draft = async (): Promise<void> => {
    const made = await desk.make({
      kind: 'reply',
      ...(sharedSite() === null ? {} : { link: addressOf(linkOf(document)) }),
    });
    if (made?.kind !== 'reply') return;
    setReply(made.reply);
    setText(made.reply.text);
  };
  return (
    <section className="hand-over-part" aria-labelledby="reply-title">
      <h3 id="reply-title">A reply</h3>
      {reply === null ? (
        <div className="hand-over-actions">
          <button type="button" disabled={desk.making !== null} onClick={() => void draft()}>
            Draft a reply
          </button>
        </div>
      ) : (
        <>
          <p>
            Subject: <b>{reply.subject}</b>
          </p>
          <textarea aria-label="Reply" rows={14} value={text} onChange={({ target }) => setText(target.value)} />
          <div className="hand-over-actions">
            <CopyButton words="Copy the text" text={text} />
            {text === reply.text ? <CopyButton words="Copy as e-mail" text={text} html={reply.html} /> : null}
          </div>
        </>
      )}
    </section>
  );
}
