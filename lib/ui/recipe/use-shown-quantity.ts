"use client";

import { useCallback } from "react";
import type { QuantityId } from "@/lib/calc/ledger";
import type { FormattedQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { isPrintedAlike, shownQuantity } from "./shown";
import { useEditorValue } from "./use-editor-value";

/** A number of the ledger as it is printed; null where there is none. */
export function useShownQuantity(id: QuantityId): FormattedQuantity | null {
  const { preferences } = useEditor();
  const select = useCallback((state: EditorState) => shownQuantity(state, id, preferences), [id, preferences]);
  return useEditorValue(select, isPrintedAlike);
}
