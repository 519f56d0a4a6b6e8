"use client";

import type { ReactElement } from "react";
import type { RecipeDraft } from "@/lib/model/recipe-draft";
import { ClockTime } from "../brew/clock-time";
import { Notice } from "../notice";
import type { DraftKeeper } from "./draft-keeper";
import { useEditor } from "./editor-context";
import { draftFromKept } from "./kept-draft";
import { useKeepStatus } from "./use-draft-keeper";

/** The same person wrote on in another tab or on another device, or ended the draft there. */
export function DraftConflict({ keeper }: { readonly keeper: DraftKeeper }): ReactElement | null {
  const status = useKeepStatus(keeper);
  if (status.kind === "gone") return <Gone keeper={keeper} />;
  return status.kind === "stale" ? <Later keeper={keeper} newer={status.newer} /> : null;
}

function Later({ keeper, newer }: { readonly keeper: DraftKeeper; readonly newer: RecipeDraft }): ReactElement {
  const { store, preferences } = useEditor();

  function openOther(): void {
    const draft = draftFromKept(newer.kept, store.state().draft, preferences);
    store.dispatch({ type: "open", draft, kettle: newer.kept.kettle, note: newer.kept.note });
    keeper.reset({ baseRev: newer.baseRev, initial: newer });
  }

  return (
    <Notice kind="attention" live>
      <p>
        <strong>
          You wrote on in another tab or on another device, last at <ClockTime at={newer.savedAt} />.
        </strong>{" "}
        What stands here has not been saved since. Nothing is lost yet: choose which of the two goes on.
      </p>
      <p className="flex flex-wrap gap-3">
        <button type="button" className="button" onClick={() => keeper.takeOver(newer.lockVersion)}>
          Go on with what stands here
        </button>
        <button type="button" className="button button-quiet" onClick={openOther}>
          Open what was written there
        </button>
      </p>
    </Notice>
  );
}

function Gone({ keeper }: { readonly keeper: DraftKeeper }): ReactElement {
  return (
    <Notice kind="attention" live>
      <p>
        <strong>This draft was published or discarded in another tab or on another device.</strong> What stands here has
        not been saved since.
      </p>
      <p>
        <button type="button" className="button" onClick={() => keeper.takeOver(0)}>
          Keep it as a draft again
        </button>
      </p>
    </Notice>
  );
}
