import { listBrews } from "@/lib/server/brews/reads";
import { listEquipment } from "@/lib/server/equipment/reads";
import { listRecipes } from "@/lib/server/recipes/list";
import { requireMember } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";
import { BrewsInProgress } from "./brews-in-progress";
import { KettleList } from "./kettle-list";
import { nextStep } from "./next-step";
import { NextStepLine } from "./next-step-line";
import { RecipeList } from "./recipe-list";
import { SharedBrewList } from "./shared-brew-list";

interface SpacePageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function SpacePage({ params }: SpacePageProps) {
  const member = await requireMember((await params).space);
  const [recipes, kettles, brews, sharedBrews] = await Promise.all([
    listRecipes(member),
    listEquipment(member),
    listBrews(member),
    listSharedBrews(member),
  ]);
  const home = `/s/${member.spaceSlug}`;
  return (
    <>
      <h1>What is brewing</h1>
      <NextStepLine step={nextStep({ member, recipes, kettles, brews, sharedBrews })} />
      <div className="mt-10 grid gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)]">
        <div className="flex flex-col gap-10">
          {member.spaceKind === "club" ? (
            <SharedBrewList home={home} sharedBrews={sharedBrews} brews={brews} recipes={recipes} />
          ) : null}
          <BrewsInProgress home={home} brews={brews} isClub={member.spaceKind === "club"} />
        </div>
        <div className="flex flex-col gap-10">
          <RecipeList home={home} recipes={recipes} role={member.role} />
          <KettleList home={home} kettles={kettles} role={member.role} preferences={member.preferences} />
        </div>
      </div>
    </>
  );
}
