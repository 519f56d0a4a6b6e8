import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { listBrews } from "@/lib/server/brews/reads";
import { requireMember } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";
import { EmptyState } from "@/lib/ui/empty-state";
import { SharedBrewTable } from "./shared-brew-table";

export const metadata: Metadata = { title: "Shared brews" };

interface SharedBrewsPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function SharedBrewsPage({ params }: SharedBrewsPageProps) {
  const member = await requireMember((await params).space);
  const [sharedBrews, brews] = await Promise.all([listSharedBrews(member), listBrews(member)]);
  const home = `/s/${member.spaceSlug}`;
  const call = roleMay(member.role, "organise") ? (
    <Link href={`${home}/shared-brews/new`} className="button">
      Call a shared brew
    </Link>
  ) : undefined;
  return (
    <>
      <h1 className="mb-4">Shared brews</h1>
      {sharedBrews.length === 0 ? (
        <EmptyState action={call}>
          One recipe, brewed by many on their own kettles, and compared afterwards. The organiser names a recipe and a
          day; each member then gets a sheet for their own kettle.
        </EmptyState>
      ) : (
        <>
          <SharedBrewTable home={home} sharedBrews={sharedBrews} brews={brews} />
          <p className="mt-4">{call}</p>
        </>
      )}
    </>
  );
}
