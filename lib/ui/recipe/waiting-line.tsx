"use client";

import type { ReactElement } from "react";
import type { EditorState } from "./editor-state";
import { useEditorValue } from "./use-editor-value";

const MOST_SHOWN = 3;

/** Says why the numbers are older than what stands in the fields. It keeps its place, so that nothing jumps. */
export function WaitingLine(): ReactElement {
  const reasons = useEditorValue(reasonsOf);
  return (
    <p className="min-h-6 max-w-none text-sm">
      {reasons === "" ? null : (
        <span className="text-accent">
          <strong>Last numbers, waiting for:</strong> {reasons}.
        </span>
      )}
    </p>
  );
}

function reasonsOf({ waitingFor }: EditorState): string {
  const more = waitingFor.length - MOST_SHOWN;
  return `${waitingFor.slice(0, MOST_SHOWN).join("; ")}${more > 0 ? `; and ${more} more` : ""}`;
}
