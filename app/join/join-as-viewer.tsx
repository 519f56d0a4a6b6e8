"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { joinAsViewerAction } from "./actions";

/** One button for somebody who is signed in. */
export function JoinAsViewer({ token, name }: { readonly token: string; readonly name: string }) {
  return (
    <ActionForm action={joinAsViewerAction}>
      {({ isPending }) => (
        <>
          <p>
            You are signed in as <strong>{name}</strong>. The members of the club will see this name, your kettles in
            the club and your brews there.
          </p>
          <input type="hidden" name="token" value={token} />
          <div>
            <SubmitButton pending="Joining…" isPending={isPending}>
              Join the club
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
