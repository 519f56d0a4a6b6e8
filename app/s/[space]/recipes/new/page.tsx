import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { starterRecipe } from "@/lib/model/starter-recipe";
import { listEquipment } from "@/lib/server/equipment/reads";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { kettleChoices } from "@/lib/ui/recipe/kettle-choices";
import { NewRecipeScreen } from "./new-recipe-screen";

export const metadata: Metadata = { title: "New recipe" };

interface NewRecipePageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function NewRecipePage({ params }: NewRecipePageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "write recipes")) notFound();
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
          <p className="mb-4 text-muted">An ordinary pale ale to write over. Nothing is kept until it is saved.</p>
          <NewRecipeScreen
            space={member.spaceSlug}
            content={starterRecipe(first.equipment)}
            kettles={kettles}
            preferences={member.preferences}
          />
        </>
      )}
    </>
  );
}
