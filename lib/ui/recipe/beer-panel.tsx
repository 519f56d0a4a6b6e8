"use client";

import type { ReactElement } from "react";
import type { Intervals } from "@/lib/calc/ledger";
import { Notice } from "../notice";
import { BeerLine } from "./beer-line";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { WaitingLine } from "./waiting-line";

/** The beer's own numbers. They stay in sight on a wide screen while the rows below are written. */
export function BeerPanel(props: { readonly editor: EditorState; readonly intervals: Intervals }): ReactElement {
  const { editor, intervals } = props;
  const { preferences, reference, explain } = useEditor();
  const style = reference?.styles.find(({ code }) => code === editor.draft.fields.style.text);
  if (editor.shown === null) {
    return (
      <Notice kind="attention">
        <p>There is no ledger yet: {editor.waitingFor.join("; ")}.</p>
      </Notice>
    );
  }
  const { ledger } = editor.shown.brewed;
  return (
    <section
      aria-label="The beer"
      className="z-10 mb-6 flex flex-col gap-1 border-y border-ink bg-paper py-2 md:sticky md:top-0"
    >
      <BeerLine {...{ ledger, intervals, preferences }} style={style ?? null} onExplain={explain} />
      {style?.figures === null ? (
        <p className="text-sm text-muted">The figures of this style follow those of its base style.</p>
      ) : null}
      <WaitingLine waitingFor={editor.waitingFor} />
    </section>
  );
}
