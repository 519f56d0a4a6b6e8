import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { safePath } from "@/lib/model/safe-path";
import { optionalViewer } from "@/lib/server/session";
import { Notice } from "@/lib/ui/notice";
import { PageMain } from "@/lib/ui/page-main";
import { SignInForm } from "./sign-in-form";

export const metadata: Metadata = { title: "Sign in" };

/** Why somebody was sent here; anything else in the address says nothing. */
const NOTICES: Readonly<Record<string, string>> = {
  password: "Your password is changed, and every device is signed out. Sign in with the new one.",
  everywhere: "You are signed out on every device.",
  closed: "Your account is closed. What was yours alone is gone.",
};

interface SignInPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { next, notice } = await searchParams;
  const target = safePath(typeof next === "string" ? next : null);
  if ((await optionalViewer()) !== null) redirect(target);
  const text = typeof notice === "string" && Object.hasOwn(NOTICES, notice) ? NOTICES[notice] : undefined;
  return (
    <PageMain narrow>
      <h1 className="mb-6">Sign in</h1>
      {text === undefined ? null : (
        <div className="mb-6">
          <Notice>{text}</Notice>
        </div>
      )}
      <SignInForm target={target} />
      <p className="mt-8 text-muted">
        No account? A club’s organiser sends you an invitation link; it leads to a page where you make one.
      </p>
    </PageMain>
  );
}
