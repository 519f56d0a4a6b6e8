"use client";

import { signIn } from "next-auth/react";
import { useState } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { useHydrated } from "@/lib/ui/use-hydrated";

type Attempt = { readonly isPending: boolean; readonly errors: FieldErrors };

/** Address and password. The form is only sent by script, so that the password never gets into an address. */
export function SignInForm({ target }: { readonly target: string }) {
  const [{ isPending, errors }, setAttempt] = useState<Attempt>({ isPending: false, errors: {} });
  const isReady = useHydrated();

  async function send(form: FormData): Promise<void> {
    const email = textOf(form, "email");
    const password = textOf(form, "password");
    const missing = missingFields(email, password);
    if (missing !== null) {
      setAttempt({ isPending: false, errors: missing });
      return;
    }
    setAttempt({ isPending: true, errors: {} });
    const problem = await problemOfSignIn(email, password);
    // A whole new page, so that nothing that was rendered for nobody stays.
    if (problem === null) window.location.assign(target);
    else setAttempt({ isPending: false, errors: { "": problem } });
  }

  return (
    <form
      method="post"
      noValidate
      className="flex flex-col gap-4"
      onSubmit={(event) => {
        event.preventDefault();
        void send(new FormData(event.currentTarget));
      }}
    >
      <ErrorSummary errors={errors} />
      <TextField name="email" label="E-mail address" type="email" autoComplete="username" error={errors.email} />
      <TextField
        name="password"
        label="Password"
        type="password"
        autoComplete="current-password"
        error={errors.password}
      />
      <div>
        <SubmitButton pending="Signing in…" isPending={isPending} disabled={!isReady}>
          Sign in
        </SubmitButton>
      </div>
    </form>
  );
}

function textOf(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
}

function missingFields(email: string, password: string): FieldErrors | null {
  const missing = {
    ...(email.trim() === "" ? { email: "E-mail address is empty" } : {}),
    ...(password === "" ? { password: "Password is empty" } : {}),
  };
  return Object.keys(missing).length === 0 ? null : missing;
}

/** The sentence that says why not; null when somebody is signed in now. It never says which of the two was wrong. */
async function problemOfSignIn(email: string, password: string): Promise<string | null> {
  const answer = await signIn("credentials", { redirect: false, email, password }).catch(() => undefined);
  if (answer?.ok === true) return null;
  if (answer?.error === "Throttled") {
    return "Too many attempts for this address. Nothing is locked: wait half a minute and try again.";
  }
  if (answer?.status === 401) return "This address and password do not go together. Check both and try again.";
  return "The service did not answer. Check your connection and try again.";
}
