import { useState } from 'react';

interface CopyButtonProps {
  readonly words: string;
  readonly text: string;
  /** Goes along for whoever takes markup. */
  readonly html?: string;
}

type State = 'not yet' | 'copied' | 'refused';

/** Puts a text on the clipboard and says so. */
export function CopyButton({ words, text, html }: CopyButtonProps) {
  const [state, setState] = useState<State>('not yet');
  const copy = async (): Promise<void> => {
    setState(await copied(text, html));
    setTimeout(() => setState('not yet'), 4000);
  };
  return (
    <button type="button" onClick={() => void copy()}>
      <span aria-live="polite">
        {{ 'not yet': words, copied: 'Copied', refused: 'The browser lets nothing be copied' }[state]}
      </span>
    </button>
  );
}

async function copied(text: string, html: string | undefined): Promise<State> {
  try {
    if (html === undefined) await navigator.clipboard.writeText(text);
    else
      await navigator.clipboard.write([
        new ClipboardItem({
          'text/plain': new Blob([text], { type: 'text/plain' }),
          'text/html': new Blob([html], { type: 'text/html' }),
        }),
      ]);
    return 'copied';
  } catch {
    return 'refused';
  }
}
