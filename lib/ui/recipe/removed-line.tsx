"use client";

import type { ReactElement } from "react";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";

/** What was taken away last, and the way back. */
export function RemovedLine({ removed }: { readonly removed: EditorState["removed"] }): ReactElement {
  const { dispatch } = useEditor();
  return (
    <div role="status" className="no-print fixed inset-x-0 bottom-0 z-20 flex justify-center">
      {removed === null ? null : (
        <p className="m-2 flex max-w-none items-center gap-4 border border-line bg-sheet px-4 py-1">
          <span>Removed {removed.name}.</span>
          <button type="button" className="button-link" onClick={() => dispatch({ type: "undo removal" })}>
            Undo
          </button>
        </p>
      )}
    </div>
  );
}
