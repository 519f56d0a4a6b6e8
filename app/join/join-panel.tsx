"use client";

import { useSyncExternalStore } from "react";
import { Notice } from "@/lib/ui/notice";
import { JoinAsNewcomer } from "./join-as-newcomer";
import { JoinAsViewer } from "./join-as-viewer";

/**
 * Takes the invitation from the part of the address after “#”, which no browser sends anywhere; only the form posts it.
 */
export function JoinPanel({ viewerName }: { readonly viewerName: string | null }) {
  const token = useSyncExternalStore(
    onHashChange,
    () => window.location.hash.slice(1),
    () => null,
  );
  if (token === null) return <p className="text-muted">Reading the invitation…</p>;
  if (token === "") {
    return (
      <Notice>
        This page needs the whole invitation link. Open the link that the club sent you, or ask its organiser for a new
        one.
      </Notice>
    );
  }
  return viewerName === null ? <JoinAsNewcomer token={token} /> : <JoinAsViewer token={token} name={viewerName} />;
}

function onHashChange(changed: () => void): () => void {
  window.addEventListener("hashchange", changed);
  return () => window.removeEventListener("hashchange", changed);
}
