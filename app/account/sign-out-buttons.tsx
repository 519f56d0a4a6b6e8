"use client";

import { signOut } from "next-auth/react";
import { forgetSheets } from "@/lib/day/store/forget-device";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { signOutEverywhereAction } from "./actions";

/** A browser without a store of its own has nothing to forget, and lets go all the same. */
async function leave(): Promise<void> {
  await forgetSheets().catch(() => undefined);
  await signOut({ callbackUrl: "/" });
}

/** Out on this device, or on all of them. */
export function SignOutButtons() {
  const isReady = useHydrated();
  return (
    <div className="flex flex-wrap items-start gap-3">
      <button type="button" className="button button-quiet" disabled={!isReady} onClick={() => void leave()}>
        Sign out here
      </button>
      <ActionForm action={signOutEverywhereAction}>
        {({ isPending }) => (
          <SubmitButton pending="Signing out…" isPending={isPending} kind="attention">
            Sign out on every device
          </SubmitButton>
        )}
      </ActionForm>
    </div>
  );
}
