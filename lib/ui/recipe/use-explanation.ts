"use client";

import { useState } from "react";
import type { Explanation } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { Brewed } from "./compute";

/** The explanation that is open. The explanations come when the first is asked for. */
export interface OpenExplanation {
  readonly explanation: Explanation | null;
  readonly open: (id: string) => void;
  readonly close: () => void;
}

export function useExplanation(brewed: Brewed | null): OpenExplanation {
  const [explanation, setExplanation] = useState<Explanation | null>(null);

  async function show(id: QuantityId): Promise<void> {
    if (brewed === null) return;
    const { explain } = await import("@/lib/calc/explain");
    setExplanation(explain({ ...brewed, id }));
  }

  return {
    explanation,
    open: (id) => {
      if (isQuantityId(id)) void show(id);
    },
    close: () => setExplanation(null),
  };
}

function isQuantityId(id: string): id is QuantityId {
  return Object.hasOwn(QUANTITIES, id);
}
