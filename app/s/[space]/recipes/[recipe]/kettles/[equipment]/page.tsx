import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { CAUTIONS } from "@/lib/calc/runsheet";
import type { Preferences } from "@/lib/model/preferences";
import { roleMay } from "@/lib/model/roles";
import { requireMember, type Member } from "@/lib/server/session";
import { Caution } from "@/lib/ui/caution";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { readView, sheetQuery, type VolumeView } from "@/lib/ui/kettles/kettle-view";
import { wayInShort } from "@/lib/ui/kettles/way-words";
import { PaperSheet } from "@/lib/ui/sheet/paper-sheet";
import type { RecipeSheetProps } from "@/lib/ui/sheet/recipe-sheet";
import { KeptVolume } from "../kept-volume";
import { FitsSection } from "./fits-section";
import { MisfitSection } from "./misfit-section";
import { KeptWay } from "./kept-way";
import { LotsSection } from "./lots-section";
import { readSheet, type Sheet } from "./read-sheet";
import type { SheetActions } from "./sheet-actions";

interface SheetPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string; readonly equipment: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const read = cache(async (space: string, recipeId: string, equipmentId: string, query: string) => {
  const member = await requireMember(space);
  const asked = new URLSearchParams(query);
  const { rev, volume } = readView(Object.fromEntries(asked));
  const request = { recipeId, equipmentId, rev, volume };
  return { member, volume, sheet: (await readSheet(member, request)) ?? notFound() };
});

async function readPage({ params, searchParams }: SheetPageProps) {
  const { space, recipe, equipment } = await params;
  const query = Object.entries(await searchParams).flatMap(([name, value]) =>
    typeof value === "string" ? [[name, value]] : [],
  );
  const asked = new URLSearchParams(query).toString();
  return { ...(await read(space, recipe, equipment, asked)), asked };
}

export async function generateMetadata(props: SheetPageProps): Promise<Metadata> {
  const { sheet } = await readPage(props);
  return { title: `${sheet.revision.title} on ${sheet.profile.equipment.name}` };
}

export default async function SheetPage(props: SheetPageProps) {
  const { member, volume, sheet, asked } = await readPage(props);
  const { revision, profile, outcome, chosen } = sheet;
  const { preferences } = member;
  const home = `/s/${member.spaceSlug}/recipes/${revision.id}`;
  const actions = actionsFor(member, sheet, volume);
  return (
    <>
      <h1>
        {revision.title} on {profile.equipment.name}
      </h1>
      <p className="mb-4">
        <Link href={`${home}/revisions/${revision.rev}`}>Revision {revision.rev}</Link>, for the{" "}
        <Link href={`/s/${member.spaceSlug}/equipment/${profile.id}`}>kettle of {profile.ownerName}</Link>.{" "}
        <Link className="no-print" href={`${home}/kettles${sheetQuery({ rev: revision.rev, volume })}`}>
          All kettles
        </Link>{" "}
        {chosen === null ? null : (
          <a
            className="target no-print"
            href={`${home}/kettles/${profile.id}/csv${sheetQuery({ rev: revision.rev, volume })}`}
            download
          >
            Sheet as CSV
          </a>
        )}
      </p>
      <PaperSheet sheet={onPaper(sheet, preferences)}>
        <Caution>{CAUTIONS["hot liquor"]}</Caution>
        {actions.plan === null ? (
          <p className="no-print mt-3 text-muted">
            Only {profile.ownerName} or an organiser plans a brew on this kettle.
          </p>
        ) : null}
        {actions.choose === null ? null : (
          <div className="no-print mt-4">
            <KeptVolume {...actions.choose} entry={{ ...actions.choose.entry, mayChoose: true }} />
          </div>
        )}
        <KeptWay sheet={sheet} choose={actions.choose} preferences={preferences} />
        <LotsSection {...{ member, sheet, asked }} />
        {chosen === null ? null : <FitsSection {...{ sheet, chosen, preferences }} plan={actions.plan} />}
        {outcome.ok ? null : <MisfitSection {...{ sheet, outcome, actions, preferences }} />}
      </PaperSheet>
    </>
  );
}

/** null where there is nothing to brew: then the page itself is printed. */
function onPaper({ revision, profile, chosen }: Sheet, preferences: Preferences): RecipeSheetProps | null {
  if (chosen === null) return null;
  return {
    rev: revision.rev,
    kettle: `${profile.equipment.name} of ${profile.ownerName}`,
    about: chosen.way === null ? undefined : `with ${wayInShort(toldWay(chosen.way), preferences)}`,
    recipe: chosen.recipe,
    equipment: profile.equipment,
    ambient: revision.content.writtenOn.ambient,
    notes: revision.content.notes,
    preferences,
  };
}

function actionsFor(member: Member, sheet: Sheet, volume: VolumeView): SheetActions {
  const { revision, profile, kept } = sheet;
  const about = { space: member.spaceSlug, recipeId: revision.id, rev: revision.rev, volume };
  const mayPlan = profile.mayWrite && roleMay(member.role, "brew");
  return {
    plan: mayPlan ? { ...about, equipmentId: profile.id } : null,
    choose: profile.mayWrite ? { ...about, entry: { key: profile.id, kept } } : null,
  };
}
