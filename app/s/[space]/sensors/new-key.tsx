"use client";

import { useState } from "react";
import { Notice } from "@/lib/ui/notice";

/** A new key, to copy into the sensor. The service keeps no copy, so it cannot be shown again. */
export function NewKey({ token }: { readonly token: string }) {
  const [copied, setCopied] = useState<"not yet" | "copied" | "failed">("not yet");

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(token);
      setCopied("copied");
    } catch {
      // Without a secure connection or permission there is no clipboard; the text can still be selected.
      setCopied("failed");
    }
  }

  return (
    <Notice kind="attention" live>
      <label htmlFor="new-key" className="font-semibold">
        The key. Copy it now: it is shown only this once.
      </label>
      <input
        id="new-key"
        readOnly
        className="input my-2 font-mono text-sm"
        value={token}
        onFocus={(event) => event.target.select()}
      />
      <button type="button" className="button button-quiet" onClick={() => void copy()}>
        Copy the key
      </button>
      <span role="status" className="ml-3">
        {copied === "copied" ? "Copied." : null}
        {copied === "failed" ? "Copying is not allowed here; select the text and copy it." : null}
      </span>
      <p className="mt-2">Whoever has it can post readings in your name, and read the readings of your club’s brews.</p>
    </Notice>
  );
}
