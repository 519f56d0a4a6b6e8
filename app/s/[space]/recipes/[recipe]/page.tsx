import type { Metadata } from "next";
import { roleMay } from "@/lib/model/roles";
import { findDraft, listDrafts } from "@/lib/server/drafts/reads";
import { listEquipment } from "@/lib/server/equipment/reads";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { findOrigin } from "@/lib/server/recipes/origin";
import { kettleChoices, writtenKettle } from "@/lib/ui/recipe/kettle-choices";
import { offeredInRecipes } from "@/lib/ui/recipe/own-ingredients";
import { RecipeSheet } from "@/lib/ui/sheet/recipe-sheet";
import { ExportLinks } from "../export-links";
import { OriginLine } from "./origin-line";
import { OtherDrafts } from "./other-drafts";
import { OtherWays } from "./other-ways";
import { readRecipe } from "./read-recipe";
import { RecipeHeading } from "./recipe-heading";
import { RecipeScreen } from "./recipe-screen";
import { RevisionList } from "./revision-list";

interface RecipePageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
}

export async function generateMetadata({ params }: RecipePageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  return { title: (await readRecipe(space, id)).recipe.title };
}

export default async function RecipePage({ params }: RecipePageProps) {
  const { space, recipe: id } = await params;
  const { member, recipe } = await readRecipe(space, id);
  const [kettles, revisions, origin, draft, drafts, own] = await Promise.all([
    listEquipment(member),
    listRevisions(member, id),
    findOrigin(member, id),
    findDraft(member, id),
    listDrafts(member, id),
    listIngredients(member),
  ]);
  const home = `/s/${member.spaceSlug}/recipes/${id}`;
  const { title, content, rev } = recipe;
  const mayCall = roleMay(member.role, "organise") && member.spaceKind === "club";
  const sharedBrew = mayCall ? `/s/${member.spaceSlug}/shared-brews/new?recipe=${id}&rev=${rev}` : null;
  return (
    <>
      <RecipeHeading title={title} rev={rev} home={home} sharedBrew={sharedBrew} />
      {origin === null ? null : <OriginLine origin={origin} />}
      <RecipeSheet
        rev={rev}
        kettle={content.writtenOn.name}
        equipment={content.writtenOn.equipment}
        ambient={content.writtenOn.ambient}
        recipe={content.recipe}
        notes={content.notes}
        preferences={member.preferences}
      />
      <div className="print:hidden">
        <RecipeScreen
          space={member.spaceSlug}
          id={id}
          userId={member.userId}
          head={{ rev, title, content, authorName: recipe.authorName, message: recipe.message }}
          draft={draft}
          mayWrite={roleMay(member.role, "write recipes")}
          kettles={[writtenKettle(content), ...kettleChoices(kettles, member.userId)]}
          preferences={member.preferences}
          own={offeredInRecipes(own)}
        >
          <OtherDrafts
            drafts={drafts.filter(({ isOwn }) => !isOwn).map(({ writerName, begunAt }) => ({ writerName, begunAt }))}
            address={`${home}/drafts`}
          />
        </RecipeScreen>
        <ExportLinks recipes={`/s/${member.spaceSlug}/recipes`} id={id} rev={rev} />
        <RevisionList home={home} revisions={revisions} />
        <OtherWays home={home} rev={rev} mayPublish={roleMay(member.role, "organise")} />
      </div>
    </>
  );
}
