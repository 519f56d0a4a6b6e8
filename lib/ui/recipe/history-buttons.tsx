"use client";

import type { ReactElement } from "react";
import { useEditor } from "./editor-context";
import { useEditorValue } from "./use-editor-value";

/** One step back and forth, with what it is; the last one is said aloud. */
export function HistoryButtons(): ReactElement {
  const { dispatch } = useEditor();
  const back = useEditorValue(({ history }) => history.past.at(-1)?.words ?? null);
  const forth = useEditorValue(({ history }) => history.future[0]?.words ?? null);
  const told = useEditorValue(({ history }) => history.told);
  return (
    <div className="flex flex-wrap items-center gap-x-2">
      <StepButton words="Undo" keys="Ctrl+Z" step={back} onClick={() => dispatch({ type: "undo" })} />
      <StepButton words="Redo" keys="Ctrl+Shift+Z" step={forth} onClick={() => dispatch({ type: "redo" })} />
      <p role="status" className="text-sm text-muted">
        {told}
      </p>
    </div>
  );
}

/** It stays in the page when there is nothing to undo, so that the focus is never lost. */
function StepButton(props: {
  readonly words: string;
  readonly keys: string;
  readonly step: string | null;
  readonly onClick: () => void;
}): ReactElement {
  const { words, keys, step, onClick } = props;
  return (
    <button
      type="button"
      className={step === null ? "row-button cursor-default text-muted" : "row-button underline underline-offset-4"}
      aria-disabled={step === null}
      title={step === null ? `${words}: nothing, ${keys}` : `${words}: ${step}, ${keys}`}
      onClick={step === null ? undefined : onClick}
    >
      {words}
      {step === null ? null : <span className="sr-only">: {step}</span>}
    </button>
  );
}
