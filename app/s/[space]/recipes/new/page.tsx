import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { starterRecipe } from "@/lib/model/starter-recipe";
import { findDraft } from "@/lib/server/drafts/reads";
import { listEquipment } from "@/lib/server/equipment/reads";
import { isRecordId } from "@/lib/server/record-id";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { offeredInRecipes } from "@/lib/ui/recipe/own-ingredients";
import { kettleChoices } from "@/lib/ui/recipe/kettle-choices";
import { NewRecipeScreen } from "./new-recipe-screen";
import { UnsentDrafts } from "./unsent-drafts";

export const metadata: Metadata = { title: "New recipe" };

interface NewRecipePageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<{ readonly draft?: string | readonly string[] }>;
}

export default async function NewRecipePage({ params, searchParams }: NewRecipePageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "write recipes")) notFound();
  const { draft: asked } = await searchParams;
  const draftId = typeof asked === "string" && isRecordId(asked) ? asked : randomUUID();
  const draft = await findDraft(member, draftId);
  const kettles = kettleChoices(await listEquipment(member), member.userId);
  const [first] = kettles;
  return (
    <>
      <h1 className="mb-2">New recipe</h1>
      {first === undefined ? (
        <EmptyState
          action={
            <Link href={`/s/${member.spaceSlug}/equipment/new`} className="button">
              Describe a kettle
            </Link>
          }
        >
          A recipe is written for a kettle, and there is none here yet. Five answers describe one.
        </EmptyState>
      ) : (
        <>
          <p className="mb-4 text-muted">
            An ordinary pale ale to write over. What you write is kept as your draft; the club reads it once you save
            it.
          </p>
          <UnsentDrafts owner={`${member.userId}.${member.spaceSlug}`} draftId={draftId} />
          <NewRecipeScreen
            key={draftId}
            space={member.spaceSlug}
            userId={member.userId}
            draftId={draftId}
            draft={draft}
            content={starterRecipe(first.equipment)}
            kettles={kettles}
            preferences={member.preferences}
            own={offeredInRecipes(await listIngredients(member))}
          />
        </>
      )}
    </>
  );
}
