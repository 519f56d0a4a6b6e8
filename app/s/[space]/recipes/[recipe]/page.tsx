import type { Metadata } from "next";
import { roleMay } from "@/lib/model/roles";
import { revisionIntervals } from "@/lib/server/recipes/revision-intervals";
import { kettleChoices, writtenKettle } from "@/lib/ui/recipe/kettle-choices";
import { offeredInRecipes } from "@/lib/ui/recipe/own-ingredients";
import { PaperSheet } from "@/lib/ui/sheet/paper-sheet";
import { writtenSheet } from "@/lib/ui/sheet/written-sheet";
import { ExportLinks } from "../export-links";
import { OriginLine } from "./origin-line";
import { ofOthers } from "./of-others";
import { OtherDrafts } from "./other-drafts";
import { OtherWays } from "./other-ways";
import { readRecipe, readRecipePage } from "./read-recipe";
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
  const { member, recipe, kettles, revisions, origin, draft, drafts, own } = await readRecipePage(space, id);
  const home = `/s/${member.spaceSlug}/recipes/${id}`;
  const { title, content, rev } = recipe;
  const mayCall = roleMay(member.role, "organise") && member.spaceKind === "club";
  const sharedBrew = mayCall ? `/s/${member.spaceSlug}/shared-brews/new?recipe=${id}&rev=${rev}` : null;
  return (
    <>
      <RecipeHeading title={title} rev={rev} home={home} sharedBrew={sharedBrew} />
      {origin === null ? null : <OriginLine origin={origin} />}
      <PaperSheet sheet={writtenSheet(recipe, member.preferences)}>
        <RecipeScreen
          space={member.spaceSlug}
          id={id}
          userId={member.userId}
          head={{ rev, title, content, authorName: recipe.authorName, message: recipe.message }}
          draft={draft}
          mayWrite={roleMay(member.role, "write recipes")}
          kettles={[writtenKettle(content), ...kettleChoices(kettles, member.userId)]}
          preferences={member.preferences}
          ranges={revisionIntervals(member, recipe)}
          own={offeredInRecipes(own)}
        >
          <OtherDrafts drafts={ofOthers(drafts)} address={`${home}/drafts`} />
        </RecipeScreen>
        <ExportLinks recipes={`/s/${member.spaceSlug}/recipes`} id={id} rev={rev} />
        <RevisionList home={home} revisions={revisions} />
        <OtherWays home={home} rev={rev} mayPublish={roleMay(member.role, "organise")} />
      </PaperSheet>
    </>
  );
}
