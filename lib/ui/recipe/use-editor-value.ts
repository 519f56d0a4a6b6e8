"use client";

import { useMemo, useSyncExternalStore } from "react";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import type { EditorStore } from "./editor-store";

/**
 * One value of the editor's state. Whoever holds it is drawn again when that value changes, and not otherwise.
 *
 * @param select - Kept by the caller where `isAlike` compares more than identity.
 */
export function useEditorValue<T>(
  select: (state: EditorState) => T,
  isAlike: (one: T, other: T) => boolean = Object.is,
): T {
  const { store } = useEditor();
  const snapshot = useMemo(() => remembering(store, select, isAlike), [store, select, isAlike]);
  return useSyncExternalStore(store.subscribe, snapshot, snapshot);
}

/** Gives the value of before as long as the new one is like it. */
function remembering<T>(
  store: EditorStore,
  select: (state: EditorState) => T,
  isAlike: (one: T, other: T) => boolean,
): () => T {
  let seen: EditorState | null = null;
  let value: T;
  return () => {
    const state = store.state();
    if (seen === state) return value;
    const next = select(state);
    if (seen === null || !isAlike(value, next)) value = next;
    seen = state;
    return value;
  };
}
