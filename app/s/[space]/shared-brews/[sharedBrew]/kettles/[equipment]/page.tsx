import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { findSheet } from "@/lib/server/shared-brews/find-sheet";
import { RecipeLedger } from "@/lib/ui/recipe/recipe-ledger";
import { BrewedSection } from "./brewed-section";
import { FitSection } from "./fit-section";
import { PartSection } from "./part-section";

interface SheetPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string; readonly equipment: string }>;
}

const readSheet = cache(async (space: string, sharedBrewId: string, equipmentId: string) => {
  const member = await requireMember(space);
  return { member, sheet: (await findSheet(member, { sharedBrewId, equipmentId })) ?? notFound() };
});

async function readPage({ params }: SheetPageProps) {
  const { space, sharedBrew, equipment } = await params;
  return readSheet(space, sharedBrew, equipment);
}

export async function generateMetadata(props: SheetPageProps): Promise<Metadata> {
  const { planned, profile } = (await readPage(props)).sheet;
  return { title: `${planned.title} on ${profile.equipment.name}` };
}

export default async function SheetPage(props: SheetPageProps) {
  const { member, sheet } = await readPage(props);
  const { planned, profile, revision, brewed } = sheet;
  const home = `/s/${member.spaceSlug}`;
  const mayWrite = profile.mayWrite && roleMay(member.role, "brew");
  const setting = { member, sheet, mayWrite };
  return (
    <>
      <h1>
        {planned.title} on {profile.equipment.name}
      </h1>
      <p className="mb-4 text-muted">
        <Link href={`${home}/shared-brews/${planned.id}`}>Version {planned.version} of the plan</Link>,{" "}
        <Link href={`${home}/recipes/${revision.id}/revisions/${revision.rev}`}>
          {revision.title}, revision {revision.rev}
        </Link>
        , on the <Link href={`${home}/equipment/${profile.id}`}>kettle of {profile.ownerName}</Link>.{" "}
        {brewed === null ? null : (
          <a className="target no-print" href={`${home}/shared-brews/${planned.id}/kettles/${profile.id}/csv`} download>
            Sheet as CSV
          </a>
        )}
      </p>
      <FitSection {...setting} />
      <PartSection {...setting} />
      {brewed === null ? null : (
        <>
          <BrewedSection member={member} brewed={brewed} rules={planned.plan.rules} />
          <section aria-labelledby="ledger" className="mt-10">
            <h2 id="ledger" className="mb-3">
              The ledger on {profile.equipment.name}
            </h2>
            <RecipeLedger
              title={revision.title}
              content={{ ...revision.content, recipe: brewed.recipe, entered: {}, notes: "" }}
              kettles={[{ id: profile.id, label: profile.equipment.name, equipment: profile.equipment }]}
              preferences={member.preferences}
              saving={null}
            />
          </section>
        </>
      )}
    </>
  );
}
