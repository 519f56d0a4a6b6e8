"use client";

import { useMemo } from "react";
import type { EditorState } from "./editor-state";
import type { Target } from "./solve-target";
import { useEditorValue } from "./use-editor-value";

interface RowChoice {
  readonly value: string;
  readonly text: string;
}

/** The rows that can carry a target of a kind; null where it is not one row that does. */
export function useTargetRows(kind: Target["kind"]): readonly RowChoice[] | null {
  const keys = useEditorValue(({ shown }) => shown?.keys ?? null);
  const names = useEditorValue(({ reading }: EditorState) => reading.names);
  return useMemo(() => {
    if (keys === null || (kind !== "bitterness" && kind !== "colour")) return null;
    const ids = kind === "bitterness" ? keys.hops.filter((id) => !id.startsWith("dryHops.")) : keys.fermentables;
    return ids.map((id) => ({ value: id, text: names.get(id) ?? id }));
  }, [keys, names, kind]);
}
