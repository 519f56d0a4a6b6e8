"use client";

import { useEffect, useState, useSyncExternalStore, type ReactElement } from "react";
import { SheetDialog } from "../sheet-dialog";
import { DataTable } from "../data-table";

const SHORTCUTS: readonly (readonly [keys: string, does: string])[] = [
  ["Enter, in the last cell of a row", "adds a row below"],
  ["Alt + Enter, in any cell", "adds a row below"],
  ["Alt + ↑, Alt + ↓", "moves the row"],
  ["Alt + Shift + ↓", "copies the row"],
  ["Alt + Delete", "removes the row"],
  ["Ctrl or ⌘ + Z", "takes the last step back"],
  ["Ctrl or ⌘ + Shift + Z", "does it again"],
  ["Ctrl or ⌘ + V, in any cell", "pastes a block of rows, after a look at what was understood"],
  ["?, outside of a field", "opens this list"],
];

const KEPT_AS = "gylebook-question-mark";
const listeners = new Set<() => void>();

const question = {
  isOn: (): boolean => window.localStorage.getItem(KEPT_AS) !== "off",
  set: (isOn: boolean): void => {
    window.localStorage.setItem(KEPT_AS, isOn ? "on" : "off");
    for (const listener of listeners) listener();
  },
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};

/** What can be done from the keyboard. The one key that needs no other can be turned off. */
export function ShortcutList(): ReactElement {
  const [isOpen, setOpen] = useState(false);
  const isOn = useSyncExternalStore(question.subscribe, question.isOn, () => true);
  useEffect(() => {
    if (!isOn) return;
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.key === "?" && !isTyping(event.target)) setOpen(true);
    };
    document.addEventListener("keydown", onKeyDown);
    return () => document.removeEventListener("keydown", onKeyDown);
  }, [isOn]);
  return (
    <>
      <button type="button" className="button-link text-sm" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        Keys
      </button>
      <SheetDialog heading={isOpen ? "Keys" : null} subject={isOpen} onClose={() => setOpen(false)}>
        <DataTable
          caption="What can be done from the keyboard"
          captionHidden
          columns={[
            { id: "keys", label: "Keys", cell: ([keys]) => keys },
            { id: "does", label: "What it does", cell: ([, does]) => does },
          ]}
          records={SHORTCUTS}
          keyOf={([keys]) => keys}
        />
        <label className="mt-4 flex min-h-11 items-center gap-3">
          <input type="checkbox" checked={isOn} onChange={(event) => question.set(event.target.checked)} />
          Open this list with ?
        </label>
      </SheetDialog>
    </>
  );
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest("input, textarea, select, [contenteditable]") !== null;
}
