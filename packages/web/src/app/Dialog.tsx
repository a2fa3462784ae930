import { useEffect, useId, useRef, type ReactNode, type RefObject } from 'react';
import './dialog.css';

interface DialogProps {
  readonly title: string;
  /** What its style goes by. */
  readonly className: string;
  readonly onClose: () => void;
  /** What stays in sight under the title while the rest is scrolled. */
  readonly top?: ReactNode;
  readonly children: ReactNode;
  /** The dialog, for whoever closes it by another way. */
  readonly ref?: RefObject<HTMLDialogElement | null>;
}

/** A dialog over the page, with its title and the way out. It is open as long as it stands. */
export function Dialog({ title, className, onClose, top, children, ref }: DialogProps) {
  const id = useId();
  const own = useRef<HTMLDialogElement>(null);
  const dialog = ref ?? own;
  useEffect(() => dialog.current?.showModal(), [dialog]);
  return (
    <dialog ref={dialog} className={`dialog ${className}`} aria-labelledby={id} onClose={onClose}>
      <div className="dialog-top">
        <div className="dialog-head">
          <h2 id={id}>{title}</h2>
          <button type="button" className="quiet" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
        {top}
      </div>
      {children}
    </dialog>
  );
}
