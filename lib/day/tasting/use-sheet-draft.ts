import { useEffect, useRef, useState } from "react";

/** How long somebody pauses between two words of a note; a save a letter would fill the archive. */
const PAUSE_MS = 800;

/** What is being written, and saved as one goes. */
export interface Draft<T> {
  readonly value: T;
  /** Points and words of a list are saved at once, a note when the writer pauses. */
  readonly change: (value: T, when: "now" | "soon") => void;
  /** Saves what is not saved yet. */
  readonly settle: () => void;
  /** Why the last save was not kept on this device; null when it was. */
  readonly problem: string | null;
}

/**
 * Something that is written here and kept by `save`. While nothing is unsaved the kept value shows, which another page or
 * device may have changed.
 */
export function useSheetDraft<T>(kept: T, save: (value: T) => Promise<void>): Draft<T> {
  const [draft, setDraft] = useState<{ readonly value: T } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const unsaved = useRef<{ readonly value: T } | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const keep = useRef(save);
  useEffect(() => {
    keep.current = save;
  });

  function settle(): void {
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
    const saving = unsaved.current;
    if (saving === null) return;
    unsaved.current = null;
    keep
      .current(saving.value)
      .then(() => {
        setProblem(null);
        // What was written since stays on the screen.
        setDraft((now) => (now === saving ? null : now));
      })
      .catch((error: unknown) => setProblem(error instanceof Error ? error.message : String(error)));
  }

  useEffect(() => {
    const leave = (): void => settle();
    addEventListener("pagehide", leave);
    document.addEventListener("visibilitychange", leave);
    return () => {
      removeEventListener("pagehide", leave);
      document.removeEventListener("visibilitychange", leave);
      leave();
    };
  }, []);

  return {
    value: (draft ?? { value: kept }).value,
    problem,
    settle,
    change(value, when) {
      const next = { value };
      unsaved.current = next;
      setDraft(next);
      if (timer.current !== null) clearTimeout(timer.current);
      if (when === "now") settle();
      else timer.current = setTimeout(settle, PAUSE_MS);
    },
  };
}
