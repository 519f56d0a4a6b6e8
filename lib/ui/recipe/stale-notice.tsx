"use client";

import { useMemo, type ReactElement } from "react";
import { DataTable } from "../data-table";
import { Notice } from "../notice";
import { draftDifferences, type DraftDifference } from "./draft-differences";
import { draftFromContent } from "./draft-from-content";
import { useEditor } from "./editor-context";
import type { NewerRevision } from "./save-answer";
import { useEditorValue } from "./use-editor-value";

/** Somebody else saved first. Both versions are kept: theirs is saved, one's own is still on the screen. */
export interface StaleNoticeProps {
  readonly newer: NewerRevision;
  /** Where that revision is read. */
  readonly revisionHref: string;
  /** Saves one's own as a recipe of its own. */
  readonly onCopy: () => void;
  readonly isPending: boolean;
}

export function StaleNotice({ newer, revisionHref, onCopy, isPending }: StaleNoticeProps): ReactElement {
  const { preferences } = useEditor();
  const draft = useEditorValue((state) => state.draft);
  const theirs = useMemo(
    () => draftFromContent({ title: newer.title, content: newer.content, preferences }),
    [newer, preferences],
  );
  return (
    <Notice kind="attention" live>
      <p>
        <strong>
          {newer.authorName} saved revision {newer.rev} while you were writing
        </strong>
        {newer.message === "" ? "" : `: “${newer.message}”`}. Nothing is lost: it is saved, and your draft is still
        here.{" "}
        <a href={revisionHref} target="_blank" rel="noreferrer">
          Look at revision {newer.rev} in a new tab
        </a>
        . Take over what you want of theirs, one by one; the rest stays yours. Then save on top of theirs, or keep yours
        as a recipe of its own.
      </p>
      <Differences differences={draftDifferences(theirs, draft)} newer={newer} />
      <button type="button" className="button button-quiet mt-3" aria-disabled={isPending} onClick={onCopy}>
        Keep mine as a recipe of its own
      </button>
    </Notice>
  );
}

function Differences(props: {
  readonly differences: readonly DraftDifference[];
  readonly newer: NewerRevision;
}): ReactElement {
  const { differences, newer } = props;
  const { dispatch } = useEditor();
  return (
    <DataTable
      caption="Where the two differ"
      columns={[
        { id: "label", label: "Field", cell: ({ label }) => label },
        { id: "theirs", label: `Revision ${newer.rev}`, cell: ({ theirs }) => theirs || "—" },
        { id: "yours", label: "Your draft", cell: ({ yours }) => yours || "—" },
        {
          id: "take",
          label: "Take over",
          cell: ({ label, theirs, take }) => (
            <button
              type="button"
              className="button-link"
              onClick={() => dispatch({ type: "put", words: `${label} of revision ${newer.rev}`, change: take })}
            >
              Take theirs<span className="sr-only">: {`${label}, ${theirs || "nothing"}`}</span>
            </button>
          ),
        },
      ]}
      records={differences}
      keyOf={({ id }) => id}
    />
  );
}
