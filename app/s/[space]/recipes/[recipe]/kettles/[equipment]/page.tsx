import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { CAUTIONS } from "@/lib/calc/runsheet";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { Caution } from "@/lib/ui/caution";
import { FitsSection } from "./fits-section";
import { MisfitSection } from "./misfit-section";
import type { PlanFormProps } from "./plan-form";
import { readSheet } from "./read-sheet";

interface SheetPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string; readonly equipment: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const read = cache(async (space: string, recipeId: string, equipmentId: string, query: string) => {
  const member = await requireMember(space);
  const asked = new URLSearchParams(query);
  const rev = Number(asked.get("rev"));
  const volume = asked.get("volume") === "written" ? "written" : "usual";
  const sharedBrewId = asked.get("sharedBrew");
  const request = { recipeId, equipmentId, rev: rev > 0 ? rev : null, volume, sharedBrewId } as const;
  return { member, volume, sheet: (await readSheet(member, request)) ?? notFound() } as const;
});

async function readPage({ params, searchParams }: SheetPageProps) {
  const { space, recipe, equipment } = await params;
  const query = Object.entries(await searchParams).flatMap(([name, value]) =>
    typeof value === "string" ? [[name, value]] : [],
  );
  return read(space, recipe, equipment, new URLSearchParams(query).toString());
}

export async function generateMetadata(props: SheetPageProps): Promise<Metadata> {
  const { sheet } = await readPage(props);
  return { title: `${sheet.revision.title} on ${sheet.profile.equipment.name}` };
}

export default async function SheetPage(props: SheetPageProps) {
  const { member, volume, sheet } = await readPage(props);
  const { revision, profile, sharedBrew, outcome } = sheet;
  const home = `/s/${member.spaceSlug}/recipes/${revision.id}`;
  const mayPlan = profile.mayWrite && roleMay(member.role, "brew");
  const request: PlanFormProps = {
    space: member.spaceSlug,
    recipeId: revision.id,
    equipmentId: profile.id,
    rev: revision.rev,
    volume,
    sharedBrewId: sharedBrew?.id ?? null,
  };
  const plan = mayPlan ? request : null;
  return (
    <>
      <h1>
        {revision.title} on {profile.equipment.name}
      </h1>
      <p className="mb-4">
        <Link href={`${home}/revisions/${revision.rev}`}>Revision {revision.rev}</Link>, for the{" "}
        <Link href={`/s/${member.spaceSlug}/equipment/${profile.id}`}>kettle of {profile.ownerName}</Link>
        {sharedBrew === null ? "" : `, in the shared brew ${sharedBrew.title}`}.{" "}
        <Link className="no-print" href={`${home}/kettles?rev=${revision.rev}`}>
          All kettles
        </Link>
      </p>
      <Caution>{CAUTIONS["hot liquor"]}</Caution>
      {plan === null ? (
        <p className="mt-3 text-muted">Only {profile.ownerName} or an organiser plans a brew on this kettle.</p>
      ) : null}
      {outcome.ok ? (
        <FitsSection sheet={sheet} outcome={outcome} plan={plan} preferences={member.preferences} />
      ) : (
        <MisfitSection sheet={sheet} outcome={outcome} plan={plan} preferences={member.preferences} />
      )}
    </>
  );
}
