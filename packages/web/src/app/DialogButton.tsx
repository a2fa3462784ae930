import { Suspense, useState, type ReactNode } from 'react';

interface DialogButtonProps {
  readonly label: string;
  readonly className?: string;
  /** The dialog, which may still have to be fetched; it is told how it is closed. */
  readonly children: (close: () => void) => ReactNode;
}

/** A button that opens a dialog. */
export function DialogButton({ label, className, children }: DialogButtonProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className={className} aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {label}
      </button>
      {isOpen ? <Suspense fallback={null}>{children(() => setOpen(false))}</Suspense> : null}
    </>
  );
}
