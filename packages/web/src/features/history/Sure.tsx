import { useRef, useState, type ReactNode } from 'react';
import './sure.css';

interface SureProps {
  /** What is asked before it is done. */
  readonly ask: string;
  readonly yes: string;
  readonly isBusy?: boolean;
  readonly onYes: () => void;
  readonly children: ReactNode;
}

/** A button that asks once more before anything is done. */
export function Sure({ ask, yes, isBusy = false, onYes, children }: SureProps) {
  const [isAsking, setAsking] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const end = (): void => {
    setAsking(false);
    setTimeout(() => opener.current?.focus());
  };
  if (!isAsking)
    return (
      <button type="button" ref={opener} disabled={isBusy} onClick={() => setAsking(true)}>
        {children}
      </button>
    );
  return (
    <div
      role="group"
      aria-label={ask}
      className="sure"
      onKeyDown={({ key }) => {
        if (key === 'Escape') end();
      }}
    >
      <p>{ask}</p>
      <button
        type="button"
        className="button-solid"
        onClick={() => {
          end();
          onYes();
        }}
      >
        {yes}
      </button>
      <button type="button" ref={focused} onClick={end}>
        No
      </button>
    </div>
  );
}

/** What is safe has the focus first. */
function focused(button: HTMLButtonElement | null): void {
  button?.focus();
}
