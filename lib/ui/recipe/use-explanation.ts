"use client";

import { useCallback, useState } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { EditorStore } from "./editor-store";
import type { Shown } from "./shown";

/** The explanation that is open. The explanations themselves come when the first is asked for. */
export interface OpenExplanation {
  readonly explanation: ExplainedNumber | null;
  /** The number that it explains: a quantity of the ledger, or a row by list and key. */
  readonly explained: string;
  /** Opens a quantity of the ledger, or a row by list and key. */
  readonly open: (id: string) => void;
  readonly close: () => void;
}

export function useExplanation(store: EditorStore): OpenExplanation {
  const [explanation, setExplanation] = useState<ExplainedNumber | null>(null);
  const [id, setId] = useState("");
  // It never changes, so that rows which hold it are not drawn again.
  const open = useCallback(
    (asked: string): void => {
      void explained(store.state().shown, asked).then((found) => {
        setId(asked);
        setExplanation(found);
      });
    },
    [store],
  );
  const close = useCallback(() => setExplanation(null), []);
  return { explanation, explained: id, open, close };
}

async function explained(shown: Shown | null, id: string): Promise<ExplainedNumber | null> {
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
