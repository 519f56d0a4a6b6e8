"use client";

import { useEffect, useId, useRef, type ReactElement } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ExplanationBody } from "./explanation-body";

/**
 * The explanation behind a number, in a native dialog: Escape closes it, and the focus goes back to the number.
 *
 * - `explanation` null keeps the dialog closed; the caller sets it in `onExplain` and clears it in `onClose`.
 * - `onFollow(quantity)` opens the explanation of an input that is itself a number of the ledger.
 */
export interface ExplanationPanelProps {
  readonly explanation: ExplainedNumber | null;
  readonly preferences: Preferences;
  readonly onClose: () => void;
  readonly onFollow?: ((quantity: QuantityId) => void) | undefined;
}

export function ExplanationPanel({ explanation, preferences, onClose, onFollow }: ExplanationPanelProps): ReactElement {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const headingId = useId();
  const isOpen = explanation !== null;

  useEffect(() => {
    if (isOpen) dialog.current?.showModal();
    else dialog.current?.close();
  }, [isOpen]);

  // Also when one explanation leads to the next, so that it is read from its beginning.
  useEffect(() => {
    heading.current?.focus();
  }, [explanation]);

  return (
    <dialog ref={dialog} className="sheet-dialog" aria-labelledby={headingId} onClose={onClose}>
      {explanation === null ? null : (
        <>
          <div className="mb-4 flex items-start justify-between gap-4">
            <h2 id={headingId} ref={heading} tabIndex={-1}>
              {explanation.label}
            </h2>
            <button type="button" className="button button-quiet" onClick={onClose}>
              Close
            </button>
          </div>
          <ExplanationBody explanation={explanation} preferences={preferences} onFollow={onFollow} />
        </>
      )}
    </dialog>
  );
}
