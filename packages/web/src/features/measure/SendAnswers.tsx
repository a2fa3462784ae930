import { replyLinkOf } from '@hitchwright/core/exchange';
import { useState } from 'react';
import { sharedAddressOf } from '../../app/address.ts';
import { download } from '../../app/download.ts';
import { QrCode } from '../../marks/QrCode.tsx';
import { SendLink } from '../../app/SendLink.tsx';
import { photosOf } from './keep.ts';
import { replyFile, replyOf } from './reply.ts';
import type { SessionDesk } from './useSession.ts';

/** How the figures get back to whoever asked: as a link, as a code on the screen, or as a file with the photos. */
export function SendAnswers({ desk }: { readonly desk: SessionDesk }) {
  const { session, entries } = desk;
  const [when] = useState(() => new Date().toISOString());
  const reply = replyOf(session, entries, when);
  if (reply.readings.length === 0 && reply.left.length === 0) return null;
  const link = replyLinkOf(reply);
  const address = sharedAddressOf(link);
  const save = async (): Promise<void> => {
    const photos = await photosOf(session.id).catch(() => new Map<string, Blob>());
    download(`readings-${when.slice(0, 10)}.json`, await replyFile(reply, photos), 'application/json');
  };
  return (
    <section className="done-part" aria-labelledby="send-title">
      <h2 id="send-title">Send it back</h2>
      {address === null ? (
        <p>
          These pages are on this machine only, so a link leads nobody else to the figures. Save them as a file, with
          the photos: whoever asked opens it at “Open readings from a file”. Nothing leaves this device before you send
          it.
        </p>
      ) : (
        <p>
          The link holds the figures and your name, if you gave it. Photos go only with the file. Nothing leaves this
          device before you send it.
        </p>
      )}
      <div className="done-actions">
        {address === null ? null : <SendLink address={address} title="Readings for a tractor and implement" />}
        <button type="button" className={address === null ? 'button-solid' : ''} onClick={() => void save()}>
          Save as a file, photos with it
        </button>
        {address === null ? (
          <a className="button" href={`#${link}`}>
            Lay them beside the setup here
          </a>
        ) : null}
      </div>
      {address === null ? null : <QrCode text={address} label="The same link as a code to photograph" />}
    </section>
  );
}
