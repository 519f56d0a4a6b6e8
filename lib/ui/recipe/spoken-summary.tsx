"use client";

import { useEffect, useState, type ReactElement } from "react";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";
import { beerFigures } from "./beer-figures";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";

const PAUSE_MS = 1200;

/** Says the beer's numbers once, after a pause in typing; the numbers on the screen change silently. */
export function SpokenSummary(): ReactElement {
  const { store, preferences } = useEditor();
  const [spoken, setSpoken] = useState("");
  useEffect(() => {
    const first = summaryOf(store.state(), preferences);
    let pause: ReturnType<typeof setTimeout> | undefined;
    const stop = store.subscribe(() => {
      clearTimeout(pause);
      pause = setTimeout(() => {
        const text = summaryOf(store.state(), preferences);
        setSpoken(text === first ? "" : text);
      }, PAUSE_MS);
    });
    return () => {
      clearTimeout(pause);
      stop();
    };
  }, [store, preferences]);
  return (
    <p role="status" className="sr-only">
      {spoken}
    </p>
  );
}

function summaryOf({ shown, waitingFor }: EditorState, preferences: Preferences): string {
  if (shown === null) return "";
  if (waitingFor.length > 0) return `Waiting: ${waitingFor.join("; ")}`;
  return beerFigures(preferences)
    .map(({ id, label }) => {
      const value = shown.brewed.ledger.quantities[id];
      if (value === null) return "";
      return `${label} ${formatQuantity({ value, dimension: QUANTITIES[id].dimension, preferences }).spoken}`;
    })
    .filter(Boolean)
    .join(", ");
}
