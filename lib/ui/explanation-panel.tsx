"use client";

import type { ReactElement, ReactNode } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { Interval, QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ExplanationBody } from "./explanation-body";
import { SheetDialog } from "./sheet-dialog";

/**
 * The explanation behind a number, in a native dialog: Escape closes it, and the focus goes back to the number.
 *
 * - `explanation` null keeps the dialog closed; the caller sets it in `onExplain` and clears it in `onClose`.
 * - `interval` the 80 % interval of the number, where the caller knows it.
 * - `onFollow(quantity)` opens the explanation of an input that is itself a number of the ledger.
 */
export interface ExplanationPanelProps {
  readonly explanation: ExplainedNumber | null;
  readonly interval?: Interval | null | undefined;
  readonly preferences: Preferences;
  readonly onClose: () => void;
  readonly onFollow?: ((quantity: QuantityId) => void) | undefined;
  /** What else a screen has to say of the number. */
  readonly children?: ReactNode;
}

export function ExplanationPanel(props: ExplanationPanelProps): ReactElement {
  const { explanation, interval, preferences, onClose, onFollow, children } = props;
  return (
    <SheetDialog heading={explanation?.label ?? null} subject={explanation} onClose={onClose}>
      {explanation === null ? null : (
        <>
          <ExplanationBody {...{ explanation, interval, preferences, onFollow }} />
          {children}
        </>
      )}
    </SheetDialog>
  );
}
