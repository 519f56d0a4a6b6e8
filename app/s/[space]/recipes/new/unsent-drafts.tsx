"use client";

import Link from "next/link";
import { useEffect, useState } from "react";
import { localDrafts, type LocalDraft } from "@/lib/ui/recipe/local-drafts";
import { Notice } from "@/lib/ui/notice";

/** New recipes that this browser kept because the server could not be reached. */
export function UnsentDrafts({ owner, draftId }: { readonly owner: string; readonly draftId: string }) {
  const [left, setLeft] = useState<readonly LocalDraft[]>([]);
  useEffect(() => {
    // Only the browser knows, so the server's page cannot show it.
    // eslint-disable-next-line react-hooks/set-state-in-effect -- read once, after the page is there
    setLeft(localDrafts(owner).newOnes());
  }, [owner]);
  const others = left.filter(({ change }) => change.id !== draftId);
  if (others.length === 0) return null;
  return (
    <Notice kind="attention">
      <p>This browser holds what did not reach the server:</p>
      <ul>
        {others.map(({ change }) => (
          <li key={change.id}>
            <Link href={`?draft=${change.id}`}>{change.title || "A recipe without a title"}</Link>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
