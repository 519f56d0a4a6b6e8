"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";

type Made = ActionResult<{ readonly token: string }>;

interface FeedFormProps {
  readonly hasOne: boolean;
  readonly action: (previous: Made | null, form: FormData) => Promise<Made>;
}

/** Makes the private address of one's calendar and shows it, once. */
export function FeedForm({ hasOne, action }: FeedFormProps) {
  return (
    <ActionForm action={action}>
      {({ result, isPending }) => (
        <>
          {result?.status === "ok" && !isPending ? <FeedAddress token={result.data.token} /> : null}
          <div>
            <SubmitButton pending="Making…" isPending={isPending} kind={hasOne ? "quiet" : "plain"}>
              {hasOne ? "Make a new address; the present one stops" : "Make a private address"}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}

function FeedAddress({ token }: { readonly token: string }) {
  return (
    <Notice kind="attention" live>
      <label htmlFor="feed-address" className="font-semibold">
        The address of your calendar. Copy it now: it is shown only this once.
      </label>
      <input
        id="feed-address"
        readOnly
        className="input my-2 font-mono text-sm"
        value={`${window.location.origin}/calendar/${token}.ics`}
        onFocus={(event) => event.target.select()}
      />
      <p>Whoever has it can read your brew days in this club. Give it to your calendar program only.</p>
    </Notice>
  );
}
