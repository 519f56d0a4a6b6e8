"use client";

import type { ReactElement } from "react";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import { FormattedFigure } from "../formatted-figure";
import { useEditor } from "./editor-context";
import { useShownQuantity } from "./use-shown-quantity";

/** A value of the ledger that follows by itself, and opens its explanation. */
export function LiveValue({ id }: { readonly id: QuantityId }): ReactElement | null {
  const { explain } = useEditor();
  const shown = useShownQuantity(id);
  if (shown === null) return null;
  return (
    <button type="button" className="explained" aria-haspopup="dialog" onClick={() => explain(id)} data-quantity={id}>
      <span className="sr-only">{QUANTITIES[id].label}: </span>
      <FormattedFigure shown={shown} aligned />
      <span className="sr-only">. Explain</span>
    </button>
  );
}
