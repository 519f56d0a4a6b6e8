"use client";

import { useMemo } from "react";
import type { EditorState } from "./editor-state";
import type { Ranges, Shown } from "./shown";
import { useEditorValue } from "./use-editor-value";

/**
 * One value of the ledger that is shown. It is made anew when there is another ledger or other intervals, and not for
 * what changes neither, such as the notes.
 *
 * @param make - Kept by the caller.
 */
export function useShownValue<T>(
  make: (shown: Shown | null, ranges: Ranges | null) => T,
  isAlike?: (one: T, other: T) => boolean,
): T {
  return useEditorValue(
    useMemo(() => onceForEach(make), [make]),
    isAlike,
  );
}

function onceForEach<T>(make: (shown: Shown | null, ranges: Ranges | null) => T): (state: EditorState) => T {
  let last: { readonly shown: Shown | null; readonly ranges: Ranges | null; readonly value: T } | null = null;
  return ({ shown, ranges }) => {
    if (last?.shown !== shown || last.ranges !== ranges) last = { shown, ranges, value: make(shown, ranges) };
    return last.value;
  };
}
