import type { Metadata } from "next";
import { listClosingClubs } from "@/lib/server/accounts/closing-clubs";
import { findMailChoice } from "@/lib/server/accounts/writes";
import { isMailSent } from "@/lib/server/mail/is-mail-sent";
import { requireViewer } from "@/lib/server/session";
import { PageMain } from "@/lib/ui/page-main";
import { Closing } from "./closing";
import { MailForm } from "./mail-form";
import { OwnData } from "./own-data";
import { PasswordForm } from "./password-form";
import { PreferencesForm } from "./preferences-form";
import { SignOutButtons } from "./sign-out-buttons";

export const metadata: Metadata = { title: "Account" };

export default async function AccountPage() {
  const viewer = await requireViewer();
  const [choice, clubs] = await Promise.all([findMailChoice(viewer), listClosingClubs(viewer)]);
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
        <section aria-labelledby="own-data">
          <h2 id="own-data" className="mb-4">
            Your data
          </h2>
          <OwnData />
        </section>
        <section aria-labelledby="close">
          <h2 id="close" className="mb-4">
            Close the account
          </h2>
          <Closing clubs={clubs} />
        </section>
      </div>
    </PageMain>
  );
}
