"use client";

import { useState } from "react";
import { Notice } from "@/lib/ui/notice";

/** The link of a new invitation, to copy. The service keeps no copy, so it cannot be shown again. */
export function InvitationLink({ token }: { readonly token: string }) {
  const [copied, setCopied] = useState<"not yet" | "copied" | "failed">("not yet");
  const link = `${window.location.origin}/join#${token}`;

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      setCopied("copied");
    } catch {
      // Without a secure connection or permission there is no clipboard; the text can still be selected.
      setCopied("failed");
    }
  }

  return (
    <Notice kind="attention" live>
      <label htmlFor="invitation-link" className="font-semibold">
        The invitation link. Copy it now: it is shown only this once.
      </label>
      <input
        id="invitation-link"
        readOnly
        className="input my-2 font-mono text-sm"
        value={link}
        onFocus={(event) => event.target.select()}
      />
      <button type="button" className="button button-quiet" onClick={() => void copy()}>
        Copy the link
      </button>
      <span role="status" className="ml-3">
        {copied === "copied" ? "Copied." : null}
        {copied === "failed" ? "Copying is not allowed here; select the text and copy it." : null}
      </span>
    </Notice>
  );
}
