"use client";

import { useEffect, useState, type ReactElement } from "react";
import { QUANTITIES, type Ledger } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";
import { beerFigures } from "./beer-figures";

const PAUSE_MS = 1200;

/** Says the beer's numbers once, after a pause in typing; the numbers on the screen change silently. */
export function SpokenSummary(props: {
  readonly ledger: Ledger;
  readonly waitingFor: readonly string[];
  readonly preferences: Preferences;
}): ReactElement {
  const text = summaryOf(props);
  const [spoken, setSpoken] = useState("");
  const [first] = useState(text);
  useEffect(() => {
    const pause = setTimeout(() => setSpoken(text === first ? "" : text), PAUSE_MS);
    return () => clearTimeout(pause);
  }, [text, first]);
  return (
    <p role="status" className="sr-only">
      {spoken}
    </p>
  );
}

function summaryOf({ ledger, waitingFor, preferences }: Parameters<typeof SpokenSummary>[0]): string {
  if (waitingFor.length > 0) return `Waiting: ${waitingFor.join("; ")}`;
  return beerFigures(preferences)
    .map(({ id, label }) => {
      const value = ledger.quantities[id];
      if (value === null) return "";
      return `${label} ${formatQuantity({ value, dimension: QUANTITIES[id].dimension, preferences }).spoken}`;
    })
    .filter(Boolean)
    .join(", ");
}
