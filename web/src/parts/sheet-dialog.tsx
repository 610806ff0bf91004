import { type ReactNode, useEffect, useId, useRef } from 'react';

export interface SheetDialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** `side` stands at the right edge and leaves the sheet in sight. */
  readonly place?: 'side' | 'middle';
}

/** A page's own dialog: keeps the focus, closes by Escape, by its button or by a touch beside it. */
export function SheetDialog({ title, onClose, children, place = 'middle' }: SheetDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    if (!dialog.current?.open) dialog.current?.showModal();
  }, []);
  return (
    // The keyboard closes a dialog by Escape, which the browser sees to.
    // biome-ignore lint/a11y/useKeyWithClickEvents: a touch beside it is one way more
    <dialog
      ref={dialog}
      className={`sheet-dialog ${place}`}
      aria-labelledby={heading}
      onClose={onClose}
      onClick={(event) => event.target === dialog.current && dialog.current?.close()}
    >
      <section className="dialog-inside">
        <header>
          <h2 id={heading}>{title}</h2>
          <button type="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </header>
        {children}
      </section>
    </dialog>
  );
}
