"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { EditorState } from "./editor-state";

/** The explanation that is open. The explanations themselves come when the first is asked for. */
export interface OpenExplanation {
  readonly explanation: ExplainedNumber | null;
  /** Opens a quantity of the ledger, or a row by list and key. */
  readonly open: (id: string) => void;
  readonly close: () => void;
}

type Shown = EditorState["shown"];

export function useExplanation(shown: Shown): OpenExplanation {
  const [explanation, setExplanation] = useState<ExplainedNumber | null>(null);
  const latest = useRef(shown);
  useEffect(() => {
    latest.current = shown;
  }, [shown]);

  // It never changes, so that rows which hold it are not drawn again.
  const open = useCallback((id: string): void => {
    void explained(latest.current, id).then(setExplanation);
  }, []);
  const close = useCallback(() => setExplanation(null), []);
  return { explanation, open, close };
}

async function explained(shown: Shown, id: string): Promise<ExplainedNumber | null> {
  if (shown === null) return null;
  const { explain, explainFermentable, explainHop } = await import("@/lib/calc/explain");
  if (isQuantityId(id)) return explain({ ...shown.brewed, id });
  const fermentable = shown.keys.fermentables.indexOf(id);
  if (fermentable !== -1) return explainFermentable({ ...shown.brewed, index: fermentable });
  const hop = shown.keys.hops.indexOf(id);
  return hop === -1 ? null : explainHop({ ...shown.brewed, index: hop });
}

function isQuantityId(id: string): id is QuantityId {
  return Object.hasOwn(QUANTITIES, id);
}
