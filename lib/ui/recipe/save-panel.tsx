"use client";

import type { ReactElement, SubmitEvent } from "react";
import { ErrorSummary } from "../error-summary";
import { SubmitButton } from "../submit-button";
import { TextField } from "../text-field";
import { useEditor } from "./editor-context";
import type { KettleChoice } from "./editor-state";
import { StaleNotice } from "./stale-notice";
import { useEditorValue } from "./use-editor-value";
import { useKettleName } from "./use-kettle-name";
import type { Publishing, SaveState } from "./use-save";

/** Note and button with which a draft becomes a revision, and what came of it. */
export interface SavePanelProps {
  readonly kettles: readonly KettleChoice[];
  readonly saving: Publishing;
  readonly revisionStem: string;
}

export function SavePanel({ kettles, saving, revisionStem }: SavePanelProps): ReactElement {
  const { dispatch } = useEditor();
  const kettleName = useKettleName(kettles);
  const note = useEditorValue((state) => state.note);
  const { state, baseRev } = saving;

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    saving.save();
  }

  return (
    <form onSubmit={submit} noValidate className="no-print mt-8 flex flex-col gap-4 border-t border-ink pt-6">
      <h2>Save</h2>
      {state.status === "wrong" ? <ErrorSummary errors={state.errors} /> : null}
      {state.status === "stale" ? (
        <StaleNotice
          newer={state.newer}
          revisionHref={`${revisionStem}${state.newer.rev}`}
          onCopy={saving.saveCopy}
          isPending={saving.isPending}
        />
      ) : null}
      <p className="text-muted">
        The amounts are for <strong>{kettleName}</strong>. What they give there is the intention for every other kettle.
      </p>
      <div className="max-w-xl">
        <TextField
          name="message"
          label="Note on the change"
          hint="What somebody reads who comes after you."
          maxLength={500}
          value={note}
          onChange={(event) => dispatch({ type: "note", text: event.target.value })}
        />
      </div>
      <div className="flex flex-wrap items-center gap-4">
        <SubmitButton pending="Saving…" isPending={saving.isPending}>
          {buttonWords(baseRev, state)}
        </SubmitButton>
        <p role="status">{statusWords(state)}</p>
      </div>
    </form>
  );
}

function buttonWords(baseRev: number | null, state: SaveState): string {
  if (baseRev === null) return "Save the recipe";
  return state.status === "stale"
    ? `Save mine as revision ${baseRev + 1}, on top of theirs`
    : `Save as revision ${baseRev + 1}`;
}

function statusWords(state: SaveState): string {
  if (state.status === "saved") return `Saved as revision ${state.rev}.`;
  return state.status === "unchanged" ? "Nothing is different from the last revision, so nothing was saved." : "";
}
