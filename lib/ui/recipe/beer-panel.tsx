"use client";

import type { ReactElement } from "react";
import { Notice } from "../notice";
import { BeerLine } from "./beer-line";
import { useEditor } from "./editor-context";
import { useEditorValue } from "./use-editor-value";
import { WaitingLine } from "./waiting-line";

/** The beer's own numbers. They stay in sight on a wide screen while the rows below are written. */
export function BeerPanel(): ReactElement {
  const { reference } = useEditor();
  const code = useEditorValue(({ draft }) => draft.fields.style.text);
  const isShown = useEditorValue(({ shown }) => shown !== null);
  const style = reference?.styles.find((each) => each.code === code) ?? null;
  if (!isShown) return <NoLedger />;
  return (
    <section
      aria-label="The beer"
      className="z-10 mb-6 flex flex-col gap-1 border-y border-ink bg-paper py-2 md:sticky md:top-0"
    >
      <BeerLine style={style} />
      {style !== null && style.figures === null ? (
        <p className="text-sm text-muted">The figures of this style follow those of its base style.</p>
      ) : null}
      <WaitingLine />
    </section>
  );
}

function NoLedger(): ReactElement {
  const waitingFor = useEditorValue((state) => state.waitingFor);
  return (
    <Notice kind="attention">
      <p>There is no ledger yet: {waitingFor.join("; ")}.</p>
    </Notice>
  );
}
