import Link from "next/link";
import type { ClosingClub } from "@/lib/model/account-closing";
import { Notice } from "@/lib/ui/notice";
import { CloseForm } from "./close-form";

/** What goes with the account and what stays, club by club, before it is closed. */
export function Closing({ clubs }: { readonly clubs: readonly ClosingClub[] }) {
  const waiting = clubs.filter(({ outcome }) => outcome === "needs an organiser");
  const ending = clubs.filter(({ outcome }) => outcome === "goes too");
  return (
    <div className="flex flex-col gap-4">
      <p>
        Your address, password, sessions, keys, notices, drafts, photos and your bench go, and what the bench published
        is withdrawn. What you brewed and wrote in a club stays there for the others to compare with, by “a former
        member”; so do the words of your notes and recipes. Take out beforehand what should not stay.
      </p>
      <p>Backups that the operator keeps have your data until they are replaced.</p>
      {ending.map(({ slug, name }) => (
        <p key={slug}>Nobody else belongs to {name}: the club goes with your account.</p>
      ))}
      {waiting.map(({ slug, name }) => (
        <Notice key={slug}>
          You are the last organiser of {name}. Make somebody else organiser first, on its page{" "}
          <Link href={`/s/${slug}/people`}>People</Link>.
        </Notice>
      ))}
      {waiting.length === 0 ? <CloseForm /> : null}
    </div>
  );
}
