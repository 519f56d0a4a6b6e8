"use client";

import type { ReactElement } from "react";
import { useEditor } from "./editor-context";
import { useEditorValue } from "./use-editor-value";

/** What was taken away last, and the way back. */
export function RemovedLine(): ReactElement {
  const { dispatch } = useEditor();
  const removed = useEditorValue((state) => state.removed);
  return (
    <div role="status" className="no-print fixed inset-x-0 bottom-0 z-20 flex justify-center">
      {removed === null ? null : (
        <p className="m-2 flex max-w-none items-center gap-4 border border-line bg-sheet px-4 py-1">
          <span>Removed {removed}.</span>
          <button type="button" className="button-link" onClick={() => dispatch({ type: "undo" })}>
            Undo
          </button>
        </p>
      )}
    </div>
  );
}
