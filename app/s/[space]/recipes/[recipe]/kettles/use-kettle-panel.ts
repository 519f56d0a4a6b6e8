"use client";

import { useCallback, useMemo, useState } from "react";
import type { QuantityId } from "@/lib/calc/ledger";
import type { ExplainableNumber, ExplainedCell, FitDetail } from "@/lib/ui/kettles/desk-messages";
import type { RowQuestions } from "@/lib/ui/kettles/kettle-line";
import type { KettleStore } from "@/lib/ui/kettles/kettle-store";
import { readKept } from "./read-kept";

/** What is open over the table: the explanation of a number, or the limits and ways out of a kettle. */
export type KettlePanel =
  | { readonly kind: "number"; readonly id: string; readonly cell: ExplainedCell }
  /** null while the ways out are searched. */
  | { readonly kind: "fit"; readonly id: string; readonly detail: FitDetail | null }
  | null;

interface PanelState {
  readonly panel: KettlePanel;
  readonly questions: RowQuestions;
  /** Opens the explanation of another number of the same kettle. */
  readonly follow: (number: QuantityId) => void;
  readonly close: () => void;
}

/** `address` tells what is chosen for a kettle now; the table may have been read long ago. */
export function useKettlePanel(store: KettleStore, address: string): PanelState {
  const [panel, setPanel] = useState<KettlePanel>(null);
  const explain = useCallback(
    (id: string, number: ExplainableNumber): void => {
      void store.explain(id, number).then((cell) => {
        if (cell !== null) setPanel({ kind: "number", id, cell });
      });
    },
    [store],
  );
  const openFit = useCallback(
    (id: string): void => {
      setPanel({ kind: "fit", id, detail: null });
      void presentDetail(store, address, id).then((detail) => {
        // Another panel may have been opened since.
        setPanel((open) => (open?.kind === "fit" && open.id === id ? { kind: "fit", id, detail } : open));
      });
    },
    [store, address],
  );
  const questions = useMemo(() => ({ explain, openFit }), [explain, openFit]);
  const id = panel?.id;
  const follow = useCallback(
    (number: QuantityId) => {
      if (id !== undefined) explain(id, number);
    },
    [id, explain],
  );
  const close = useCallback(() => {
    setPanel(null);
  }, []);
  return { panel, questions, follow, close };
}

/** The ways out of a kettle, once the table has what somebody may have chosen for it meanwhile. */
async function presentDetail(store: KettleStore, address: string, id: string): Promise<FitDetail | null> {
  const kept = await readKept(address, id);
  if (kept !== null) await store.keepLater(id, kept);
  return store.detail(id);
}
