import { useState } from 'react';

type Sent = 'not yet' | 'sent' | 'copied' | 'by hand';

const words: Readonly<Record<Sent, string>> = {
  'not yet': 'Send the link',
  sent: 'Handed over',
  copied: 'Link copied',
  'by hand': 'Copy it from the box',
};

/** Hands a link over by the device’s own way to share, else by the clipboard; the box is there to copy from by hand. */
export function SendLink({ address, title }: { readonly address: string; readonly title: string }) {
  const [sent, setSent] = useState<Sent>('not yet');
  const send = async (): Promise<void> => {
    setSent(await handedOver(address, title));
    setTimeout(() => setSent('not yet'), 4000);
  };
  return (
    <>
      <button type="button" className="button-solid" onClick={() => void send()}>
        <span aria-live="polite">{words[sent]}</span>
      </button>
      <input
        className="link-box"
        readOnly
        aria-label={title}
        value={address}
        onFocus={({ target }) => target.select()}
      />
    </>
  );
}

async function handedOver(url: string, title: string): Promise<Sent> {
  try {
    if (typeof navigator.share === 'function' && matchMedia('(pointer: coarse)').matches) {
      await navigator.share({ title, url });
      return 'sent';
    }
    await navigator.clipboard.writeText(url);
    return 'copied';
  } catch {
    return 'by hand';
  }
}
