import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { listEquipment } from "@/lib/server/equipment/reads";
import { listImports } from "@/lib/server/exchange/imports";
import { requireMember } from "@/lib/server/session";
import { kettleChoices } from "@/lib/ui/recipe/kettle-choices";
import { withdrawImportAction } from "./actions";
import { ImportScreen } from "./import-screen";
import { PastImports } from "./past-imports";

export const metadata: Metadata = { title: "Import recipes" };

interface ImportPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function ImportPage({ params }: ImportPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "write recipes")) notFound();
  const [kettles, imports] = await Promise.all([listEquipment(member), listImports(member)]);
  const home = `/s/${member.spaceSlug}/recipes`;
  return (
    <>
      <h1 className="mb-2">Import recipes</h1>
      <p className="mb-6 text-muted">
        From a file in BeerJSON or BeerXML. First you see line by line what would be taken; nothing is kept until you
        say so.
      </p>
      <ImportScreen
        home={home}
        kettles={kettleChoices(kettles, member.userId).map(({ id, label }) => ({ id, label }))}
        preferences={member.preferences}
      />
      <PastImports home={home} imports={imports} withdrawAction={withdrawImportAction.bind(null, member.spaceSlug)} />
    </>
  );
}
