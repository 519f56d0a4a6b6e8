import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";
import { listPeople } from "@/lib/server/spaces/reads";
import { createTastingAction } from "./actions";
import { NewTastingForm } from "./new-tasting-form";

export const metadata: Metadata = { title: "Prepare a tasting" };

interface NewTastingPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function NewTastingPage({ params }: NewTastingPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "prepare tastings")) notFound();
  const [people, sharedBrews] = await Promise.all([listPeople(member), listSharedBrews(member)]);
  const stewards = people.filter(({ role }) => roleMay(role, "prepare tastings"));
  return (
    <div className="max-w-xl">
      <h1>Prepare a tasting</h1>
      <p className="my-4 text-muted">
        The steward enters the beers, so knows all of them to the end and judges none. Everybody else, organisers too,
        sees blind codes until the reveal.
      </p>
      <NewTastingForm
        stewards={stewards.map(({ userId, displayName }) => ({ value: userId, text: displayName }))}
        ownId={member.userId}
        sharedBrews={sharedBrews.map(({ id, title }) => ({ value: id, text: title }))}
        action={createTastingAction.bind(null, member.spaceSlug)}
      />
    </div>
  );
}
