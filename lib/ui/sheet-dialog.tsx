"use client";

import { useEffect, useId, useLayoutEffect, useRef, type ReactElement, type ReactNode } from "react";

/**
 * A sheet over the page, in a native dialog: Escape closes it, and the focus goes back to where it was.
 *
 * - `heading` null keeps it closed; it takes the focus when the sheet opens and whenever `subject` changes.
 */
export interface SheetDialogProps {
  readonly heading: string | null;
  readonly subject: unknown;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function SheetDialog({ heading, subject, onClose, children }: SheetDialogProps): ReactElement {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const headingId = useId();
  const isOpen = heading !== null;

  // Before the page is drawn: whoever closes it sees it closed, whatever else is to be drawn.
  useLayoutEffect(() => {
    if (isOpen) dialog.current?.showModal();
    else dialog.current?.close();
  }, [isOpen]);

  // Also when one subject leads to the next, so that it is read from its beginning.
  useEffect(() => {
    title.current?.focus();
  }, [subject]);

  return (
    <dialog ref={dialog} className="sheet-dialog" aria-labelledby={headingId} onClose={onClose}>
      {heading === null ? null : (
        <>
          <div className="mb-4 flex items-start justify-between gap-4">
            <h2 id={headingId} ref={title} tabIndex={-1}>
              {heading}
            </h2>
            <button type="button" className="button button-quiet" onClick={onClose}>
              Close
            </button>
          </div>
          {children}
        </>
      )}
    </dialog>
  );
}
