"use client";

import { useEffect, useId, useRef } from "react";
import type { StateMove } from "./state-moves";

interface MoveConfirmationProps {
  readonly move: StateMove | null;
  readonly onConfirm: () => void;
  readonly onClose: () => void;
}

/** Says what a move means, and asks. Escape leaves everything as it was. */
export function MoveConfirmation({ move, onConfirm, onClose }: MoveConfirmationProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const headingId = useId();
  const isOpen = move !== null;

  useEffect(() => {
    if (isOpen) dialog.current?.showModal();
    else dialog.current?.close();
  }, [isOpen]);

  return (
    <dialog ref={dialog} className="sheet-dialog" aria-labelledby={headingId} onClose={onClose}>
      {move === null ? null : (
        <>
          <h2 id={headingId}>{move.label}?</h2>
          <p className="my-4">{move.meaning}</p>
          <div className="flex flex-wrap gap-3">
            <button type="button" className="button" onClick={onConfirm}>
              {move.label}
            </button>
            <button type="button" className="button button-quiet" onClick={onClose}>
              Not yet
            </button>
          </div>
        </>
      )}
    </dialog>
  );
}
