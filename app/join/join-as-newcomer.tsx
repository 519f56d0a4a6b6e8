"use client";

import { signIn } from "next-auth/react";
import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { joinAsNewcomerAction } from "./actions";

type Joined = { readonly spaceSlug: string };

/** Makes an account, joins the club and signs in. */
export function JoinAsNewcomer({ token }: { readonly token: string }) {
  return (
    <ActionForm<Joined> action={joinAndSignIn}>
      {({ errors, isPending, result }) => (
        <>
          <p>
            Make an account to join. If you have one already, write its address and password: you join with it, and the
            name stays as it is.
          </p>
          <input type="hidden" name="token" value={token} />
          <TextField
            name="email"
            label="E-mail address"
            hint="You sign in with it. Nobody else sees it."
            type="email"
            autoComplete="username"
            error={errors.email}
          />
          <TextField
            name="displayName"
            label="Your name"
            hint="The members of the club see it."
            autoComplete="name"
            maxLength={80}
            error={errors.displayName}
          />
          <TextField
            name="password"
            label="Password"
            hint="12 characters or more. A sentence is easy to remember and hard to guess."
            type="password"
            autoComplete="new-password"
            error={errors.password}
          />
          <div>
            <SubmitButton pending="Joining…" isPending={isPending || result?.status === "ok"}>
              Join the club
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}

async function joinAndSignIn(previous: ActionResult<Joined> | null, form: FormData): Promise<ActionResult<Joined>> {
  const result = await joinAsNewcomerAction(previous, form);
  if (result.status !== "ok") return result;
  const credentials = { email: form.get("email"), password: form.get("password") };
  const answer = await signIn("credentials", { redirect: false, ...credentials }).catch(() => undefined);
  const home = `/s/${result.data.spaceSlug}`;
  // Joined is joined: when only the sign-in failed, the sign-in page is the next step.
  window.location.assign(answer?.ok === true ? home : `/sign-in?next=${encodeURIComponent(home)}`);
  return result;
}
