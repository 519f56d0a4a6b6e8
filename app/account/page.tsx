import type { Metadata } from "next";
import { findMailChoice } from "@/lib/server/accounts/writes";
import { isMailSent } from "@/lib/server/mail/is-mail-sent";
import { requireViewer } from "@/lib/server/session";
import { PageMain } from "@/lib/ui/page-main";
import { MailForm } from "./mail-form";
import { PasswordForm } from "./password-form";
import { PreferencesForm } from "./preferences-form";
import { SignOutButtons } from "./sign-out-buttons";

export const metadata: Metadata = { title: "Account" };

export default async function AccountPage() {
  const viewer = await requireViewer();
  const choice = await findMailChoice(viewer);
  return (
    <PageMain narrow>
      <h1>{viewer.displayName}</h1>
      <div className="mt-8 flex flex-col gap-12">
        <section aria-labelledby="preferences">
          <h2 id="preferences" className="mb-4">
            How numbers and pages look to you
          </h2>
          <PreferencesForm preferences={viewer.preferences} />
        </section>
        <section aria-labelledby="mail">
          <h2 id="mail" className="mb-4">
            E-mail
          </h2>
          <MailForm choice={choice} isSent={isMailSent()} />
        </section>
        <section aria-labelledby="sign-out">
          <h2 id="sign-out" className="mb-4">
            Sign out
          </h2>
          <SignOutButtons />
        </section>
        <section aria-labelledby="password">
          <h2 id="password" className="mb-4">
            Change the password
          </h2>
          <PasswordForm />
        </section>
      </div>
    </PageMain>
  );
}
