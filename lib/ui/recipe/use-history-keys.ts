"use client";

import { useEffect } from "react";
import type { EditorStore } from "./editor-store";

/** Ctrl+Z and Ctrl+Shift+Z (⌘ on a Mac, and Ctrl+Y) anywhere in the editor, save in fields that are none of the recipe's. */
export function useHistoryKeys(store: EditorStore): void {
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent): void {
      const step = historyStep(event);
      if (step === null || hasItsOwnHistory(event.target)) return;
      event.preventDefault();
      store.dispatch({ type: step });
    }
    document.addEventListener("keydown", onKeyDown);
    return () => document.removeEventListener("keydown", onKeyDown);
  }, [store]);
}

function historyStep(event: KeyboardEvent): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === "y" && !event.shiftKey) return "redo";
  if (key !== "z") return null;
  return event.shiftKey ? "redo" : "undo";
}

/** A note, a filter or a question's field is undone by the browser. */
function hasItsOwnHistory(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest("form, dialog, [data-own-history]") !== null;
}
