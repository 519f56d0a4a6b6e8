"use client";

import { useCallback, useState } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITY_IDS, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { ComparedLedgersOf } from "./difference-groups";

interface Opened {
  readonly explanation: ExplainedNumber | null;
  readonly open: (rowId: string, columnId: string) => void;
  /** An input of the number that is open, of the same side. */
  readonly follow: (id: QuantityId) => void;
  readonly close: () => void;
}

/** Opens the explanation of a number of either side, or of their difference. The texts come with the first. */
export function useExplanation(compared: ComparedLedgersOf, preferences: Preferences): Opened {
  const [opened, setOpened] = useState<{ readonly explanation: ExplainedNumber; readonly column: string } | null>(null);

  const show = useCallback(
    (id: QuantityId, column: string): void => {
      void import("./explain-cell").then(({ explainCell }) => {
        setOpened({ explanation: explainCell(compared, id, column, preferences), column });
      });
    },
    [compared, preferences],
  );

  const open = useCallback(
    (rowId: string, columnId: string): void => {
      const id = QUANTITY_IDS.find((each) => each === rowId);
      if (id !== undefined) show(id, columnId);
    },
    [show],
  );

  const column = opened?.column === "before" ? "before" : "after";
  const follow = useCallback((id: QuantityId) => show(id, column), [show, column]);
  const close = useCallback(() => setOpened(null), []);
  return { explanation: opened?.explanation ?? null, open, follow, close };
}
