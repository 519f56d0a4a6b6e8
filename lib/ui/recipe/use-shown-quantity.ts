"use client";

import { useCallback } from "react";
import type { QuantityId } from "@/lib/calc/ledger";
import type { FormattedQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";
import { isPrintedAlike, shownQuantity, type Ranges, type Shown } from "./shown";
import { useShownValue } from "./use-shown-value";

/** A number of the ledger as it is printed; null where there is none. */
export function useShownQuantity(id: QuantityId): FormattedQuantity | null {
  const { preferences } = useEditor();
  const make = useCallback(
    (shown: Shown | null, ranges: Ranges | null) => shownQuantity(shown, ranges, id, preferences),
    [id, preferences],
  );
  return useShownValue(make, isPrintedAlike);
}
