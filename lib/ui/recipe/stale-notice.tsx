"use client";

import type { ReactElement } from "react";
import { DataTable } from "../data-table";
import { Notice } from "../notice";
import { draftDifferences } from "./draft-differences";
import { draftFromContent } from "./draft-from-content";
import { useEditor } from "./editor-context";
import type { NewerRevision } from "./save-answer";
import { useEditorValue } from "./use-editor-value";

/** Somebody else saved first. Both versions are kept: theirs is saved, one's own is still on the screen. */
export function StaleNotice(props: {
  readonly newer: NewerRevision;
  /** Where that revision is read. */
  readonly revisionHref: string;
}): ReactElement {
  const { newer, revisionHref } = props;
  const { preferences } = useEditor();
  const draft = useEditorValue((state) => state.draft);
  const theirs = draftFromContent({ title: newer.title, content: newer.content, preferences });
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
        , then save yours on top of it, or take over what you want to keep.
      </p>
      <DataTable
        caption="Where the two differ"
        columns={[
          { id: "label", label: "Field", cell: ({ label }) => label },
          { id: "theirs", label: `Revision ${newer.rev}`, cell: ({ theirs: text }) => text || "—" },
          { id: "yours", label: "Your draft", cell: ({ yours }) => yours || "—" },
        ]}
        records={draftDifferences(theirs, draft)}
        keyOf={({ label, theirs: text, yours }) => `${label} ${text} ${yours}`}
      />
    </Notice>
  );
}
