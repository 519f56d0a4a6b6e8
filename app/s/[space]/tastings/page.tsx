import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { listTastings } from "@/lib/server/tastings/reads";
import { EmptyState } from "@/lib/ui/empty-state";
import { TastingTable } from "./tasting-table";

export const metadata: Metadata = { title: "Tastings" };

interface TastingsPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function TastingsPage({ params }: TastingsPageProps) {
  const member = await requireMember((await params).space);
  const tastings = await listTastings(member);
  const home = `/s/${member.spaceSlug}`;
  const call = roleMay(member.role, "prepare tastings") ? (
    <Link href={`${home}/tastings/new`} className="button">
      Prepare a tasting
    </Link>
  ) : undefined;
  return (
    <>
      <h1 className="mb-4">Tastings</h1>
      {tastings.length === 0 ? (
        <EmptyState action={call}>
          Beers under blind codes, poured in orders that favour none, scored by a panel that does not know whose they
          are, and revealed in one act.
        </EmptyState>
      ) : (
        <>
          <TastingTable home={home} tastings={tastings} />
          <p className="mt-4 flex flex-wrap items-center gap-x-6">
            {call}
            <Link className="target" href={`${home}/tastings/judges`}>
              Judges over time
            </Link>
          </p>
        </>
      )}
    </>
  );
}
